package hurdline.statistics;

import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;

/**
 * Mean, spread and skewness of a sample, by the library, with what rounding must not break put
 * right: a mean lies between the least and the greatest value, and equal values have no spread and
 * no skewness.
 *
 * @param mean NaN without values
 * @param variance divisor n − 1; NaN with fewer than two values
 * @param skewness n/((n − 1)(n − 2))·Σ((xᵢ − mean)/sd)³; 0 with fewer than three values
 */
record Moments(double mean, double variance, double skewness) {
  private static final DoubleStatistics.Builder WANTED =
      DoubleStatistics.builder(
          Statistic.MEAN, Statistic.VARIANCE, Statistic.SKEWNESS, Statistic.MIN, Statistic.MAX);

  /**
   * @param values read only
   */
  static Moments of(double[] values) {
    if (values.length == 0) {
      return new Moments(Double.NaN, Double.NaN, 0);
    }
    DoubleStatistics found = WANTED.build(values);
    double least = found.getAsDouble(Statistic.MIN);
    double most = found.getAsDouble(Statistic.MAX);
    double mean = Math.min(Math.max(found.getAsDouble(Statistic.MEAN), least), most);
    if (values.length < 2) {
      return new Moments(mean, Double.NaN, 0);
    }
    if (least == most) {
      return new Moments(mean, 0, 0);
    }
    double skewness = values.length < 3 ? 0 : found.getAsDouble(Statistic.SKEWNESS);
    return new Moments(
        mean, found.getAsDouble(Statistic.VARIANCE), Double.isNaN(skewness) ? 0 : skewness);
  }

  double sd() {
    return Math.sqrt(variance);
  }
}
