package hurdline.study;

import hurdline.measure.Measure;
import hurdline.measure.Unit;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.simulation.results.Outcome;
import hurdline.statistics.Interval;
import hurdline.statistics.Summary;
import hurdline.study.replicate.ReplicationResults;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/**
 * Beyond what a measure cannot lie whatever chance brings, so that no interval says it might: a
 * mass, a count or a payment is never below 0, a place and a bin never hold more than they hold,
 * and no machine works more hours than the calendar has. A bound that some replication has passed
 * is none.
 */
final class MeasureBounds {
  private static final double KG_PER_T = 1000;
  private static final double H_PER_D = 24;

  /** Paid one way only. Not what hangs on a price, which may be below 0. */
  private static final Set<Measure> PAYMENTS =
      EnumSet.of(
          Measure.MONEY_CROP_AREA,
          Measure.MONEY_CROP_FAILED,
          Measure.MONEY_ADVANCE,
          Measure.MONEY_ADVANCE_INTEREST,
          Measure.MONEY_ADVANCE_OPEN,
          Measure.MONEY_ADVANCE_SHORT,
          Measure.MONEY_COVERS,
          Measure.MONEY_COVER_HANDS,
          Measure.MONEY_LINE_COVERS,
          Measure.YARD_PLACE_VALUE_PEAK,
          Measure.MONEY_WAGES,
          Measure.MONEY_ELECTRICITY,
          Measure.MONEY_DEMAND,
          Measure.MONEY_RATCHET,
          Measure.MONEY_PERIOD_ENERGY,
          Measure.MONEY_PERIOD_DEMAND,
          Measure.MONEY_PACKAGES,
          Measure.MONEY_STOPS,
          Measure.MONEY_LATE_PENALTIES,
          Measure.MONEY_DRIER_FUEL,
          Measure.MONEY_LINE_DRIER_FUEL,
          Measure.MONEY_FREIGHT,
          Measure.MONEY_LINE_FREIGHT,
          Measure.PRODUCT_FREIGHT,
          Measure.MONEY_OVERHEAD,
          Measure.MONEY_RENT,
          Measure.MONEY_LINE_WAGES,
          Measure.MONEY_LINE_PACKAGES,
          Measure.MONEY_LINE_STOPS,
          Measure.MONEY_LINE_LATE_PENALTIES);

  private final Plant plant;
  private final ReplicationResults figures;

  MeasureBounds(Plant plant, ReplicationResults figures) {
    this.plant = plant;
    this.figures = figures;
  }

  /** The interval of a measure's mean within its bounds. */
  Interval cut(Outcome.Column column, Summary summary) {
    return cut(column, summary, summary.mean95());
  }

  /**
   * @param whole the interval that is cut
   */
  Interval cut(Outcome.Column column, Summary summary, Interval whole) {
    double least = least(column);
    double most = most(column);
    return whole.within(
        summary.least() < least ? Double.NEGATIVE_INFINITY : least,
        summary.most() > most ? Double.POSITIVE_INFINITY : most);
  }

  private double least(Outcome.Column column) {
    boolean money =
        column.measure().unit() == Unit.MONEY || column.measure().unit() == Unit.MONEY_PER_TONNE;
    boolean bounded = !money || PAYMENTS.contains(column.measure()) || isEarnedSurely(column);
    return bounded ? 0 : Double.NEGATIVE_INFINITY;
  }

  /**
   * Crop left over would have earned something wherever its line earned something in every
   * replication.
   */
  private boolean isEarnedSurely(Outcome.Column column) {
    if (column.measure() != Measure.SEASON_MARGIN_FORGONE) {
      return false;
    }
    String margin = Measure.MONEY_LINE_MARGIN.of(name(column));
    return figures.has(margin)
        && Arrays.stream(figures.series(margin)).allMatch(earned -> earned >= 0);
  }

  private double most(Outcome.Column column) {
    return switch (column.measure()) {
      case YARD_PEAK, YARD_MEAN -> holds(name(column));
      case YARD_PLACE_PEAK -> placeHolds(name(column));
      case STORE_LEVEL_MEAN, STORE_LEVEL_PEAK, STORE_LEVEL_END -> storeHoldsT(name(column));
      case BIN_LEVEL_MEAN, BIN_LEVEL_PEAK, BIN_LEVEL_START, BIN_LEVEL_END ->
          binHoldsT(name(column));
      case MASS_DRAWN_OVER_MEAN,
          PRODUCT_PRICE_FACTOR,
          MASS_PRICE_FACTOR,
          CREW_LABOR_HOURS,
          CREW_OVERTIME,
          CREW_SENT_HOME,
          CREW_ABSENT,
          CREW_SHORT,
          CREW_CHANGEOVER,
          CREW_RECEIVING ->
          Double.POSITIVE_INFINITY;
      default -> ofUnit(column.measure().unit());
    };
  }

  private double ofUnit(Unit unit) {
    return switch (unit) {
      case SHARE -> 1;
      case HOUR ->
          H_PER_D * (1 + ChronoUnit.DAYS.between(plant.calendar().from(), plant.calendar().to()));
      default -> Double.POSITIVE_INFINITY;
    };
  }

  /** The crop, place, bin or line in a measure's name. */
  private static String name(Outcome.Column column) {
    return Measure.find(column.name()).orElseThrow().names().get(0);
  }

  private double holds(String crop) {
    return plant.yard().places().stream()
        .filter(place -> place.crops().isEmpty() || place.crops().contains(crop))
        .mapToDouble(place -> place.holds())
        .sum();
  }

  private double placeHolds(String name) {
    return plant.yard().places().stream()
        .filter(place -> place.name().equals(name))
        .mapToDouble(place -> place.holds())
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private double storeHoldsT(String name) {
    return plant.stores().stream()
        .filter(store -> store.name().equals(name))
        .mapToDouble(store -> store.holdsKg() / KG_PER_T)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** A bin that is measured by volume has no bound in tonnes. */
  private double binHoldsT(String name) {
    return plant.machines().stream()
        .filter(
            machine ->
                machine instanceof Machine.Bin bin && bin.name().equals(name) && !bin.byVolume())
        .mapToDouble(machine -> ((Machine.Bin) machine).holds() / KG_PER_T)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
