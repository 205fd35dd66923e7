package hurdline.chance;

import java.util.function.DoubleUnaryOperator;

/**
 * Normal distribution, cut to a range if that is finite: x = mean + sd·z.
 *
 * @param mean before the cut, finite
 * @param sd before the cut, 0 or above; with 0 the amount is the mean
 * @param low lower end of the range, may be −∞
 * @param high upper end of the range, may be +∞
 */
public record Normal(double mean, double sd, double low, double high) implements Distribution {
  public Normal {
    Check.finite("mean", mean);
    Check.notBelow0("sd", sd);
    Check.cut(low, high);
    if (sd == 0) {
      Check.holds(mean, low, high);
    } else {
      Check.leavesSomething(cutTo(mean, sd, low, high).shareInRange(), low, high);
    }
  }

  /** One that is not cut. */
  public static Normal of(double mean, double sd) {
    return new Normal(mean, sd, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public DoubleUnaryOperator curve() {
    if (sd == 0) {
      return Fixed.constant(mean);
    }
    if (low == Double.NEGATIVE_INFINITY && high == Double.POSITIVE_INFINITY) {
      return u -> mean + sd * StandardNormal.quantile(u);
    }
    CutNormal z = cutTo(mean, sd, low, high);
    return u -> Math.min(Math.max(mean + sd * z.at(u), low), high);
  }

  @Override
  public double mean() {
    return sd == 0 ? mean : mean + sd * cutTo(mean, sd, low, high).mean();
  }

  private static CutNormal cutTo(double mean, double sd, double low, double high) {
    return new CutNormal((low - mean) / sd, (high - mean) / sd);
  }
}
