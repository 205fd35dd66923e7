package hurdline.fit;

import hurdline.random.Distribution;

/**
 * A law with the parameters that make what was seen most likely.
 *
 * @param t parameters, as {@link Law} has them, of amounts in units
 * @param covariance of t; empty where the likelihood has no clear maximum
 * @param logLikelihood of the amounts as they are, not in units
 * @param unit what an amount of 1 stands for
 * @param low from which amount on they were seen, 0 for all
 */
public record LawFit(
    Law law,
    double[] t,
    double[][] covariance,
    double logLikelihood,
    int ended,
    double unit,
    double low) {
  private static final double STEP = 1e-4;

  public boolean isSound() {
    return covariance.length > 0;
  }

  /** As the engine draws it: only above {@code low}. */
  public Distribution distribution() {
    return law.distribution(t, unit, low);
  }

  /** Mean of what is drawn. */
  public double mean() {
    return distribution().mean();
  }

  /** Standard error of the logarithm of the mean: by the delta method from the covariance. */
  public double meanErrorShare() {
    double[] slope = new double[t.length];
    for (int i = 0; i < t.length; i++) {
      slope[i] = (logMean(i, STEP) - logMean(i, -STEP)) / (2 * STEP);
    }
    double variance = 0;
    for (int i = 0; i < t.length; i++) {
      for (int j = 0; j < t.length; j++) {
        variance += slope[i] * covariance[i][j] * slope[j];
      }
    }
    return Math.sqrt(Math.max(0, variance));
  }

  private double logMean(int moved, double by) {
    double[] other = t.clone();
    other[moved] += by;
    return Math.log(law.distribution(other, unit, low).mean());
  }

  /**
   * Akaike's information criterion with the correction for few: −2ℓ + 2k + 2k(k + 1)/(n − k − 1), k
   * parameters, n ends; infinite where n is k + 1 or less.
   *
   * @see "Hurvich and Tsai 1989, from memory"
   */
  public double aicc() {
    int k = law.parameters();
    return ended - k - 1 > 0
        ? -2 * logLikelihood + 2 * k + 2.0 * k * (k + 1) / (ended - k - 1)
        : Double.POSITIVE_INFINITY;
  }
}
