package hurdline.study.option;

import hurdline.measure.Measure;
import hurdline.plant.Money;
import hurdline.study.replicate.LifeCalendar;
import hurdline.study.replicate.ReplicationResults;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a plant earns less what it pays in each year of its calendars, over lives.
 *
 * <p>Kept by what grows alike, so that prices of later years can be put to the same amounts.
 */
public final class MoneyYears {
  private record Part(double[] amounts, ToDoubleFunction<Money.Growth> growth) {}

  private final LifeCalendar calendar;
  private final List<Part> parts;
  private final int lives;
  private final int
      calendars; // of a life; 0 where each life has one simulated calendar again and again

  private MoneyYears(LifeCalendar calendar, ReplicationResults byYear, int calendars) {
    this.calendar = calendar;
    this.calendars = calendars;
    lives = byYear.count() / calendar.years() / Math.max(1, calendars);
    parts =
        List.of(
            part(
                byYear,
                Money.Growth::products,
                1,
                Measure.MONEY_REVENUE,
                Measure.MONEY_PRODUCT_STOCK),
            part(byYear, Money.Growth::crops, 1, Measure.MONEY_STOCK_CHANGE),
            part(byYear, Money.Growth::crops, -1, Measure.MONEY_CROP_COST),
            part(byYear, Money.Growth::wages, -1, Measure.MONEY_WAGES, Measure.MONEY_COVER_HANDS),
            part(byYear, growth -> 0, 1, Measure.MONEY_COVER_HANDS),
            part(
                byYear,
                Money.Growth::electricity,
                -1,
                Measure.MONEY_ELECTRICITY,
                Measure.MONEY_DRIER_FUEL),
            part(
                byYear,
                growth -> 0,
                -1,
                Measure.MONEY_PACKAGES,
                Measure.MONEY_STOPS,
                Measure.MONEY_LATE_PENALTIES,
                Measure.MONEY_FREIGHT,
                Measure.MONEY_COVERS,
                Measure.MONEY_OVERHEAD));
  }

  /**
   * Lives whose calendars follow each other.
   *
   * @param byYear a row for each year of each calendar, life after life
   * @param calendars of a life
   */
  static MoneyYears inChains(LifeCalendar calendar, ReplicationResults byYear, int calendars) {
    return new MoneyYears(calendar, byYear, calendars);
  }

  /** Lives each of which has one simulated calendar for all of its own. */
  public static MoneyYears alone(LifeCalendar calendar, ReplicationResults byYear) {
    return new MoneyYears(calendar, byYear, 0);
  }

  private static Part part(
      ReplicationResults byYear,
      ToDoubleFunction<Money.Growth> growth,
      int sign,
      Measure... measures) {
    double[] amounts = new double[byYear.count()];
    for (Measure measure : measures) {
      if (!byYear.has(measure.of())) {
        continue; // no product has freight, or a store
      }
      double[] series = byYear.series(measure.of());
      for (int row = 0; row < amounts.length; row++) {
        amounts[row] += sign * series[row];
      }
    }
    return new Part(amounts, growth);
  }

  int lives() {
    return lives;
  }

  /** The years of all calendars in a life, in turn. */
  List<LifeCalendar.Share> shares(double lifeYr) {
    return calendar.shares(lifeYr);
  }

  /**
   * What a year of a life comes to, as far as the life reaches. Up to the end of the first year of
   * the life prices are the file's; then they move once a year, and a year of a calendar has those
   * of the year of the life in which it begins.
   */
  double amount(int life, LifeCalendar.Share share, Money.Growth growth) {
    int simulated = calendars == 0 ? life : life * calendars + share.calendar();
    int row = simulated * calendar.years() + share.year();
    double times = Math.floor(share.fromYr() + 1e-9);
    double sum = 0;
    for (Part part : parts) {
      sum += part.amounts()[row] * Math.pow(1 + part.growth().applyAsDouble(growth), times);
    }
    return sum * share.part();
  }
}
