package hurdline.statistics;

/**
 * Which interval a mean has. The skewness that decides is that of the sample, G₁ = n/((n − 1)(n −
 * 2))·Σ((xᵢ − m)/s)³; that of 40 values from a distribution with skewness 2 is 1.6 on average.
 */
public enum MeanInterval {
  /** None: fewer than two values. */
  NONE(""),
  /** m ± t·s/√n. */
  STUDENT("student"),
  /** Hall's: lies further out on the side of the long tail. */
  HALL("hall"),
  /**
   * Student's, of values too skewed for it and too few for Hall's: holds less often than its level
   * says.
   */
  SKEWED("skewed"),
  /** A point: no pair of a difference differs by more than rounding. */
  EQUAL("equal");

  /**
   * From so many values on Hall's interval is stable; below, its width may be many times Student's.
   */
  static final int FEWEST_FOR_HALL = 40;

  /** Above this |G₁| Student's interval at 95 % holds in 94 % and less of samples of 40. */
  private static final double SKEWED_FROM = 1;

  /** Few values of no skewness at all often have a |G₁| of 1; one above 2 is no accident. */
  private static final double SKEWED_FROM_OF_FEW = 2;

  private final String word;

  MeanInterval(String word) {
    this.word = word;
  }

  /** As it stands in the column {@code interval} of a table. */
  public String word() {
    return word;
  }

  /** That of a sample. */
  public static MeanInterval of(double[] values) {
    return of(Moments.of(values), values.length);
  }

  static MeanInterval of(Moments moments, int count) {
    if (count < 2) {
      return NONE;
    }
    double skewness = Math.abs(moments.skewness());
    if (count < FEWEST_FOR_HALL) {
      return skewness > SKEWED_FROM_OF_FEW ? SKEWED : STUDENT;
    }
    return skewness > SKEWED_FROM ? HALL : STUDENT;
  }
}
