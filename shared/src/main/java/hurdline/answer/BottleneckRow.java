package hurdline.answer;

/**
 * For how long one cause held a line.
 *
 * @param cause a cause word, see {@link hurdline.measure.Cause}; in a run machines that are alike
 *     and in parallel stand in it together
 * @param hours mean hours
 * @param share mean share of the line's scheduled hours, 0 to 1
 * @param shareLow95 lower end of the share's 95 % interval
 * @param shareHigh95 its upper end
 * @param interval which interval it is, as in {@link SummaryRow}
 */
public record BottleneckRow(
    String option,
    String line,
    String cause,
    double hours,
    double share,
    double shareLow95,
    double shareHigh95,
    String interval) {}
