package hurdline.random;

/**
 * The standard normal distribution cut to a range of z. A range wholly in the upper tail is
 * mirrored into the lower one, where shares keep their digits.
 */
final class TruncatedNormal {
  private static final double GREATEST_SHARE = Math.nextDown(1.0);

  private final boolean mirrored;
  private final double shareBelowRange;
  private final double shareInRange;
  private final double low;
  private final double high;

  /**
   * @param low lower end, may be −∞ @param high upper end, may be +∞, above low
   */
  TruncatedNormal(double low, double high) {
    mirrored = low > 0;
    this.low = mirrored ? -high : low;
    this.high = mirrored ? -low : high;
    shareBelowRange = StandardNormal.shareBelow(this.low);
    shareInRange = StandardNormal.shareBelow(this.high) - shareBelowRange;
  }

  double shareInRange() {
    return shareInRange;
  }

  /** z at the share u of the cases in the range; rounding may put it a hair outside. */
  double at(double u) {
    double share = shareBelowRange + (mirrored ? 1 - u : u) * shareInRange;
    double z = StandardNormal.quantile(share < 1 ? share : GREATEST_SHARE);
    return mirrored ? -z : z;
  }

  /** Mean of exp(σz), divided by exp(σ²/2); with σ = 0 it is 1. */
  double meanOfExp(double sigma) {
    double a = (mirrored ? -high : low) - sigma;
    double b = (mirrored ? -low : high) - sigma;
    return new TruncatedNormal(a, b).shareInRange / shareInRange;
  }

  /** Mean of z: (φ(a) − φ(b)) / (Φ(b) − Φ(a)). */
  double mean() {
    return integral() / shareInRange;
  }

  /** ∫ z·φ(z) dz over the range: φ(a) − φ(b). */
  double integral() {
    double integral = StandardNormal.density(low) - StandardNormal.density(high);
    return mirrored ? -integral : integral;
  }
}
