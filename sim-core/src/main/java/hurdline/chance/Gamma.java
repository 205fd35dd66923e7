package hurdline.chance;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * Gamma distribution given by mean and sd, cut to a range if that is finite.
 *
 * <p>Shape a = (mean/sd)², scale θ = sd²/mean. There is no closed inverse; the library seeks it, at about 1 µs a draw.
 *
 * @param mean before the cut, above 0
 * @param sd before the cut, 0 or above; with 0 the amount is the mean
 * @param low lower end of the range, may be −∞
 * @param high upper end of the range, may be +∞
 */
public record Gamma(double mean, double sd, double low, double high) implements Distribution {
  public Gamma {
    Check.above0("mean", mean);
    Check.notBelow0("sd", sd);
    Check.cut(low, high);
    if (sd == 0) {
      Check.holds(mean, low, high);
    } else {
      Check.leavesSomething(cutTo(0, mean, sd, low, high).shareInRange(), low, high);
    }
  }

  /** One that is not cut. */
  public static Gamma of(double mean, double sd) {
    return new Gamma(mean, sd, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public DoubleUnaryOperator curve() {
    if (sd == 0) {
      return Fixed.constant(mean);
    }
    CutCurve standard = cutTo(0, mean, sd, low, high);
    double scale = sd * sd / mean;
    return u -> Math.min(Math.max(scale * standard.at(u), low), high);
  }

  /** mean · (G(high) − G(low)) / (F(high) − F(low)), G the gamma distribution of a shape greater by 1. */
  @Override
  public double mean() {
    if (sd == 0) {
      return mean;
    }
    double inRange = cutTo(0, mean, sd, low, high).shareInRange();
    return mean * cutTo(1, mean, sd, low, high).shareInRange() / inRange;
  }

  private static CutCurve cutTo(int extraShape, double mean, double sd, double low, double high) {
    double relative = mean / sd;
    double scale = sd * sd / mean;
    GammaDistribution standard = GammaDistribution.of(relative * relative + extraShape, 1);
    return new CutCurve(standard, low / scale, high / scale);
  }
}
