package hurdline.answer;

import java.util.List;

/**
 * What some plans of very many came to in some years: kept on disk until the answer is whole.
 *
 * @param stage the stage of the choosing, from 0
 * @param number of the block in its stage, from 0
 * @param from number of the first year, a replication
 * @param plans in the block's order
 */
public record SimulatedBlock(int stage, int number, int from, List<Plan> plans) {
  public SimulatedBlock {
    plans = List.copyOf(plans);
  }

  /**
   * A plan.
   *
   * @param plan its number
   * @param problem why it cannot be simulated; empty where it is
   * @param measured measures in the order in which they were asked, each by year; none with a
   *     problem
   * @param limits what limits each line longest; only where it was asked
   */
  public record Plan(int plan, String problem, List<Series> measured, List<ChosenLimit> limits) {
    public Plan {
      measured = List.copyOf(measured);
      limits = List.copyOf(limits);
    }
  }

  /**
   * A measure year by year.
   *
   * @param values handed over, not to be written again
   */
  public record Series(double[] values) {}
}
