package hurdline.answer;

import java.util.List;

/**
 * Which of base and options is the best in one measure, picked with a stated guarantee.
 *
 * @param measure its full name
 * @param zone the least difference that is worth finding, in the measure's unit
 * @param least whether the least mean is the best
 * @param confidence of the guarantee
 * @param first replications from which the spread of differences was taken
 * @param decided whether one is left
 * @param option the one that was picked; of those left the best so far where it is not decided
 * @param rows base and options, the base first; empty where it was not asked
 */
public record Selection(
    String measure,
    String unit,
    double zone,
    boolean least,
    double confidence,
    int first,
    boolean decided,
    String option,
    List<Row> rows) {
  public Selection {
    rows = List.copyOf(rows);
  }

  /**
   * An alternative; a row of {@code selection.csv}.
   *
   * @param mean over its replications
   * @param replications after which it was out, or all that were taken
   * @param left whether it is one of those that are left
   */
  public record Row(String option, double mean, int replications, boolean left) {}

  /** Nothing was asked. */
  public static Selection none() {
    return new Selection("", "", Double.NaN, false, Double.NaN, 0, false, "", List.of());
  }

  public boolean isAsked() {
    return !rows.isEmpty();
  }
}
