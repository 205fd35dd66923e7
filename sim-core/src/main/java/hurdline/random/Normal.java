package hurdline.random;

import java.util.function.DoubleUnaryOperator;

/**
 * Normal distribution, cut to a range if that is finite: x = mean + sd·z.
 *
 * @param uncutMean before the cut, finite
 * @param uncutSd before the cut, 0 or above; with 0 the amount is the mean
 * @param low lower end of the range, may be −∞
 * @param high upper end of the range, may be +∞
 */
public record Normal(double uncutMean, double uncutSd, double low, double high)
    implements Distribution {
  public Normal {
    Check.finite("mean", uncutMean);
    Check.notBelow0("sd", uncutSd);
    Check.cut(low, high);
    if (uncutSd == 0) {
      Check.holds(uncutMean, low, high);
    } else {
      Check.leavesSomething(cutTo(uncutMean, uncutSd, low, high).shareInRange(), low, high);
    }
  }

  /** One that is not cut. */
  public static Normal of(double mean, double sd) {
    return new Normal(mean, sd, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public DoubleUnaryOperator curve() {
    if (uncutSd == 0) {
      return Constant.constant(uncutMean);
    }
    if (low == Double.NEGATIVE_INFINITY && high == Double.POSITIVE_INFINITY) {
      return u -> uncutMean + uncutSd * StandardNormal.quantile(u);
    }
    TruncatedNormal z = cutTo(uncutMean, uncutSd, low, high);
    return u -> Check.within(low, uncutMean + uncutSd * z.at(u), high);
  }

  @Override
  public double mean() {
    return uncutSd == 0
        ? uncutMean
        : uncutMean + uncutSd * cutTo(uncutMean, uncutSd, low, high).mean();
  }

  /**
   * least·P(X &lt; least) + most·P(X &gt; most) + μ·P(between) + σ·(φ(a) − φ(b)), a and b the
   * bounds in standard units; exact to rounding. Of the distributions that a plant file can name it
   * is the only one whose draws can lie below 0.
   */
  @Override
  public double meanWithin(double least, double most) {
    double from = Math.max(low, least);
    double to = Math.min(high, most);
    if (uncutSd == 0 || !(from < to)) {
      return Math.min(Math.max(uncutSd == 0 ? uncutMean : low, least), most);
    }
    if (from == low && to == high) {
      return mean();
    }
    TruncatedNormal between = cutTo(uncutMean, uncutSd, from, to);
    double sum = uncutMean * between.shareInRange() + uncutSd * between.integral();
    sum += low < from ? from * cutTo(uncutMean, uncutSd, low, from).shareInRange() : 0;
    sum += to < high ? to * cutTo(uncutMean, uncutSd, to, high).shareInRange() : 0;
    return sum / cutTo(uncutMean, uncutSd, low, high).shareInRange();
  }

  private static TruncatedNormal cutTo(double mean, double sd, double low, double high) {
    return new TruncatedNormal((low - mean) / sd, (high - mean) / sd);
  }
}
