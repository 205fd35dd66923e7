package hurdline.study.yard;

import hurdline.answer.GainRow;
import hurdline.answer.YardAnswer;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.simulation.CompiledPlant;
import hurdline.study.AimCurrency;
import hurdline.study.AnswerRows;
import hurdline.study.DrawnResults;
import hurdline.study.FigureSoFar;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.Scenario;
import hurdline.study.StudyInputs;
import hurdline.study.gain.CapacityGains;
import hurdline.study.gain.CapacityIncrease;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.HeadlineSoFar;
import hurdline.study.replicate.InterleavedRuns;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import hurdline.study.run.RunAccumulator;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;

/**
 * How big the yard of a crop must be.
 *
 * <p>First the yard without limit, then the plant with yards of several sizes on the same chance.
 * Until something finds no room a yard goes as the one without limit, so the room that was wanted
 * there says which size a season needs.
 */
public final class YardSizing {
  /**
   * Plants that are simulated besides the sizes of the curve: without limit, as it stands, and
   * tries around the answer.
   */
  private static final int BESIDES = 3;

  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final YardAsk ask;
  private final CompiledPlant stage;
  private final YardUnderStudy yard;
  private final Optional<Acreage> acreage;
  private final List<CapacityIncrease> mores;
  private final Optional<DrawnPlants> drawn;
  private final Optional<DrawnPlants> drawnFree;

  /**
   * @throws hurdline.plant.ProblemsException if the changed plant has problems, or lacks the crop
   *     or a place for it
   */
  public YardSizing(PlantOrigin source, PlantChanges chosen, RunSettings effort, YardAsk ask) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.ask = ask;
    stage = CompiledPlant.of(source.variants().with(chosen.asArray()));
    new AimCurrency(source, chosen).check(effort);
    yard = YardUnderStudy.of(stage.plant(), ask, source);
    acreage =
        ask.acres().isPresent()
            ? Optional.of(new Acreage(ask.acres().getAsDouble(), ask.carryOver(), yard, source))
            : Optional.empty();
    StudyInputs inputs = new StudyInputs(stage.plant(), effort);
    drawn = inputs.plants(source, chosen.single(), chosen.changes());
    drawnFree = inputs.plants(source, chosen.single(), unlimited().changes());
    mores = ask.gain() ? new PeakReductions(source, unlimited(), stage, yard).all() : List.of();
  }

  /** The plant as it stands and with a yard without limit, as plants of a grid. */
  public List<Scenario> alternatives() {
    return List.of(
        new Scenario(chosen.option(), source, chosen.changes()),
        new Scenario("yard_without_limit", source, unlimited().changes()));
  }

  /** How often a calendar is simulated in all, about. */
  public int simulations() {
    return new StoppingRule(effort).first() * (1 + others() + (drawn.isPresent() ? 2 : 0));
  }

  /** How many plants are simulated besides the one without limit, about. */
  private int others() {
    int sizes = YardCurve.sizes(0, 1_000).length;
    int acres = acreage.isPresent() ? Acreage.plants() : 0;
    return BESIDES + sizes + acres + mores.size();
  }

  /**
   * Simulates the yards: the one without limit as often as was asked for or its aim needs, all
   * others as often as it.
   *
   * @param progress told of all simulates together, never two at once
   * @param stop asked now and then whether to finish early
   * @return what the finished replications say; empty if there was no time for any
   * @throws hurdline.plant.ProblemsException if the aim names no measure of the plant
   */
  public Optional<YardAnswer> simulate(ProgressListener progress, BooleanSupplier stop) {
    ReplicationBudget simulations = new ReplicationBudget(effort, progress, stop);
    int first = new StoppingRule(effort).first();
    simulations.expect(first * others());
    CompiledPlant free = changed(yard.withoutLimit());
    RunAccumulator unlimited = new RunAccumulator();
    simulations.headline(() -> roomNeeded(unlimited.figures()));
    InterleavedRuns.Simulated simulated =
        new InterleavedRuns(List.of(free), effort)
            .simulate(simulations, List.of(unlimited.figures()), List.of(unlimited::add));
    int count = unlimited.figures().count(); // fewer if stop was asked for
    if (count == 0) {
      return Optional.empty();
    }
    simulations.expect((count - first) * others());
    YardMoney money = new YardMoney(yard, unlimited.figures());
    YardCurve curve =
        new YardCurve(yard, money, bales -> simulations.whole(changed(yard.sized(bales)), count));
    Optional<ReplicationResults> base = simulations.whole(stage, count);
    base.ifPresent(figures -> curve.known(yard.holds(), figures));
    OptionalInt byRule = byRule(curve, unlimited.figures());
    curve.simulate((int) Arrays.stream(unlimited.figures().series(wanted())).max().orElseThrow());
    acreage.ifPresent(
        of -> {
          base.ifPresent(of::known);
          of.simulator(change -> simulations.whole(changed(change), count));
        });
    YardAnswer.Land land = acreage.map(Acreage::simulate).orElse(YardAnswer.Land.none());
    List<GainRow> gains = gains(free, unlimited.figures(), simulations);
    Optional<DrawnResults> withDrawn = StudyInputs.simulate(drawn, count, simulations);
    Optional<DrawnResults> freeWithDrawn = StudyInputs.simulate(drawnFree, count, simulations);
    boolean stopped = simulated.stopped() || simulations.isStopAsked();
    return Optional.of(
        new YardAnswers(source, chosen, effort, ask, stage, free, yard, unlimited, base, curve)
            .inputs(withDrawn, freeWithDrawn)
            .answer(byRule, land, acreage.map(Acreage::rows).orElse(List.of()), gains, stopped));
  }

  /** The plant without limit, as something that is chosen. */
  private PlantChanges unlimited() {
    return chosen.and(List.of(yard.withoutLimit()));
  }

  private List<GainRow> gains(
      CompiledPlant free, ReplicationResults figures, ReplicationBudget simulations) {
    AnswerRows rows = new AnswerRows(YardAnswer.noLimit(), free, figures, new PlantOutline(free));
    List<String> measured = List.of(Measure.YARD_PEAK.of(yard.crop().name()));
    return mores.isEmpty()
        ? List.of()
        : new CapacityGains(source, unlimited(), free, mores, measured)
            .simulate(figures, rows, simulations);
  }

  private OptionalInt byRule(YardCurve curve, ReplicationResults unlimited) {
    OverflowQuantile least = new OverflowQuantile(ask.overflow());
    int allowed = least.allowed(unlimited.count());
    return OverflowQuantile.search(
        yard.least(),
        least.of(unlimited.series(wanted())),
        bales -> curve.at(bales).map(figures -> curve.refused(figures) <= allowed));
  }

  private HeadlineSoFar roomNeeded(ReplicationResults unlimited) {
    return unlimited.has(wanted())
        ? FigureSoFar.room(PlantOutline.unit(yard.crop()), unlimited.series(wanted()))
        : HeadlineSoFar.unknown();
  }

  private String wanted() {
    return Measure.YARD_ROOM_NEEDED.of(yard.crop().name());
  }

  private CompiledPlant changed(Change more) {
    return stage.changedTo(source.variants().with(chosen.and(List.of(more)).asArray()));
  }
}
