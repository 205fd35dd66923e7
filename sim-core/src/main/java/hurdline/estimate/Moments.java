package hurdline.estimate;

import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;

/**
 * Mean and spread of a sample, by the library, with what rounding must not break put right: a mean lies between the
 * least and the greatest value, and equal values have no spread.
 *
 * @param mean NaN without values
 * @param variance divisor n − 1; NaN with fewer than two values
 */
record Moments(double mean, double variance) {
  private static final DoubleStatistics.Builder WANTED =
      DoubleStatistics.builder(Statistic.MEAN, Statistic.VARIANCE, Statistic.MIN, Statistic.MAX);

  /** @param values read only */
  static Moments of(double[] values) {
    if (values.length == 0) {
      return new Moments(Double.NaN, Double.NaN);
    }
    DoubleStatistics found = WANTED.build(values);
    double least = found.getAsDouble(Statistic.MIN);
    double most = found.getAsDouble(Statistic.MAX);
    double mean = Math.min(Math.max(found.getAsDouble(Statistic.MEAN), least), most);
    if (values.length < 2) {
      return new Moments(mean, Double.NaN);
    }
    return new Moments(mean, least == most ? 0 : found.getAsDouble(Statistic.VARIANCE));
  }

  double sd() {
    return Math.sqrt(variance);
  }
}
