package hurdline.economics;

import java.util.stream.IntStream;

/**
 * Payments over a life.
 *
 * @param atYr when each is made, in years, rising, the first at 0; not to be written again
 * @param amounts what comes in, below 0 what is paid; not to be written again
 */
public record Cash(double[] atYr, double[] amounts) {
  public Cash {
    if (atYr.length != amounts.length || atYr.length == 0) {
      throw new IllegalArgumentException(
          "amounts are " + amounts.length + "; expected one for each time, " + atYr.length);
    }
    for (int at = 0; at < atYr.length; at++) {
      if (!(at == 0 ? atYr[at] == 0 : atYr[at] > atYr[at - 1])) {
        throw new IllegalArgumentException(
            "time " + at + " is " + atYr[at] + "; expected rising from 0");
      }
      if (!Double.isFinite(amounts[at])) {
        throw new IllegalArgumentException(
            "amount " + at + " is " + amounts[at] + "; expected a finite number");
      }
    }
  }

  /** Payments at the beginning and then at the end of each year. */
  public static Cash yearly(double... amounts) {
    return new Cash(IntStream.range(0, amounts.length).asDoubleStream().toArray(), amounts);
  }

  /**
   * Net present value: Σ aₖ·(1 + i)^(−tₖ), with aₖ the payment at time tₖ in years.
   *
   * @param rate i, share a year, above −1
   * @see "Sullivan, Wicks and Koelling, Engineering Economy, ch. 5, present worth method"
   */
  public double netPresentValue(double rate) {
    double[] sums = runningSums(rate);
    return sums[sums.length - 1];
  }

  /** What all payments up to each time come to, each discounted to time 0. */
  public double[] runningSums(double rate) {
    if (!(rate > -1)) {
      throw new IllegalArgumentException("rate is " + rate + "; expected above -1");
    }
    double[] sums = new double[amounts.length];
    double sum = 0;
    for (int at = 0; at < amounts.length; at++) {
      sum += amounts[at] * Math.pow(1 + rate, -atYr[at]);
      sums[at] = sum;
    }
    return sums;
  }

  /**
   * Years until the discounted running sum first reaches zero, on a straight line between two
   * payments; infinite if it never does, 0 if nothing is paid at the beginning.
   *
   * @param rate 0 for simple payback
   * @see "Sullivan, Wicks and Koelling, Engineering Economy, ch. 5, payback period method"
   */
  public double paybackYr(double rate) {
    double[] sums = runningSums(rate);
    if (sums[0] >= 0) {
      return 0;
    }
    for (int at = 1; at < sums.length; at++) {
      if (sums[at] >= 0) {
        double part = -sums[at - 1] / (sums[at] - sums[at - 1]);
        return atYr[at - 1] + part * (atYr[at] - atYr[at - 1]);
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}
