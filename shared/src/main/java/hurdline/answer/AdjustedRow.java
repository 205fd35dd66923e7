package hurdline.answer;

/**
 * A headline measure adjusted for the drawn crop, whose mean is known exactly; a row of {@code
 * adjusted.csv}. It stands beside the plain mean, never in its place.
 *
 * @param option {@code base}, a plan, or options: alone what a summary row is of, in a comparison
 *     the option less the base
 * @param crop the crop whose drawn amount is the control
 * @param mean plain mean, as in the summary or the differences
 * @param error its standard error
 * @param adjusted the mean corrected for how far the drawn crop lies off its own
 * @param adjustedError its standard error, without asking for equal spread (HC3)
 * @param low95 lower end of the 95 % interval of {@code adjusted}; in a comparison it holds
 *     together with those of the other options
 * @param high95 its upper end
 */
public record AdjustedRow(
    String option,
    String measure,
    String unit,
    String crop,
    double mean,
    double error,
    double adjusted,
    double adjustedError,
    double low95,
    double high95) {
  /** What must be gone of a standard error before a second figure is worth a reader's time. */
  private static final double MUCH = 0.25;

  /** Whether the measure varies, and the drawn crop explains much of that. */
  public boolean helps() {
    return error > 0 && adjustedError <= (1 - MUCH) * error;
  }

  /**
   * Whether the plain mean lies off the adjusted one by more than the standard error of the latter.
   */
  public boolean isOff() {
    return Math.abs(adjusted - mean) > adjustedError;
  }
}
