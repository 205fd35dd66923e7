package hurdline.random;

import java.util.function.DoubleUnaryOperator;

/**
 * Lognormal distribution given by mean and sd of the amount itself (not of its logarithm), cut to a
 * range if that is finite.
 *
 * <p>x = exp(μ + σz) with σ² = ln(1 + (sd/mean)²) and μ = ln(mean) − σ²/2.
 *
 * @param uncutMean before the cut, above 0
 * @param uncutSd before the cut, 0 or above; with 0 the amount is the mean
 * @param low lower end of the range, may be −∞
 * @param high upper end of the range, may be +∞
 */
public record Lognormal(double uncutMean, double uncutSd, double low, double high)
    implements Distribution {
  public Lognormal {
    Check.above0("mean", uncutMean);
    Check.notBelow0("sd", uncutSd);
    Check.cut(low, high);
    if (uncutSd == 0) {
      Check.holds(uncutMean, low, high);
    } else {
      Check.leavesSomething(cutTo(uncutMean, uncutSd, low, high).shareInRange(), low, high);
    }
  }

  /** One that is not cut. */
  public static Lognormal of(double mean, double sd) {
    return new Lognormal(mean, sd, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public DoubleUnaryOperator curve() {
    if (uncutSd == 0) {
      return Constant.constant(uncutMean);
    }
    double sigma = sigma(uncutMean, uncutSd);
    double mu = mu(uncutMean, sigma);
    TruncatedNormal z = cutTo(uncutMean, uncutSd, low, high);
    return u -> Check.within(low, StrictMath.exp(mu + sigma * z.at(u)), high);
  }

  @Override
  public double mean() {
    return uncutSd == 0
        ? uncutMean
        : uncutMean * cutTo(uncutMean, uncutSd, low, high).meanOfExp(sigma(uncutMean, uncutSd));
  }

  private static double sigma(double mean, double sd) {
    double relative = sd / mean;
    return StrictMath.sqrt(StrictMath.log1p(relative * relative));
  }

  private static double mu(double mean, double sigma) {
    return StrictMath.log(mean) - sigma * sigma / 2;
  }

  private static TruncatedNormal cutTo(double mean, double sd, double low, double high) {
    double sigma = sigma(mean, sd);
    double mu = mu(mean, sigma);
    return new TruncatedNormal(zOf(low, mu, sigma), zOf(high, mu, sigma));
  }

  private static double zOf(double amount, double mu, double sigma) {
    return amount > 0 ? (StrictMath.log(amount) - mu) / sigma : Double.NEGATIVE_INFINITY;
  }
}
