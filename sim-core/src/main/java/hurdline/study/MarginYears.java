package hurdline.study;

import hurdline.measure.Measure;
import hurdline.plant.Money;
import java.util.function.ToDoubleFunction;

/**
 * What an option adds to the margin, year by year, a replication being a year, alone or in a chain.
 *
 * <p>Kept by what grows alike, so that prices of later years can be put to the same amounts.
 */
final class MarginYears {
  private record Part(double[] added, ToDoubleFunction<Money.Growth> growth) {}

  private final Part[] parts;
  private final int years;
  private final int chain; // years that follow each other; 0 where each stands alone

  private MarginYears(Part[] parts, int years, int chain) {
    this.parts = parts;
    this.years = years;
    this.chain = chain;
  }

  /** Years that stand alone. */
  static MarginYears of(Figures base, Figures option) {
    return following(base, option, 0);
  }

  /** Years in chains of this many, which follow each other. */
  static MarginYears following(Figures base, Figures option, int chain) {
    Part[] parts = {
      part(base, option, Money.Growth::products, 1, Measure.MONEY_REVENUE),
      part(base, option, Money.Growth::crops, 1, Measure.MONEY_STOCK),
      part(base, option, Money.Growth::crops, -1, Measure.MONEY_CROPS),
      part(base, option, Money.Growth::wages, -1, Measure.MONEY_WAGES),
      part(base, option, Money.Growth::electricity, -1, Measure.MONEY_ELECTRICITY),
      part(
          base,
          option,
          growth -> 0,
          -1,
          Measure.MONEY_PACKAGES,
          Measure.MONEY_STOPS,
          Measure.MONEY_LATE,
          Measure.MONEY_OVERHEAD)
    };
    return new MarginYears(parts, base.count(), chain);
  }

  private static Part part(
      Figures base,
      Figures option,
      ToDoubleFunction<Money.Growth> growth,
      int sign,
      Measure... measures) {
    double[] added = new double[base.count()];
    for (Measure measure : measures) {
      double[] before = base.series(measure.of());
      double[] after = option.series(measure.of());
      for (int year = 0; year < added.length; year++) {
        added[year] += sign * (after[year] - before[year]);
      }
    }
    return new Part(added, growth);
  }

  int count() {
    return years;
  }

  /** Whether years follow each other, each opening with the crop that the one before left. */
  boolean isFollowing() {
    return chain > 0;
  }

  /**
   * What a year adds when it is that year of a life; the first is at the file's prices.
   *
   * @param year which replication, from 0
   * @param ofLife from 1
   */
  double added(int year, int ofLife, Money.Growth growth) {
    double sum = 0;
    for (Part part : parts) {
      sum += part.added[year] * Math.pow(1 + part.growth.applyAsDouble(growth), ofLife - 1);
    }
    return sum;
  }
}
