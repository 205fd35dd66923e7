package hurdline.statistics;

/**
 * The upper confidence limit of a mean, never below Student's.
 *
 * <p>With m, s and skewness γ of n values and q the upper point of Student's t with n − 1 degrees:
 * the greater of m + q·s/√n and Hall's limit, which lies further out where the values have a long
 * tail to the right. For normal values the mean is above it with at most the stated chance; Hall's
 * part only ever raises it.
 *
 * <p>Hall's transformation rises everywhere, so that a sample that is shifted down has a lower
 * limit; Johnson's (1978) does not, and would keep a plan the surer the worse it is.
 *
 * @see Intervals#hall
 */
final class UpperLimit {
  /** Below this skewness Hall's limit is Student's but for rounding. */
  private static final double NO_SKEWNESS = 1e-6;

  /** Share of q that the skewness term of the next order may be; common practice, no source. */
  private static final double LEANING = 0.3;

  private final double reach; // q/√n

  /**
   * @param count n, at least 2
   * @param chance that a mean of normal values is above the limit, above 0 and below a half
   */
  UpperLimit(int count, double chance) {
    reach = Intervals.student(count - 1, 1 - 2 * chance) / Math.sqrt(count);
  }

  /**
   * @param values as many as were said, read only
   */
  double of(double[] values) {
    return of(Moments.of(values), values.length);
  }

  /**
   * Whether values lean so far to the right that the limit may fail clearly more often than stated:
   * γ &gt; 0.3·√n/q, where the second-order term γ·(1 + 2q²)/(6√n) is above a tenth of q.
   */
  boolean isUnsure(Moments moments) {
    return moments.skewness() > LEANING / reach;
  }

  double of(Moments moments, int count) {
    double student = reach * moments.sd();
    double skewness = moments.skewness();
    double hall =
        Math.abs(skewness) < NO_SKEWNESS
            ? student
            : -moments.sd() * Intervals.untransformed(-reach, skewness, count);
    return moments.mean() + Math.max(student, hall);
  }
}
