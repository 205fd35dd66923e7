package hurdline.random;

import org.apache.commons.statistics.distribution.ContinuousDistribution;

/**
 * A distribution of the library cut to a range. A range above the median is reckoned from the upper
 * end, where shares keep their digits.
 */
final class TruncatedDistribution {
  /**
   * The library seeks an inverse to 1e-9; so many steps of Newton's method bring it to rounding.
   */
  private static final int POLISHES = 2;

  private final ContinuousDistribution whole;
  private final boolean fromAbove;
  private final double startShare;
  private final double shareInRange;

  TruncatedDistribution(ContinuousDistribution whole, double low, double high) {
    this.whole = whole;
    fromAbove = whole.cumulativeProbability(low) > 0.5;
    startShare = fromAbove ? whole.survivalProbability(high) : whole.cumulativeProbability(low);
    double endShare =
        fromAbove ? whole.survivalProbability(low) : whole.cumulativeProbability(high);
    shareInRange = endShare - startShare;
  }

  double shareInRange() {
    return shareInRange;
  }

  /** The amount at the share u of the cases in the range. */
  double at(double u) {
    double share = startShare + (fromAbove ? 1 - u : u) * shareInRange;
    boolean upper = fromAbove || share > 0.5;
    double aim = fromAbove || !upper ? share : 1 - share;
    double x =
        upper ? whole.inverseSurvivalProbability(aim) : whole.inverseCumulativeProbability(aim);
    for (int polish = 0; polish < POLISHES; polish++) {
      x = nearer(x, aim, upper);
    }
    return x;
  }

  /** One step towards the aim; none where the curve is too flat or too steep for a step to help. */
  private double nearer(double x, double aim, boolean upper) {
    double over = upper ? aim - whole.survivalProbability(x) : whole.cumulativeProbability(x) - aim;
    double next = x - over / whole.density(x);
    boolean inside = next > whole.getSupportLowerBound() && next < whole.getSupportUpperBound();
    return inside && Math.abs(next - x) <= 0.1 * Math.abs(x) ? next : x;
  }
}
