package hurdline.random;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * Gamma distribution given by mean and sd, cut to a range if that is finite.
 *
 * <p>Shape a = (mean/sd)², scale θ = sd²/mean. There is no closed inverse; the library seeks it, at
 * some µs a draw, and its logarithms may differ in the last bit from processor to processor. With
 * an sd below a thousandth of the mean it no longer finds it; the normal distribution of the same
 * mean, sd and range then stands in, off by less than 1e-5 of the mean.
 *
 * @param uncutMean before the cut, above 0
 * @param uncutSd before the cut, 0 or above; with 0 the amount is the mean
 * @param low lower end of the range, may be −∞
 * @param high upper end of the range, may be +∞
 */
public record Gamma(double uncutMean, double uncutSd, double low, double high)
    implements Distribution {
  private static final double NARROW = 1e-3;

  public Gamma {
    Check.above0("mean", uncutMean);
    Check.notBelow0("sd", uncutSd);
    Check.cut(low, high);
    if (uncutSd <= NARROW * uncutMean) {
      new Normal(uncutMean, uncutSd, low, high);
    } else {
      Check.leavesSomething(cutTo(0, uncutMean, uncutSd, low, high).shareInRange(), low, high);
    }
  }

  /** One that is not cut. */
  public static Gamma of(double mean, double sd) {
    return new Gamma(mean, sd, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public DoubleUnaryOperator curve() {
    if (uncutSd <= NARROW * uncutMean) {
      return new Normal(uncutMean, uncutSd, low, high).curve();
    }
    TruncatedDistribution standard = cutTo(0, uncutMean, uncutSd, low, high);
    double scale = uncutSd * uncutSd / uncutMean;
    return u -> Check.within(low, scale * standard.at(u), high);
  }

  /**
   * uncutMean · (G(high) − G(low)) / (F(high) − F(low)), G the gamma distribution of a shape
   * greater by 1.
   */
  @Override
  public double mean() {
    if (uncutSd <= NARROW * uncutMean) {
      return new Normal(uncutMean, uncutSd, low, high).mean();
    }
    double inRange = cutTo(0, uncutMean, uncutSd, low, high).shareInRange();
    return uncutMean * cutTo(1, uncutMean, uncutSd, low, high).shareInRange() / inRange;
  }

  private static TruncatedDistribution cutTo(
      int extraShape, double mean, double sd, double low, double high) {
    double relative = mean / sd;
    double scale = sd * sd / mean;
    GammaDistribution standard = GammaDistribution.of(relative * relative + extraShape, 1);
    return new TruncatedDistribution(standard, low / scale, high / scale);
  }
}
