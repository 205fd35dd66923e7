package hurdline.statistics;

/**
 * Limits between which a true value lies with a stated confidence.
 *
 * @param low lower limit; NaN where the data allow none
 * @param high upper limit; NaN where the data allow none
 */
public record Interval(double low, double high) {
  /** No limit on either side. */
  public static final Interval NONE = new Interval(Double.NaN, Double.NaN);

  public Interval {
    if (low > high) {
      throw new IllegalArgumentException("low is " + low + "; expected at most high, " + high);
    }
  }

  static Interval around(double middle, double halfWidth) {
    return new Interval(middle - halfWidth, middle + halfWidth);
  }

  /** Whether there is a limit on both sides. */
  public boolean isKnown() {
    return low <= high;
  }

  /** Half the distance between the limits; NaN unless both are there. */
  public double halfWidth() {
    return (high - low) / 2;
  }

  /** Whether the value lies between the limits or on one; never where a limit is missing. */
  public boolean covers(double value) {
    return low <= value && value <= high;
  }

  /**
   * The same without what lies below the least or above the most that can be; a limit that is
   * missing stays so.
   */
  public Interval within(double least, double most) {
    return new Interval(
        Math.min(most, Math.max(least, low)), Math.min(most, Math.max(least, high)));
  }

  /** Whether both limits are there and 0 lies outside them. */
  public boolean excludes0() {
    return low > 0 && high >= low || high < 0 && low <= high;
  }
}
