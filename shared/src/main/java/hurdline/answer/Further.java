package hurdline.answer;

/**
 * What was asked of a comparison besides the differences, and what was found.
 *
 * @param withinYr the time within which it was asked how likely an option pays back; NaN for its life
 */
public record Further(double withinYr) {
  /** Nothing was asked. */
  public static Further nothing() {
    return new Further(Double.NaN);
  }
}
