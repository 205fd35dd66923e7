package hurdline.random;

import java.util.function.DoubleUnaryOperator;

/**
 * Exponential distribution, cut to a range if that is finite: the Weibull distribution of shape 1.
 *
 * @param uncutMean before the cut, above 0
 * @param low lower end of the range, may be −∞
 * @param high upper end of the range, may be +∞
 */
public record Exponential(double uncutMean, double low, double high) implements Distribution {
  public Exponential {
    Check.above0("mean", uncutMean);
    new Weibull(1, uncutMean, low, high);
  }

  /** One that is not cut. */
  public static Exponential of(double mean) {
    return new Exponential(mean, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public DoubleUnaryOperator curve() {
    return new Weibull(1, uncutMean, low, high).curve();
  }

  @Override
  public double mean() {
    return new Weibull(1, uncutMean, low, high).mean();
  }
}
