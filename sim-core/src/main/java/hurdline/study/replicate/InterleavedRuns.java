package hurdline.study.replicate;

import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import java.util.List;
import java.util.function.Consumer;

/**
 * Simulates several plants on the same chance, a few replications of each in turn, so that all have
 * the same ones whenever it ends: a pair with one half missing would be of no use.
 */
public final class InterleavedRuns {
  private static final int PER_THREAD = 4;

  private final List<CompiledPlant> stages;
  private final RunSettings effort;

  /**
   * What came of it.
   *
   * @param figures of each plant
   * @param stopped whether replications are missing because the user asked for an end
   */
  public record Simulated(List<ReplicationResults> figures, boolean stopped) {}

  public InterleavedRuns(List<CompiledPlant> stages, RunSettings effort) {
    this.stages = stages;
    this.effort = effort;
  }

  /**
   * Simulates the first plant, the base, and all others; stop is asked between rounds only.
   *
   * @throws hurdline.plant.ProblemsException if the aim names no measure of the base
   */
  public Simulated simulate(ReplicationBudget simulations) {
    List<ReplicationResults> figures =
        stages.stream().map(stage -> new ReplicationResults()).toList();
    return simulate(
        simulations, figures, figures.stream().<Consumer<Outcome>>map(of -> of::add).toList());
  }

  /**
   * @param takers told of each plant's outcomes; they fill the figures, among others
   */
  public Simulated simulate(
      ReplicationBudget simulations,
      List<ReplicationResults> figures,
      List<Consumer<Outcome>> takers) {
    int threads =
        effort.until().isPresent()
            ? effort.threads()
            : Math.min(effort.threads(), effort.replications());
    try (ReplicationRunner runner = new ReplicationRunner(effort.seed(), threads)) {
      StoppingRule goal = new StoppingRule(effort, figures.subList(1, figures.size()));
      int wanted = goal.first();
      simulations.expect(wanted * stages.size());
      int last = 0;
      while (last < wanted && !simulations.isStopAsked()) {
        int upTo = Math.min(wanted, last + PER_THREAD * threads);
        ReplicationRange round = new ReplicationRange(1 + last, 1 + upTo);
        for (int at = 0; at < stages.size(); at++) {
          runner.run(stages.get(at), round, takers.get(at), simulations::done, () -> false);
        }
        last = upTo;
        goal.check(figures.get(0));
        if (last == wanted) {
          if (last == goal.first()) {
            goal.outOfReach(figures.get(0)).ifPresent(simulations::says);
          }
          wanted = goal.next(figures.get(0));
          simulations.expect((wanted - last) * stages.size());
        }
      }
      return new Simulated(List.copyOf(figures), last < wanted);
    }
  }
}
