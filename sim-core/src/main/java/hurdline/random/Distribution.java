package hurdline.random;

import java.util.function.DoubleUnaryOperator;

/**
 * How an amount varies: the curve from a share u of all cases, in the open interval (0, 1), to the
 * amount that so many cases do not exceed.
 *
 * <p>A distribution with bounds {@code low} and {@code high} that are infinite is not cut there.
 * One that is cut is the conditional one: F is scaled to the range, so {@code x = F⁻¹(F(low) +
 * u·(F(high) − F(low)))}; its mean and sd as given are those before the cut. All curves use {@link
 * StrictMath} where they are ours, so that the same draw gives the same bits on every machine.
 */
public sealed interface Distribution
    permits Constant,
        Normal,
        Lognormal,
        Exponential,
        Gamma,
        Weibull,
        Uniform,
        Triangular,
        Beta,
        Empirical {

  /**
   * The inverse of the distribution function, with everything that does not depend on u worked out
   * beforehand. Good for any number of calls and threads; a call allocates nothing of ours.
   */
  DoubleUnaryOperator curve();

  /** Mean of what is drawn, after a cut. */
  double mean();

  /**
   * The amount at one share of the cases. For many draws keep the {@link #curve()}.
   *
   * @param u share of the cases, above 0 and below 1
   * @throws IllegalArgumentException if u is not inside (0, 1)
   */
  default double at(double u) {
    if (!(u > 0 && u < 1)) {
      throw new IllegalArgumentException("u is " + u + "; expected a share above 0 and below 1");
    }
    return curve().applyAsDouble(u);
  }

  /**
   * Mean of what is drawn if amounts below {@code least} count as {@code least} and those above
   * {@code most} as {@code most}.
   *
   * @param least lower bound, may be −∞
   * @param most upper bound, may be +∞, not below {@code least}
   */
  default double meanWithin(double least, double most) {
    if (!(least <= most)) {
      throw new IllegalArgumentException("least is " + least + "; expected at most " + most);
    }
    return MeanOfCurve.of(this, least, most);
  }
}
