package hurdline.study.replicate;

import hurdline.answer.RunFact;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;

/**
 * Counts the simulates of a study over all plants, for those who watch, and simulates further
 * plants whole.
 */
public final class ReplicationBudget {
  private final RunSettings effort;
  private final ProgressListener progress;
  private final BooleanSupplier stop;
  private final AtomicInteger done = new AtomicInteger();
  private Supplier<HeadlineSoFar> headline = HeadlineSoFar::unknown;
  private int expected;
  private boolean cut;

  public ReplicationBudget(RunSettings effort, ProgressListener progress, BooleanSupplier stop) {
    this.effort = effort;
    this.progress = progress;
    this.stop = stop;
  }

  /** There are so many more to come. */
  public void expect(int simulations) {
    expected += simulations;
  }

  /** What those who watch are told from now on; worked out at times only. */
  public void headline(Supplier<HeadlineSoFar> known) {
    headline = known;
  }

  /** One is done. */
  void done() {
    progress.headline(headline);
    progress.done(done.incrementAndGet(), expected);
  }

  /** Passes on what those who watch should know before the end. */
  void says(RunFact.AimOutOfReach fact) {
    progress.says(fact);
  }

  /** Whether a plant was left because stop was asked for. */
  public boolean isCut() {
    return cut;
  }

  public boolean isStopAsked() {
    return stop.getAsBoolean();
  }

  /**
   * A plant simulated so often, on the same chance as all others of this effort; expected already.
   *
   * @return empty if stop was asked for before it was whole
   */
  public Optional<ReplicationResults> whole(CompiledPlant stage, int count) {
    ReplicationResults figures = new ReplicationResults();
    simulate(stage, 0, count, figures::add);
    cut |= figures.count() < count;
    return figures.count() == count ? Optional.of(figures) : Optional.empty();
  }

  /** The first replications once more, each with its draws of inputs; expected by this. */
  public ReplicationResults drawn(DrawnPlants plants, int count) {
    expect(count);
    ReplicationResults figures = new ReplicationResults();
    int threads = Math.min(effort.threads(), count);
    try (ReplicationRunner runner = new ReplicationRunner(effort.seed(), threads)) {
      runner.run(plants, new ReplicationRange(1, 1 + count), figures::add, this::done, stop);
    }
    cut |= figures.count() < count;
    return figures;
  }

  /**
   * Lives simulated, on the same chance; expected by this. Empty if stop was asked for before they
   * were whole.
   */
  public Optional<ReplicationResults> chained(CarryOverYears chains) {
    expect(chains.calendars());
    Optional<ReplicationResults> simulated = chains.simulate(effort, this::done, stop);
    cut |= simulated.isEmpty();
    return simulated;
  }

  /**
   * Simulates so many replications of a plant after those that are known, or until stop is asked
   * for; expected already.
   */
  void simulate(CompiledPlant stage, int after, int count, Consumer<Outcome> taker) {
    int threads = Math.min(effort.threads(), count);
    try (ReplicationRunner runner = new ReplicationRunner(effort.seed(), threads)) {
      runner.run(
          stage, new ReplicationRange(1 + after, 1 + after + count), taker, this::done, stop);
    }
  }

  /**
   * One measure of so many more replications of a plant, which are expected by this.
   *
   * @param after how many are known
   * @return fewer if stop was asked for
   */
  public double[] further(CompiledPlant stage, int after, int count, String measure) {
    expect(count);
    DoubleStream.Builder found = DoubleStream.builder();
    simulate(stage, after, count, outcome -> found.add(outcome.value(measure)));
    double[] values = found.build().toArray();
    cut |= values.length < count;
    return values;
  }
}
