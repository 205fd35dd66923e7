package hurdline.chance;

import java.util.function.DoubleUnaryOperator;

/**
 * Lognormal distribution given by mean and sd of the amount itself (not of its logarithm), cut to a range if that is
 * finite.
 *
 * <p>x = exp(μ + σz) with σ² = ln(1 + (sd/mean)²) and μ = ln(mean) − σ²/2.
 *
 * @param mean before the cut, above 0
 * @param sd before the cut, 0 or above; with 0 the amount is the mean
 * @param low lower end of the range, may be −∞
 * @param high upper end of the range, may be +∞
 */
public record Lognormal(double mean, double sd, double low, double high) implements Distribution {
  public Lognormal {
    Check.above0("mean", mean);
    Check.notBelow0("sd", sd);
    Check.cut(low, high);
    if (sd == 0) {
      Check.holds(mean, low, high);
    } else {
      Check.leavesSomething(cutTo(mean, sd, low, high).shareInRange(), low, high);
    }
  }

  /** One that is not cut. */
  public static Lognormal of(double mean, double sd) {
    return new Lognormal(mean, sd, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public DoubleUnaryOperator curve() {
    if (sd == 0) {
      return Fixed.constant(mean);
    }
    double sigma = sigma(mean, sd);
    double mu = mu(mean, sigma);
    CutNormal z = cutTo(mean, sd, low, high);
    return u -> Math.min(Math.max(StrictMath.exp(mu + sigma * z.at(u)), low), high);
  }

  @Override
  public double mean() {
    return sd == 0 ? mean : mean * cutTo(mean, sd, low, high).meanOfExp(sigma(mean, sd));
  }

  private static double sigma(double mean, double sd) {
    double relative = sd / mean;
    return StrictMath.sqrt(StrictMath.log1p(relative * relative));
  }

  private static double mu(double mean, double sigma) {
    return StrictMath.log(mean) - sigma * sigma / 2;
  }

  private static CutNormal cutTo(double mean, double sd, double low, double high) {
    double sigma = sigma(mean, sd);
    double mu = mu(mean, sigma);
    return new CutNormal(zOf(low, mu, sigma), zOf(high, mu, sigma));
  }

  private static double zOf(double amount, double mu, double sigma) {
    return amount > 0 ? (StrictMath.log(amount) - mu) / sigma : Double.NEGATIVE_INFINITY;
  }
}
