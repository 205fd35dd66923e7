package hurdline.study.compare;

import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.Fact;
import hurdline.answer.FollowUpFact;
import hurdline.answer.FollowUps;
import hurdline.answer.GainRow;
import hurdline.answer.Selection;
import hurdline.answer.TornadoRow;
import hurdline.economics.BreakEven;
import hurdline.measure.Measure;
import hurdline.plant.Calendar;
import hurdline.plant.ProblemsException;
import hurdline.simulation.CompiledPlant;
import hurdline.study.AnswerRows;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.gain.CapacityGains;
import hurdline.study.gain.CapacityIncreases;
import hurdline.study.option.BreakEvens;
import hurdline.study.option.OptionMargins;
import hurdline.study.option.OptionNetPresentValue;
import hurdline.study.option.OptionPlants;
import hurdline.study.option.Tornado;
import hurdline.study.replicate.InterleavedRuns;
import hurdline.study.replicate.LifeCalendar;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import hurdline.unit.Counted;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What is asked of a comparison besides the differences, each from simulates of its own. */
final class FollowUpAnalyses {
  private final CompareAsk ask;
  private final PlantChanges base;
  private final OptionPlants plants;
  private final List<CompiledPlant> stages;
  private final Optional<CapacityIncreases> mores;
  private final Optional<CapacityGains> gains;
  private final Optional<Tornado> tornado;
  private final Optional<BreakEvens> breakEvens;
  private final Optional<BestSelection> selecting;

  /**
   * @param stages the base first
   * @throws ProblemsException if what is asked cannot be
   */
  FollowUpAnalyses(
      PlantOrigin source,
      PlantChanges base,
      CompareAsk ask,
      List<CompiledPlant> stages,
      List<CompareAnswer.Option> options,
      RunSettings effort) {
    this.base = base;
    this.ask = ask;
    this.stages = stages;
    plants = new OptionPlants(source, base);
    CompiledPlant stage = stages.get(0);
    if (stage.plant().money().isEmpty()
        && (ask.tornado().isPresent() || !ask.breakEven().isEmpty())) {
      throw source.refusal("without money no option is worth anything", "an entry under money");
    }
    List<CompareAnswer.Option> ofFile =
        options.stream().filter(option -> !option.isWhatIf()).toList();
    refuseWithoutOptions(source, ofFile);
    refuseUnrepeated(source);
    mores = ask.gain() ? Optional.of(new CapacityIncreases(source, base, stage)) : Optional.empty();
    gains = mores.map(all -> new CapacityGains(source, base, stage, all.all(), gained(stage)));
    tornado = ask.tornado().map(inputs -> new Tornado(plants, ofFile, inputs, source));
    breakEvens =
        ask.breakEven().isEmpty()
            ? Optional.empty()
            : Optional.of(new BreakEvens(source, base, ofFile, ask.breakEven()));
    selecting = selecting(source, ask, stages, options, effort);
  }

  private void refuseWithoutOptions(PlantOrigin source, List<CompareAnswer.Option> ofFile) {
    if (ofFile.isEmpty()
        && !ask.whatIfs().isEmpty()
        && (ask.tornado().isPresent() || !ask.breakEven().isEmpty())) {
      throw source.refusal(
          "a what-if costs nothing and has no net present value to look at",
          "options of the file named with --among");
    }
  }

  private void refuseUnrepeated(PlantOrigin source) {
    boolean asked = ask.tornado().isPresent() || !ask.breakEven().isEmpty();
    for (CompiledPlant stage : stages) {
      Calendar calendar = stage.plant().calendar();
      if (asked && LifeCalendar.of(calendar).isEmpty()) {
        throw source.refusal(
            "the calendar of "
                + Counted.of(calendar.days(), "day")
                + " is shorter than a year and does not say how it repeats over an option's life, so no option is worth"
                + " anything",
            "\"repeats: yearly\" or \"repeats: end-to-end\" under calendar");
      }
    }
  }

  private static Optional<BestSelection> selecting(
      PlantOrigin source,
      CompareAsk ask,
      List<CompiledPlant> stages,
      List<CompareAnswer.Option> options,
      RunSettings effort) {
    int first = new StoppingRule(effort).first();
    if (ask.best().isPresent() && (options.isEmpty() || first < 2)) {
      throw source.refusal(
          "the best is picked among two or more", "an option, and 2 replications or more");
    }
    List<String> names =
        Stream.concat(
                Stream.of(PlantChanges.baseName()),
                options.stream().map(CompareAnswer.Option::name))
            .toList();
    return ask.best().map(zone -> new BestSelection(zone, stages, names, first));
  }

  private static List<String> gained(CompiledPlant stage) {
    Set<String> measures = new LinkedHashSet<>();
    new PlantOutline(stage).lines().forEach(line -> measures.add(Measure.MASS_FED.of(line.crop())));
    measures.add(Measure.MONEY_MARGIN.of());
    return List.copyOf(measures);
  }

  /** How many plants are simulated, each as often as the base. */
  int plants() {
    return gains.map(CapacityGains::plants).orElse(0);
  }

  /** How often the lives of all plants are simulated again; searches not counted. */
  int livesAgain() {
    return tornado.map(Tornado::simulatedEnds).orElse(0);
  }

  /** By option, the searches for a break-even that simulate lives at each value they try. */
  List<Integer> simulatedSearches() {
    return breakEvens.map(BreakEvens::simulatedSearches).orElse(List.of());
  }

  FollowUps simulate(
      InterleavedRuns.Simulated simulated, ReplicationBudget simulations, OptionMargins margins) {
    ReplicationResults figures = simulated.figures().get(0);
    AnswerRows rows =
        new AnswerRows(base.option(), stages.get(0), figures, new PlantOutline(stages.get(0)));
    OptionNetPresentValue worth = new OptionNetPresentValue(plants, margins.years());
    Selection best =
        selecting.map(all -> all.simulate(simulated, rows, simulations)).orElse(Selection.none());
    List<GainRow> gained =
        gains.map(all -> all.simulate(figures, rows, simulations)).orElse(List.of());
    List<TornadoRow> swung = tornado.map(all -> all.rows(worth)).orElse(List.of());
    List<BreakEvenRow> even = breakEvens.map(all -> all.rows(worth, simulations)).orElse(List.of());
    return new FollowUps(ask.withinYr().orElse(Double.NaN), best, gained, swung, even);
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    selecting.ifPresent(all -> facts.add(new FollowUpFact.SelectionOfTheBest()));
    mores.ifPresent(all -> facts.add(new FollowUpFact.TenthMore(all.left())));
    tornado.ifPresent(all -> facts.add(new FollowUpFact.Sensitivity()));
    breakEvens.ifPresent(all -> facts.add(new FollowUpFact.BreakEvenSearch(BreakEven.tolerance())));
    return facts;
  }
}
