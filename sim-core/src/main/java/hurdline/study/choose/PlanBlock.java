package hurdline.study.choose;

import hurdline.study.replicate.ReplicationRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * Some plans and some years that are simulated in one go.
 *
 * @param stage the stage of the choosing, from 0
 * @param number in its stage, from 0
 * @param plans their numbers
 * @param years the same for all of them
 * @param own whether each plan has draws of its own; else all plans meet the same
 * @param limits whether what limits each line is asked too
 */
public record PlanBlock(
    int stage,
    int number,
    List<Integer> plans,
    ReplicationRange years,
    boolean own,
    boolean limits) {
  /** Some seconds of the example's: little is lost in a stop, and little is spent on keeping. */
  private static final int MOST_PLAN_YEARS = 160;

  private static final int FEWEST_PLAN_YEARS = 20;

  /**
   * A stage of few plans is cut into about as many blocks, so that no thread long waits for another
   * at its end.
   */
  private static final int BLOCKS = 16;

  private static final int MOST_YEARS = 40;

  public PlanBlock {
    plans = List.copyOf(plans);
  }

  /** Years of all plans together. */
  public int planYears() {
    return plans.size() * years.count();
  }

  /** The same years of one of its plans. */
  PlanBlock of(int plan) {
    return new PlanBlock(stage, number, List.of(plan), years, own, limits);
  }

  /** A stage cut into blocks, the same whoever simulates them. */
  static List<PlanBlock> of(
      int stage, List<Integer> plans, ReplicationRange years, boolean limits) {
    List<PlanBlock> blocks = new ArrayList<>();
    int most = limits ? years.count() : MOST_YEARS;
    int planYears = planYearsEach((long) plans.size() * years.count());
    for (int from = years.from(); from < years.to(); from += most) {
      int to = Math.min(years.to(), from + most);
      int together = Math.max(1, planYears / (to - from));
      for (int first = 0; first < plans.size(); first += together) {
        List<Integer> some = plans.subList(first, Math.min(plans.size(), first + together));
        blocks.add(
            new PlanBlock(
                stage, blocks.size(), some, new ReplicationRange(from, to), false, limits));
      }
    }
    return blocks;
  }

  /**
   * The same where each plan has draws of its own and as many years as it needs.
   *
   * @param from the first year, of all plans
   * @param last number of each plan's last year
   */
  static List<PlanBlock> own(
      int stage, List<Integer> plans, int from, ToIntFunction<Integer> last) {
    List<PlanBlock> blocks = new ArrayList<>();
    int planYears =
        planYearsEach(
            plans.stream().mapToLong(plan -> Math.max(0, last.applyAsInt(plan) - from + 1)).sum());
    List<Integer> due = plans;
    for (int start = from; !due.isEmpty(); start += MOST_YEARS) {
      int first = start;
      due = due.stream().filter(plan -> last.applyAsInt(plan) >= first).toList();
      Map<Integer, List<Integer>> together = new TreeMap<>(); // by the end of their years
      for (int plan : due) {
        int end = Math.min(first + MOST_YEARS, last.applyAsInt(plan) + 1);
        together.computeIfAbsent(end, to -> new ArrayList<>()).add(plan);
      }
      together.forEach(
          (to, some) -> addOwn(blocks, stage, some, new ReplicationRange(first, to), planYears));
    }
    return blocks;
  }

  private static void addOwn(
      List<PlanBlock> blocks,
      int stage,
      List<Integer> plans,
      ReplicationRange years,
      int planYears) {
    int together = Math.max(1, planYears / years.count());
    for (int first = 0; first < plans.size(); first += together) {
      List<Integer> some = plans.subList(first, Math.min(plans.size(), first + together));
      blocks.add(new PlanBlock(stage, blocks.size(), some, years, true, false));
    }
  }

  private static int planYearsEach(long ofStage) {
    return (int) Math.max(FEWEST_PLAN_YEARS, Math.min(MOST_PLAN_YEARS, ofStage / BLOCKS));
  }
}
