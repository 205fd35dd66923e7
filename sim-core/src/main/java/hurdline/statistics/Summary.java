package hurdline.statistics;

import java.util.Arrays;

/**
 * One measure over the replications. Replications in which it has no value (NaN, as a mean wait
 * where nobody came) are left out and not counted.
 *
 * @param count of replications with a value
 * @param mean NaN without any
 * @param low95 lower limit of the mean at 95 %; NaN with fewer than two
 * @param high95 upper limit
 * @param sd standard deviation over the replications, divisor count − 1; NaN with fewer than two
 * @param p05 5 % quantile, as {@link Quantiles} has it
 * @param p50 median
 * @param p95 95 % quantile
 * @param least of the values
 * @param most of the values
 * @param interval which one the limits are of
 */
public record Summary(
    int count,
    double mean,
    double low95,
    double high95,
    double sd,
    double p05,
    double p50,
    double p95,
    double least,
    double most,
    MeanInterval interval) {

  /**
   * @param values one a replication, in any order, read only; finite or NaN
   */
  public static Summary of(double[] values) {
    double[] known = Arrays.stream(values).filter(value -> !Double.isNaN(value)).toArray();
    for (double value : known) {
      if (Double.isInfinite(value)) {
        throw new IllegalArgumentException(
            "a value is " + value + "; expected a finite number, or NaN for none");
      }
    }
    Moments moments = Moments.of(known);
    Interval mean95 = Intervals.mean95(known);
    double[] quantiles = Quantiles.of(known, 0, 0.05, 0.5, 0.95, 1);
    return new Summary(
        known.length,
        moments.mean(),
        mean95.low(),
        mean95.high(),
        moments.sd(),
        quantiles[1],
        quantiles[2],
        quantiles[3],
        quantiles[0],
        quantiles[4],
        MeanInterval.of(moments, known.length));
  }

  /** Interval of the mean at 95 %. */
  public Interval mean95() {
    return new Interval(low95, high95);
  }
}
