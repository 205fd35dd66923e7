package hurdline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * Plays several plants on the same chance, a few replications of each in turn, so that all have the
 * same ones whenever it ends: a pair with one half missing would be of no use.
 */
final class Rounds {
  private static final int PER_THREAD = 4;

  private final List<Stage> stages;
  private final Effort effort;

  Rounds(List<Stage> stages, Effort effort) {
    this.stages = stages;
    this.effort = effort;
  }

  /** What each plant came to; stop is asked between rounds only. */
  List<Figures> play(Run.Progress progress, BooleanSupplier stop) {
    int wanted = effort.replications();
    int threads = Math.min(effort.threads(), wanted);
    int all = wanted * stages.size();
    AtomicInteger done = new AtomicInteger();
    List<Figures> figures = new ArrayList<>();
    List<Players> players = new ArrayList<>();
    try {
      for (Stage stage : stages) {
        Figures of = new Figures();
        figures.add(of);
        players.add(new Players(stage, effort.seed(), threads, Figures.filling(of), one -> null));
      }
      for (int last = 0; last < wanted && !stop.getAsBoolean(); ) {
        last = Math.min(wanted, last + PER_THREAD * threads);
        for (Players one : players) {
          one.playTo(last, () -> progress.done(done.incrementAndGet(), all), () -> false);
        }
      }
    } finally {
      players.forEach(Players::close);
    }
    return figures;
  }
}
