package hurdline.answer;

import java.util.List;

/**
 * One plan of all that there are.
 *
 * @param plan its number, from 0
 * @param at place of its value in each choice
 * @param cost what it costs to buy; in the file's currency
 * @param yearlyCost its cost of capital in a calendar; NaN where that is not asked
 * @param status what became of it
 * @param round in which it went out, from 0; -1 where it did not
 * @param against number of the plan that led in that round; -1 without one
 * @param difference mean of this plan less that one in the round's years; NaN where not judged
 * @param limit upper limit of that mean; NaN where not judged
 * @param years that were simulated of it before the last ones
 * @param mean of these years; NaN without any
 * @param reason why it cannot be simulated, or which bound it does not meet; else empty
 */
public record ChoiceRow(
    int plan,
    List<Integer> at,
    double cost,
    double yearlyCost,
    Status status,
    int round,
    int against,
    double difference,
    double limit,
    int years,
    double mean,
    String reason) {
  public ChoiceRow {
    at = List.copyOf(at);
  }

  /** What became of a plan. */
  public enum Status {
    /** It is the one that is named. */
    NAMED,
    /** It may be the best. */
    LEFT,
    /** It was judged to be below another. */
    OUT,
    /** It is a combination that the file leaves out. */
    NEVER,
    /** No plant comes of it, or the measure has no value. */
    PROBLEM,
    /** It does not meet a bound in enough of the years that choose. */
    BOUND
  }
}
