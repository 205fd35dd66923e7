package hurdline.audit;

import java.util.function.DoubleUnaryOperator;

/**
 * Payments of one service life at their dates, in years: what is paid at 0, what each calendar
 * brings as it ends, and what is left at the end.
 *
 * @param fromYr when each calendar begins
 * @param toYr when it ends
 */
record ServiceLife(
    double cost, double salvage, double lifeYr, double[] fromYr, double[] toYr, double[] amounts) {
  /** Rates at which money halves in a year or faster are no rates of a purchase. */
  private static final double LOWEST = -0.5;

  private static final int STEPS = 4_000;

  /** Sum of payments over (1 + i)^t. */
  double netPresentValue(double rate) {
    double sum = -cost + salvage / Math.pow(1 + rate, lifeYr);
    for (int at = 0; at < amounts.length; at++) {
      sum += amounts[at] / Math.pow(1 + rate, toYr[at]);
    }
    return sum;
  }

  /** What has come in by the end of the n-th calendar, discounted; without the salvage value. */
  double runningSum(int calendars, double rate) {
    double sum = -cost;
    for (int at = 0; at < calendars; at++) {
      sum += amounts[at] / Math.pow(1 + rate, toYr[at]);
    }
    return sum;
  }

  /**
   * The rate at which the net present value is 0 that lies nearest to the discount rate on the side
   * on which an investor looks: above it where the purchase pays, else below. NaN where there is
   * none.
   */
  double internalRate(double discount) {
    DoubleUnaryOperator worth = x -> netPresentValue(1 / x - 1); // x = 1 / (1 + i)
    double start = 1 / (1 + discount);
    boolean pays = worth.applyAsDouble(start) > 0;
    double end = pays ? 1e-4 : 1 / (1 + LOWEST);
    double near = start;
    for (int step = 1; step <= STEPS; step++) {
      double far = start + (end - start) * step / STEPS;
      if (worth.applyAsDouble(far) > 0 != pays) {
        return 1 / root(worth, near, far) - 1;
      }
      near = far;
    }
    return Double.NaN;
  }

  private static double root(DoubleUnaryOperator function, double one, double other) {
    double near = one;
    double far = other;
    boolean sign = function.applyAsDouble(near) > 0;
    for (int step = 0; step < 100; step++) {
      double middle = (near + far) / 2;
      if (function.applyAsDouble(middle) > 0 == sign) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return (near + far) / 2;
  }

  /**
   * When the running sum first comes to 0, a calendar's amount coming in evenly over it; NaN where
   * it never does.
   */
  double paybackYr(double rate) {
    double sum = -cost;
    for (int at = 0; at < amounts.length; at++) {
      double amount =
          (amounts[at] + (at == amounts.length - 1 ? salvage : 0)) / Math.pow(1 + rate, toYr[at]);
      if (sum < 0 && sum + amount >= 0) {
        return fromYr[at] + (toYr[at] - fromYr[at]) * -sum / amount;
      }
      sum += amount;
    }
    return Double.NaN;
  }
}
