package hurdline.fit;

/**
 * A sum over a sum, r = Σy/Σx, with the standard error √(n/(n − 1)·Σ(y − r·x)²)/Σx of a ratio
 * estimator.
 *
 * @see "Cochran, Sampling Techniques, section 6.4, from memory"
 */
record Ratio(double value, double error) {
  static Ratio of(double[][] pairs) {
    double y = 0;
    double x = 0;
    for (double[] pair : pairs) {
      y += pair[0];
      x += pair[1];
    }
    double ratio = y / x;
    double squares = 0;
    for (double[] pair : pairs) {
      squares += Math.pow(pair[0] - ratio * pair[1], 2);
    }
    return new Ratio(ratio, Math.sqrt(squares * pairs.length / (pairs.length - 1.0)) / x);
  }

  static Ratio ofCounts(int some, int all) {
    double share = (double) some / all;
    return new Ratio(share, Math.sqrt(share * (1 - share) / all));
  }
}
