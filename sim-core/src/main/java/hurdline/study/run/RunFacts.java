package hurdline.study.run;

import hurdline.answer.Fact;
import hurdline.answer.RunFact;
import hurdline.answer.RunFact.Aim.Outcome;
import hurdline.study.AnswerRows;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import java.util.List;
import java.util.stream.Stream;

/** What the figures of every study take for granted. */
public final class RunFacts {
  private final AnswerRows rows;
  private final RunSettings effort;
  private final ReplicationResults figures;
  private final StoppingRule goal;

  /**
   * @param rows of the same figures
   */
  public RunFacts(
      AnswerRows rows, RunSettings effort, ReplicationResults figures, StoppingRule goal) {
    this.rows = rows;
    this.effort = effort;
    this.figures = figures;
    this.goal = goal;
  }

  /**
   * @param stopped whether replications are missing because the user asked for an end
   */
  public List<Fact> facts(boolean stopped) {
    Stream<Fact> aim = effort.until().map(of -> aim(of, stopped)).stream();
    return around(
        Stream.concat(Stream.of(new RunFact.Replications(figures.count(), stopped)), aim));
  }

  /**
   * @param replications how often the calendar was simulated, and what that tells
   */
  public static List<Fact> around(Stream<Fact> replications) {
    return Stream.of(
            Stream.of(new RunFact.Inputs(), new RunFact.Horizon(), new RunFact.RandomDraws()),
            replications,
            Stream.of(new RunFact.EvenFlow(), new RunFact.NotModeled()))
        .<Fact>flatMap(part -> part)
        .toList();
  }

  private Fact aim(Precision aim, boolean stopped) {
    boolean none = goal.isHopeless(figures);
    boolean reached = !none && goal.isReached(figures);
    return new RunFact.Aim(
        aim.said(),
        none ? Outcome.NO_VALUE : reached ? Outcome.REACHED : Outcome.NOT_REACHED,
        none ? Double.NaN : goal.halfWidth(figures),
        none ? Double.NaN : goal.aimed(figures),
        rows.unit(aim.measure()),
        none ? Double.NaN : goal.needed(figures),
        goal.most(),
        stopped);
  }
}
