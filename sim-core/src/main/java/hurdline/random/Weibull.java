package hurdline.random;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.WeibullDistribution;

/**
 * Weibull distribution, cut to a range if that is finite.
 *
 * <p>F(x) = 1 − exp(−(x/λ)^k) for x ≥ 0. With h(x) = (x/λ)^k the cut one is x = λ·h^(1/k), h =
 * h(low) − ln(1 − u·(1 − exp(h(low) − h(high)))), which keeps its digits however far out the range
 * lies.
 *
 * @param shape k, dimensionless, above 0; with 1 it is the exponential distribution of mean λ
 * @param scale λ, in the unit of the drawn amount, above 0
 * @param low lower end of the range, may be −∞
 * @param high upper end of the range, may be +∞
 */
public record Weibull(double shape, double scale, double low, double high) implements Distribution {
  /** Beyond this the shares of the cases are too small to divide by each other. */
  private static final double FAR_OUT = 500;

  public Weibull {
    Check.above0("shape", shape);
    Check.above0("scale", scale);
    Check.cut(low, high);
    Check.leavesSomething(
        inRange(hazard(low, shape, scale), hazard(high, shape, scale)), low, high);
  }

  /** One that is not cut. */
  public static Weibull of(double shape, double scale) {
    return new Weibull(shape, scale, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public DoubleUnaryOperator curve() {
    double from = hazard(low, shape, scale);
    double share = inRange(from, hazard(high, shape, scale));
    if (shape == 1) {
      return u -> Check.within(low, scale * (from - StrictMath.log1p(-u * share)), high);
    }
    double power = 1 / shape;
    return u ->
        Check.within(low, scale * StrictMath.pow(from - StrictMath.log1p(-u * share), power), high);
  }

  /**
   * λ·Γ(1 + 1/k) times the share of its integral that lies in the range, over the share of the
   * cases there.
   */
  @Override
  public double mean() {
    double from = hazard(low, shape, scale);
    double to = hazard(high, shape, scale);
    if (shape == 1) {
      double lost = to == Double.POSITIVE_INFINITY ? 0 : (to - from) / StrictMath.expm1(to - from);
      return scale * (from + 1 - lost);
    }
    if (from > FAR_OUT) {
      return MeanOfCurve.overAllShares(curve(), low, high);
    }
    GammaDistribution integral = GammaDistribution.of(1 + 1 / shape, 1);
    double partOfIntegral = integral.survivalProbability(from) - integral.survivalProbability(to);
    double whole = WeibullDistribution.of(shape, scale).getMean();
    return whole * partOfIntegral / (StrictMath.exp(-from) * inRange(from, to));
  }

  private static double hazard(double amount, double shape, double scale) {
    return amount > 0 ? StrictMath.pow(amount / scale, shape) : 0;
  }

  /** Of the cases beyond {@code from}, the share that does not pass {@code to}. */
  private static double inRange(double from, double to) {
    return from == Double.POSITIVE_INFINITY ? 0 : -StrictMath.expm1(from - to);
  }
}
