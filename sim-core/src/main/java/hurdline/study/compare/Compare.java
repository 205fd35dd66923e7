package hurdline.study.compare;

import hurdline.answer.CompareAnswer;
import hurdline.answer.FollowUps;
import hurdline.economics.BreakEven;
import hurdline.plant.Change;
import hurdline.plant.Nearest;
import hurdline.plant.Option;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.study.AimCurrency;
import hurdline.study.DrawnResults;
import hurdline.study.FigureSoFar;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Scenario;
import hurdline.study.StudyInputs;
import hurdline.study.option.BreakEvenWork;
import hurdline.study.option.OptionMargins;
import hurdline.study.option.OptionPlants;
import hurdline.study.option.ServiceLifeCount;
import hurdline.study.option.ServiceLifeYears;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.InterleavedRuns;
import hurdline.study.replicate.PeriodResults;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Which of several options and what-ifs is better than the plant as it stands, by how much, and
 * does it pay.
 */
public final class Compare {
  private final PlantOrigin source;
  private final PlantChanges base;
  private final CompareAsk ask;
  private final FollowUpAnalyses besides;
  private final ServiceLifeCount lives;
  private final RunSettings effort;
  private final List<CompareAnswer.Option> options = new ArrayList<>();
  private final List<CompiledPlant> stages = new ArrayList<>();
  private final List<Optional<DrawnPlants>> drawn = new ArrayList<>();

  /**
   * @param base single changed keys that hold for the base and for every option; no option itself
   * @throws ProblemsException if an option is not there, an option or what-if is asked for twice,
   *     changes nothing, or makes a plant with problems
   */
  public Compare(PlantOrigin source, PlantChanges base, CompareAsk ask, RunSettings effort) {
    this.source = source;
    this.base = base;
    this.ask = ask;
    this.effort = effort;
    OptionPlants plants = new OptionPlants(source, base);
    Plant plant = plants.base();
    List<String> asked =
        ask.among().isEmpty() && ask.whatIfs().isEmpty()
            ? plant.options().stream().map(Option::name).toList()
            : ask.among();
    refuse(asked, plant.options());
    AimCurrency currency = new AimCurrency(source, base);
    currency.check(effort);
    ask.best().ifPresent(currency::check);
    CompiledPlant unchanged = CompiledPlant.of(plant);
    stages.add(unchanged);
    StudyInputs inputs = new StudyInputs(plant, effort);
    drawn.add(inputs.plants(source, base.single(), base.changes()));
    for (String option : asked) {
      Plant changed = plants.of(option);
      if (changed.equals(plant)) {
        throw source.refusal(
            "option \"" + option + "\" changes nothing", "an option that changes the plant");
      }
      options.add(OptionPlants.joined(option, plant.options()));
      stages.add(unchanged.changedTo(changed));
      drawn.add(inputs.plants(source, base.single(), plants.changes(option)));
    }
    ask.whatIfs()
        .forEach(
            whatIf ->
                add(inputs, whatIf, plants.base(whatIf.values().toArray(Change[]::new)), plant));
    besides = new FollowUpAnalyses(source, base, ask, stages, options, effort);
    lives =
        new ServiceLifeCount(
            effort.replications(),
            stages.stream().map(CompiledPlant::plant).toList(),
            options,
            ask.lives());
  }

  private void add(StudyInputs inputs, WhatIfChange whatIf, Plant changed, Plant plant) {
    String name = whatIf.name();
    if (options.stream().anyMatch(option -> option.name().equals(name))) {
      throw source.refusal("what-if \"" + name + "\" is asked for twice", "each what-if once");
    }
    if (withoutOptions(changed).equals(withoutOptions(plant))) {
      throw source.refusal(
          "what-if \"" + name + "\" changes nothing",
          "a change of the plant itself; terms of an option are changed with --set");
    }
    options.add(CompareAnswer.Option.whatIf(name));
    stages.add(stages.get(0).changedTo(changed));
    drawn.add(
        inputs.plants(source, base.single(), base.and(List.copyOf(whatIf.values())).changes()));
  }

  private static Plant withoutOptions(Plant plant) {
    return plant.with(plant.products(), plant.money(), List.of(), List.of());
  }

