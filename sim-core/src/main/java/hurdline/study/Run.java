package hurdline.study;

import hurdline.answer.RunAnswer;
import hurdline.answer.RunFact;
import hurdline.plant.Calendar;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/** What a plant will do over its calendar, from replications played on several threads. */
public final class Run {
  private final Source source;
  private final Chosen chosen;
  private final Effort effort;
  private final Stage stage;

  /** Told how far a run has come. */
  public interface Progress {
    /**
     * @param done replications that are finished
     * @param of how many there will be, as far as is known
     */
    void done(int done, int of);

    /** Told what those who wait should know before the end; most need not. */
    default void says(RunFact.AimOutOfReach fact) {}
  }

  /**
   * @throws hurdline.plant.ProblemsException if the changed plant has problems, or what is to be shown event by event lies outside its
   *     calendar
   */
  public Run(Source source, Chosen chosen, Effort effort) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    stage = Stage.of(source.variants().with(chosen.asArray()));
    effort.trace().ifPresent(this::refuseOutside);
  }

  /** Where nothing happens there is nothing to show. */
  private void refuseOutside(Span span) {
    Calendar calendar = stage.plant().calendar();
    boolean before = !span.to().isAfter(calendar.from().atStartOfDay());
    if (before || !span.from().isBefore(calendar.to().plusDays(1).atStartOfDay())) {
      throw source.refusal(
          "the trace from " + span.from() + " to " + span.to() + " lies outside the calendar",
          "dates from " + calendar.from() + " to " + calendar.to());
    }
  }

  /**
   * Plays the replications.
   *
   * @param progress told from whichever thread has finished one, never two at once
   * @param stop asked between replications whether to finish early
   * @return what the finished replications say; empty if none was finished
   * @throws hurdline.plant.ProblemsException if the aim names no measure of this plant
   */
  public Optional<RunAnswer> play(Progress progress, BooleanSupplier stop) {
    Gathered gathered = new Gathered();
    Figures figures = gathered.figures();
    TraceBook trace =
        effort.trace().map(span -> new TraceBook(stage, span)).orElse(null);
    Goal goal = new Goal(effort);
    int last = goal.first();
    AtomicInteger done = new AtomicInteger();
    try (Players players =
        new Players(
            stage,
            effort.seed(),
            Math.min(effort.threads(), goal.most()),
            Gathered.filling(gathered),
            one -> trace != null && trace.isOf(one) ? trace : null)) {
      if (effort.until().isPresent()) {
        int of = last;
        players.playTo(1, () -> progress.done(done.incrementAndGet(), of), stop);
        if (figures.count() > 0) {
          goal.check(figures);
        }
      }
      int before = -1;
      while (figures.count() < last && figures.count() != before) {
        int of = last;
        before = figures.count();
        players.playTo(last, () -> progress.done(done.incrementAndGet(), of), stop);
        if (figures.count() == last) {
          if (last == goal.first()) {
            goal.outOfReach(figures).ifPresent(progress::says);
          }
          last = goal.next(figures);
        }
      }
    }
    if (figures.count() == 0) {
      return Optional.empty();
    }
    boolean stopped = figures.count() < last;
    return Optional.of(
        new RunAnswers(source, chosen, effort, stage, gathered, goal).answer(stopped, trace));
  }
}
