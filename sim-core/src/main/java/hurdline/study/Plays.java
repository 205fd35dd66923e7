package hurdline.study;

import hurdline.answer.RunFact;
import hurdline.work.Outcome;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Counts the plays of a study over all plants, for those who watch, and plays further plants whole. */
final class Plays {
  private final Effort effort;
  private final Run.Progress progress;
  private final BooleanSupplier stop;
  private final AtomicInteger done = new AtomicInteger();
  private int expected;
  private boolean cut;

  Plays(Effort effort, Run.Progress progress, BooleanSupplier stop) {
    this.effort = effort;
    this.progress = progress;
    this.stop = stop;
  }

  /** There are so many more to come. */
  void expect(int plays) {
    expected += plays;
  }

  /** One is done. */
  void done() {
    progress.done(done.incrementAndGet(), expected);
  }

  /** Passes on what those who watch should know before the end. */
  void says(RunFact.AimOutOfReach fact) {
    progress.says(fact);
  }

  /** Whether a plant was left because stop was asked for. */
  boolean isCut() {
    return cut;
  }

  boolean isStopAsked() {
    return stop.getAsBoolean();
  }

  /**
   * A plant played so often, on the same chance as all others of this effort; expected already.
   *
   * @return empty if stop was asked for before it was whole
   */
  Optional<Figures> whole(Stage stage, int count) {
    Figures figures = new Figures();
    play(stage, 0, count, Figures.filling(figures));
    cut |= figures.count() < count;
    return figures.count() == count ? Optional.of(figures) : Optional.empty();
  }

  /** Lives simulated, on the same chance; expected by this. Empty if stop was asked for before they were whole. */
  Optional<Figures> chained(Chains chains) {
    expect(chains.calendars());
    Optional<Figures> played = chains.play(effort, this::done, stop);
    cut |= played.isEmpty();
    return played;
  }

  /** Plays so many replications of a plant after those that are known, or until stop is asked for; expected already. */
  void play(Stage stage, int after, int count, Consumer<Outcome> taker) {
    int threads = Math.min(effort.threads(), count);
    try (Players players = new Players(stage, effort.seed(), threads, taker, one -> null)) {
      players.skipTo(after);
      players.playTo(after + count, this::done, stop);
    }
  }

  /**
   * One measure of so many more replications of a plant, which are expected by this.
   *
   * @param after how many are known
   * @return fewer if stop was asked for
   */
  double[] further(Stage stage, int after, int count, String measure) {
    expect(count);
    Map<Integer, Double> found = new TreeMap<>();
    play(
        stage,
        after,
        count,
        outcome -> found.put(outcome.replication(), outcome.value(measure)));
    cut |= found.size() < count;
    return found.values().stream().mapToDouble(Double::doubleValue).toArray();
  }
}
