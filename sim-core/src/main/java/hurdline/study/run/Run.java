package hurdline.study.run;

import hurdline.answer.RunAnswer;
import hurdline.plant.Calendar;
import hurdline.plant.Plant;
import hurdline.simulation.CompiledPlant;
import hurdline.study.AimCurrency;
import hurdline.study.DrawnResults;
import hurdline.study.FigureSoFar;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.StudyInputs;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.ReplicationRunner;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import hurdline.study.replicate.TraceWindow;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;

/** What a plant will do over its calendar, from replications simulated on several threads. */
public final class Run {
  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final CompiledPlant stage;
  private final StudyInputs inputs;
  private final Optional<DrawnPlants> drawnPlants;

  /**
   * @throws hurdline.plant.ProblemsException if the changed plant has problems, or what is to be
   *     shown event by event lies outside its calendar
   */
  public Run(PlantOrigin source, PlantChanges chosen, RunSettings effort) {
    this(source, chosen, effort, plant -> plant);
  }

  /**
   * @param then what is made of the changed plant
   */
  public Run(
      PlantOrigin source, PlantChanges chosen, RunSettings effort, UnaryOperator<Plant> then) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    stage = CompiledPlant.of(then.apply(source.variants().with(chosen.asArray())));
    effort.trace().ifPresent(this::refuseOutside);
    new AimCurrency(source, chosen).check(effort);
    inputs = new StudyInputs(stage.plant(), effort);
    drawnPlants = inputs.plants(source, chosen.single(), chosen.changes(), then);
  }

  /** Where nothing happens there is nothing to show. */
  private void refuseOutside(TraceWindow span) {
    Calendar calendar = stage.plant().calendar();
    boolean before = !span.to().isAfter(calendar.from().atStartOfDay());
    if (before || !span.from().isBefore(calendar.to().plusDays(1).atStartOfDay())) {
      throw source.refusal(
          "the trace from " + span.from() + " to " + span.to() + " lies outside the calendar",
          "dates from " + calendar.from() + " to " + calendar.to());
    }
  }

  /**
   * Simulates the replications.
   *
   * @param progress told from whichever thread has finished one, never two at once
   * @param stop asked between replications whether to finish early
   * @return what the finished replications say; empty if none was finished
   * @throws hurdline.plant.ProblemsException if the aim names no measure of this plant
   */
  public Optional<RunAnswer> simulate(ProgressListener progress, BooleanSupplier stop) {
    RangeResults results = new RangeResults(asked(), 1);
    ReplicationResults figures = results.gathered().figures();
    StoppingRule goal = new StoppingRule(effort);
    int last = goal.first();
    AtomicInteger done = new AtomicInteger();
    try (ReplicationRunner runner = runner(goal.most())) {
      if (effort.until().isPresent()) {
        int of = last;
        simulate(runner, results, 1, () -> tell(progress, figures, done, of), stop);
        if (figures.count() > 0) {
          goal.check(figures);
        }
      }
      int before = -1;
      while (figures.count() < last && figures.count() != before) {
        int of = last;
        before = figures.count();
        simulate(runner, results, last, () -> tell(progress, figures, done, of), stop);
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
    Optional<DrawnResults> drawn = drawn(figures.count(), done, progress, stop);
    boolean isCut = drawn.filter(of -> of.figures().count() < figures.count()).isPresent();
    return Optional.of(answer(results, goal, isCut || figures.count() < last, drawn));
  }

  private Optional<DrawnResults> drawn(
      int count, AtomicInteger done, ProgressListener progress, BooleanSupplier stop) {
    int of = done.get() + count;
    ReplicationBudget simulations =
        new ReplicationBudget(
            effort, (more, all) -> progress.done(done.incrementAndGet(), of), stop);
    return StudyInputs.simulate(drawnPlants, count, simulations);
  }

  /** How often the calendar is simulated in all; with an aim, to begin with. */
  public int simulations() {
    return new StoppingRule(effort).first() * (drawnPlants.isPresent() ? 2 : 1);
  }

  private void tell(
      ProgressListener progress, ReplicationResults figures, AtomicInteger done, int of) {
    if (figures.count() > 1) { // a later replication may end before the first, whose figures wait
      progress.headline(() -> new FigureSoFar(stage.plant()).of(figures));
    }
    progress.done(done.incrementAndGet(), of);
  }

  /**
   * Simulates a range of the replications, inputs as they are given, whatever number of them is
   * asked for. Results of ranges that follow each other can be put together, and {@link #answer}
   * says what they come to.
   *
   * @param progress told of replications of this range, never two at once
   * @param stop asked between replications whether to finish early
   * @return what is done, none or the beginning of the range if it was stopped
   * @throws IllegalArgumentException if replications are to go on until something is known, which
   *     no range can tell by itself
   */
  public RangeResults simulate(
      ReplicationRange range, ProgressListener progress, BooleanSupplier stop) {
    if (effort.until().isPresent()) {
      throw new IllegalArgumentException(
          "ranges are simulated without an aim; expected a number of replications alone");
    }
    RangeResults results = new RangeResults(asked(), range.from());
    AtomicInteger done = new AtomicInteger();
    try (ReplicationRunner runner = runner(Math.max(1, range.count()))) {
      simulate(
          runner,
          results,
          range.to() - 1,
          () -> progress.done(done.incrementAndGet(), range.count()),
          stop);
    }
    return results;
  }

  /**
   * What replications from the first on say; it counts as stopped where there are fewer than the
   * effort asks for.
   *
   * @throws IllegalArgumentException if they are of another study, do not begin with the first, or
   *     are none
   */
  public RunAnswer answer(RangeResults results) {
    if (!results.isOf(asked()) || results.range().from() != 1 || results.range().count() == 0) {
      throw new IllegalArgumentException("expected results of this study from replication 1 on");
    }
    return answer(
        results,
        new StoppingRule(effort),
        results.range().count() < effort.replications(),
        Optional.empty());
  }

  private RunAnswer answer(
      RangeResults results, StoppingRule goal, boolean stopped, Optional<DrawnResults> drawn) {
    return new RunAnswers(source, chosen, effort, stage, results.gathered(), goal, drawn)
        .answer(stopped, results.trace());
  }

  private ReplicationRunner runner(int most) {
    return new ReplicationRunner(effort.seed(), Math.min(effort.threads(), most));
  }

  /** Goes on up to replication {@code last}, or until stop is asked for. */
  private void simulate(
      ReplicationRunner runner,
      RangeResults results,
      int last,
      Runnable done,
      BooleanSupplier stop) {
    ReplicationRange range = new ReplicationRange(results.range().to(), 1 + last);
    Optional<TraceRecorder> trace =
        effort
            .trace()
            .filter(span -> range.has(span.replication()))
            .map(span -> new TraceRecorder(stage, span));
    runner.run(
        stage,
        range,
        one -> trace.filter(of -> of.isOf(one)).orElse(null),
        results.gathered()::add,
        done,
        stop);
    trace.ifPresent(of -> results.traced(of.trace()));
  }

  /** All that a replication's outcome rests on. */
  private String asked() {
    return String.join(
        "\n",
        source.version(),
        source.contentHash(),
        chosen.changes().toString(),
        Long.toString(effort.seed()));
  }
}
