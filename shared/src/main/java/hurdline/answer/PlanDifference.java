package hurdline.answer;

/**
 * How far one season plan lies from another in one measure; a row of the season's {@code
 * differences.csv}.
 *
 * @param against the plan compared with, whose mean is the row's base mean
 * @param row its option is the plan; joint intervals hold over all pairs of plans
 */
public record PlanDifference(String against, DifferenceRow row) {
  public String plan() {
    return row.option();
  }
}
