package hurdline.study;

import java.util.ArrayList;
import java.util.List;

/**
 * Plays several plants on the same chance, a few replications of each in turn, so that all have the
 * same ones whenever it ends: a pair with one half missing would be of no use.
 */
final class Rounds {
  private static final int PER_THREAD = 4;

  private final List<Stage> stages;
  private final Effort effort;

  /**
   * What came of it.
   *
   * @param figures of each plant
   * @param stopped whether replications are missing because the user asked for an end
   */
  record Played(List<Figures> figures, boolean stopped) {}

  Rounds(List<Stage> stages, Effort effort) {
    this.stages = stages;
    this.effort = effort;
  }

  /**
   * Plays the first plant, the base, and all others; stop is asked between rounds only.
   *
   * @throws hurdline.plant.ProblemsException if the aim names no measure of the base
   */
  Played play(Plays plays) {
    List<Figures> figures = new ArrayList<>();
    List<Players> players = new ArrayList<>();
    int threads =
        effort.until().isPresent()
            ? effort.threads()
            : Math.min(effort.threads(), effort.replications());
    try {
      for (Stage stage : stages) {
        Figures of = new Figures();
        figures.add(of);
        players.add(new Players(stage, effort.seed(), threads, Figures.filling(of), one -> null));
      }
      Goal goal = new Goal(effort, figures.subList(1, figures.size()));
      int wanted = goal.first();
      plays.expect(wanted * stages.size());
      int last = 0;
      while (last < wanted && !plays.isStopAsked()) {
        last = Math.min(wanted, last + PER_THREAD * threads);
        for (Players one : players) {
          one.playTo(last, plays::done, () -> false);
        }
        goal.check(figures.get(0));
        if (last == wanted) {
          wanted = goal.next(figures.get(0));
          plays.expect((wanted - last) * stages.size());
        }
      }
      return new Played(List.copyOf(figures), last < wanted);
    } finally {
      players.forEach(Players::close);
    }
  }
}
