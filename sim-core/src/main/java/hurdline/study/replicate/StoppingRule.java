package hurdline.study.replicate;

import hurdline.answer.RunFact;
import hurdline.plant.Expected;
import hurdline.plant.Nearest;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.simulation.results.Outcome;
import hurdline.statistics.PairedDifference;
import hurdline.statistics.Summary;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * How many replications it takes.
 *
 * <p>Without an aim, as many as were asked for. With one, batches whose size hangs on nothing but
 * what the replications so far have said: the half-width falls as 1/√n, so n·(half-width/aim)²
 * should do; a batch never more than doubles what there is. Where plants are set side by side it is
 * the difference of each from the base that is to be known, by the widest of the intervals that
 * hold together; a relative aim is then a share of the base's mean, since a difference may well be
 * 0.
 */
public final class StoppingRule {
  /**
   * A spread from fewer is an accident: ending as soon as an interval looks narrow enough, an aim
   * for a skewed measure held in 72 % of 4,000 trials that began with 10, and in 90 % of those that
   * began with 40 (measured on the example).
   */
  private static final int FEWEST = 40;

  private static final int SMALLEST_BATCH = 10;
  private static final int MOST = 10_000;

  private final RunSettings effort;
  private final List<ReplicationResults> others;

  public StoppingRule(RunSettings effort) {
    this(effort, List.of());
  }

  /**
   * @param others the plants set beside the one whose figures are asked with, if any
   */
  public StoppingRule(RunSettings effort, List<ReplicationResults> others) {
    this.effort = effort;
    this.others = others;
  }

  public int first() {
    return effort.until().isPresent()
        ? Math.max(effort.replications(), FEWEST)
        : effort.replications();
  }

  /** The cap: as many as this are simulated at most. */
  public int most() {
    return Math.max(MOST, first());
  }

  /** Refuses an aim for a measure that this plant has not. */
  public void check(ReplicationResults figures) {
    effort
        .until()
        .filter(aim -> !figures.has(aim.measure()))
        .ifPresent(
            aim -> {
              List<String> known = figures.columns().stream().map(Outcome.Column::name).toList();
              Expected expected = Nearest.expected("a measure", aim.measure(), known);
              throw new ProblemsException(
                  List.of(
                      LocatedProblem.of(
                          "",
                          "\"" + aim.said() + "\" asks for a measure that this plant does not have",
                          expected.text(),
                          expected.nearest())));
            });
  }

  /** How many replications there should be in all, given those that are done. */
  public int next(ReplicationResults figures) {
    int done = figures.count();
    if (effort.until().isEmpty() || isReached(figures) || isHopeless(figures)) {
      return done;
    }
    int batch = (int) Math.min(Math.max(needed(figures) - done, SMALLEST_BATCH), done);
    return Math.min(done + batch, most());
  }

  /**
   * That the aim is out of reach, as the replications so far tell; half-widths fall as 1/√n.
   *
   * @return empty where it is within reach, or there is none
   */
  public Optional<RunFact.AimOutOfReach> outOfReach(ReplicationResults figures) {
    if (effort.until().isEmpty()
        || isReached(figures)
        || isHopeless(figures)
        || needed(figures) <= most()) {
      return Optional.empty();
    }
    return Optional.of(
        new RunFact.AimOutOfReach(
            effort.until().orElseThrow().said(), figures.count(), needed(figures), most()));
  }

  /** How many replications in all should do. */
  public double needed(ReplicationResults figures) {
    double ratio = halfWidth(figures) / aimed(figures);
    return Math.ceil(figures.count() * ratio * ratio);
  }

  public boolean isReached(ReplicationResults figures) {
    return halfWidth(figures) <= aimed(figures);
  }

  /** The measure has no value in any replication, and more of them would not give it one. */
  public boolean isHopeless(ReplicationResults figures) {
    return summary(figures).count() == 0
        || !others.isEmpty()
            && others.stream().noneMatch(other -> pair(figures, other).count() > 0);
  }

  public double halfWidth(ReplicationResults figures) {
    if (others.isEmpty()) {
      return summary(figures).mean95().halfWidth();
    }
    DoubleSummaryStatistics widths =
        others.stream()
            .map(other -> pair(figures, other))
            .filter(pair -> pair.count() > 0)
            .mapToDouble(pair -> pair.joint().halfWidth())
            .summaryStatistics();
    return widths.getCount() == 0 ? Double.NaN : widths.getMax();
  }

  private PairedDifference pair(ReplicationResults base, ReplicationResults other) {
    String measure = effort.until().orElseThrow().measure();
    double[] none = new double[0];
    return other.has(measure)
        ? PairedDifference.of(base.series(measure), other.series(measure), others.size())
        : PairedDifference.of(none, none, others.size());
  }

  /** The wanted half-width in the measure's unit. */
  public double aimed(ReplicationResults figures) {
    Precision aim = effort.until().orElseThrow();
    return aim.relative() ? aim.halfWidth() * Math.abs(summary(figures).mean()) : aim.halfWidth();
  }

  private Summary summary(ReplicationResults figures) {
    return Summary.of(figures.series(effort.until().orElseThrow().measure()));
  }
}