  private void refuse(List<String> asked, List<Option> known) {
    if (known.isEmpty() && !ask.gain() && ask.whatIfs().isEmpty()) {
      throw source.refusal(
          "the file has no options to compare",
          "an entry under options, or a change such as --what-if 'money.wage=x1.2'");
    }
    List<String> names = known.stream().map(Option::name).toList();
    Set<Set<String>> seen = new LinkedHashSet<>();
    for (String option : asked) {
      List<String> parts = OptionPlants.parts(option);
      for (String part : parts) {
        if (!names.contains(part)) {
          throw source.refusal(
              "\"" + part + "\" is no option of this file",
              Nearest.expected("an option", part, names));
        }
      }
      Set<String> set = new LinkedHashSet<>(parts);
      if (set.size() < parts.size() || !seen.add(set)) {
        throw source.refusal("\"" + option + "\" is asked for twice", "each option once");
      }
    }
  }

  private static Consumer<Outcome> both(ReplicationResults figures, PeriodResults months) {
    return outcome -> {
      figures.add(outcome);
      months.add(outcome.monthColumns(), outcome.months());
    };
  }

  /** The base, the options and the what-ifs as plants of a grid. */
  public List<Scenario> alternatives() {
    OptionPlants plants = new OptionPlants(source, base);
    List<Scenario> all = new ArrayList<>();
    all.add(new Scenario(PlantChanges.baseName(), source, base.changes()));
    for (CompareAnswer.Option option : options) {
      if (!option.isWhatIf()) {
        all.add(new Scenario(option.name(), source, plants.changes(option.name()), true));
      }
    }
    for (WhatIfChange whatIf : ask.whatIfs()) {
      all.add(
          new Scenario(whatIf.name(), source, base.and(List.copyOf(whatIf.values())).changes()));
    }
    return all;
  }

  /** How often a calendar is simulated in all; with an aim, to begin with. */
  public int simulations() {
    return new StoppingRule(effort).first() * (stages.size() + drawnPlants() + besides.plants())
        + livesSimulations();
  }

  private int drawnPlants() {
    return (int) drawn.stream().filter(Optional::isPresent).count();
  }

  /** How many service lives of each option are simulated. */
  public int lives() {
    return lives.lives();
  }

  /**
   * How many calendars the lives of all plants have, a search for a break-even not counted; 0 where
   * no option is worth anything.
   */
  public int livesSimulations() {
    return lives.simulations() * (1 + besides.livesAgain());
  }

  /** What searches for a break-even cost on top; nothing where no key but prices is asked for. */
  public BreakEvenWork breakEvenWork() {
    List<Integer> searches = besides.simulatedSearches();
    int each = searches.stream().mapToInt(lives::simulations).sum();
    return new BreakEvenWork(searches.size(), each, BreakEven.usualTries(), BreakEven.mostTries());
  }

  /** Simulates one calendar of the base and forgets it: to see how long one takes. */
  public void trial() {
    stages.get(0).replication().run(new RandomStreams(effort.seed()), 1, null);
  }

  /**
   * Simulates base and options.
   *
   * @param progress told of all simulates together, never two at once
   * @param stop asked now and then whether to finish early
   * @return what the finished replications say; empty if there was no time for any
   */
  public Optional<CompareAnswer> simulate(ProgressListener progress, BooleanSupplier stop) {
    ReplicationBudget simulations = new ReplicationBudget(effort, progress, stop);
    List<ReplicationResults> figures =
        stages.stream().map(stage -> new ReplicationResults()).toList();
    List<String> names = new ArrayList<>(List.of(PlantChanges.baseName()));
    options.forEach(option -> names.add(option.name()));
    FigureSoFar soFar = new FigureSoFar(stages.get(0).plant());
    simulations.headline(() -> soFar.lead(names, figures));
    List<PeriodResults> months = stages.stream().map(stage -> new PeriodResults()).toList();
    List<Consumer<Outcome>> takers = new ArrayList<>();
    for (int at = 0; at < stages.size(); at++) {
      takers.add(both(figures.get(at), months.get(at)));
    }
    InterleavedRuns.Simulated simulated =
        new InterleavedRuns(stages, effort).simulate(simulations, figures, takers);
    if (simulated.figures().get(0).count() == 0) {
      return Optional.empty();
    }
    int count = simulated.figures().get(0).count();
    List<Optional<DrawnResults>> withDrawn =
        drawn.stream().map(of -> StudyInputs.simulate(of, count, simulations)).toList();
    OptionMargins margins =
        new OptionMargins(
            stages,
            options,
            simulated,
            new ServiceLifeYears(stages, simulated, lives, simulations));
    FollowUps further = besides.simulate(simulated, simulations, margins);
    return Optional.of(
        new CompareAnswers(
                source, base, ask, effort, stages, options, simulated, withDrawn, months, margins)
            .answer(further, besides.facts(), simulations.isCut()));
  }
}
