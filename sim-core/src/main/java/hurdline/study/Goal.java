package hurdline.study;

import hurdline.estimate.Summary;
import hurdline.plant.Nearest;
import hurdline.plant.ProblemsException;
import hurdline.work.Outcome;
import java.util.List;

/**
 * How many replications it takes.
 *
 * <p>Without an aim, as many as were asked for. With one, batches whose size hangs on nothing but what
 * the replications so far have said: the half-width falls as 1/√n, so n·(half-width/aim)² should do; a
 * batch never more than doubles what there is.
 */
final class Goal {
  /** A spread from fewer is an accident. */
  private static final int FEWEST = 10;

  private static final int SMALLEST_BATCH = 10;
  private static final int MOST = 10_000;

  private final Effort effort;

  Goal(Effort effort) {
    this.effort = effort;
  }

  int first() {
    return effort.until().isPresent()
        ? Math.max(effort.replications(), FEWEST)
        : effort.replications();
  }

  /** The cap: as many as this are played at most. */
  int most() {
    return Math.max(MOST, first());
  }

  /** Refuses an aim for a measure that this plant has not. */
  void check(Gathered gathered) {
    effort
        .until()
        .filter(aim -> !gathered.has(aim.measure()))
        .ifPresent(
            aim -> {
              List<String> known = gathered.columns().stream().map(Outcome.Column::name).toList();
              throw new ProblemsException(
                  List.of(
                      "\""
                          + aim.said()
                          + "\" asks for a measure that this plant does not have; expected "
                          + Nearest.expected("a measure", aim.measure(), known)));
            });
  }

  /** How many replications there should be in all, given those that are done. */
  int next(Gathered gathered) {
    int done = gathered.count();
    if (effort.until().isEmpty() || isReached(gathered) || isHopeless(gathered)) {
      return done;
    }
    double ratio = halfWidth(gathered) / aimed(gathered);
    double needed = Math.ceil(done * ratio * ratio) - done;
    int batch = (int) Math.min(Math.max(needed, SMALLEST_BATCH), done);
    return Math.min(done + batch, most());
  }

  boolean isReached(Gathered gathered) {
    return halfWidth(gathered) <= aimed(gathered);
  }

  /** The measure has no value in any replication, and more of them would not give it one. */
  boolean isHopeless(Gathered gathered) {
    return summary(gathered).count() == 0;
  }

  double halfWidth(Gathered gathered) {
    return summary(gathered).mean95().halfWidth();
  }

  /** The wanted half-width in the measure's unit. */
  double aimed(Gathered gathered) {
    Aim aim = effort.until().orElseThrow();
    return aim.relative()
        ? aim.halfWidth() * Math.abs(summary(gathered).mean())
        : aim.halfWidth();
  }

  private Summary summary(Gathered gathered) {
    return Summary.of(gathered.series(effort.until().orElseThrow().measure()));
  }
}
