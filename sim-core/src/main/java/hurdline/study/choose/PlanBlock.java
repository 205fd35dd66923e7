package hurdline.study.choose;

import hurdline.study.replicate.ReplicationRange;
import java.util.ArrayList;
import java.util.List;

/**
 * Some plans and some years that are simulated in one go.
 *
 * @param stage the stage of the choosing, from 0
 * @param number in its stage, from 0
 * @param plans their numbers
 * @param years the same for all of them
 * @param limits whether what limits each line is asked too
 */
public record PlanBlock(
    int stage, int number, List<Integer> plans, ReplicationRange years, boolean limits) {
  /** Some seconds of the example's: little is lost in a stop, and little is spent on keeping. */
  private static final int PLAN_YEARS = 160;

  private static final int MOST_YEARS = 40;

  public PlanBlock {
    plans = List.copyOf(plans);
  }

  /** Years of all plans together. */
  public int planYears() {
    return plans.size() * years.count();
  }

  /** A stage cut into blocks, the same whoever simulates them. */
  static List<PlanBlock> of(
      int stage, List<Integer> plans, ReplicationRange years, boolean limits) {
    List<PlanBlock> blocks = new ArrayList<>();
    int most = limits ? years.count() : MOST_YEARS;
    for (int from = years.from(); from < years.to(); from += most) {
      int to = Math.min(years.to(), from + most);
      int together = Math.max(1, PLAN_YEARS / (to - from));
      for (int first = 0; first < plans.size(); first += together) {
        List<Integer> some = plans.subList(first, Math.min(plans.size(), first + together));
        blocks.add(
            new PlanBlock(stage, blocks.size(), some, new ReplicationRange(from, to), limits));
      }
    }
    return blocks;
  }
}
