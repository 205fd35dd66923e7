package hurdline.study.season;

import hurdline.answer.ChangeoverRow;
import hurdline.answer.SeasonAnswer;
import hurdline.plant.Change;
import hurdline.plant.Money;
import hurdline.plant.Nearest;
import hurdline.plant.Plan;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.study.AimCurrency;
import hurdline.study.DrawnResults;
import hurdline.study.FigureSoFar;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Scenario;
import hurdline.study.StudyInputs;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.InterleavedRuns;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** How full a shared building is under each of several season plans, and which of them is best. */
public final class Season {
  private final List<PlantOrigin> sources;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final List<Planned> plans = new ArrayList<>();
  private final ChangeoverWorth avoiding;
  private final List<Optional<DrawnPlants>> drawn;

  /** Asks a file for what it warns of in a changed plant. */
  public interface Warnings {
    List<LocatedProblem> of(PlantOrigin source, List<Change> changes);
  }

  /**
   * A plan that is compared.
   *
   * @param changes its own and those of all plans
   * @param warnings of its plant
   */
  record Planned(
      String name,
      String says,
      PlantOrigin source,
      List<Change> changes,
      CompiledPlant stage,
      List<LocatedProblem> warnings) {}

  /**
   * @param sources one file with plans of its own, or several of which each is a plan
   * @param ask names plans of the one file, {@code base} being its season as it stands; none for
   *     that and each of the file's plans
   * @param chosen what is changed under every plan alike, after the plan's own changes
   * @throws ProblemsException if there is nothing to compare, names are equal, or plants differ in
   *     what must be alike
   */
  public Season(
      List<PlantOrigin> sources,
      SeasonAsk ask,
      PlantChanges chosen,
      Warnings warnings,
      RunSettings effort) {
    this.sources = List.copyOf(sources);
    this.chosen = chosen;
    this.effort = effort;
    if (sources.size() == 1) {
      ofOneFile(sources.get(0), ask.plans(), warnings);
    } else {
      sources.forEach(source -> add(nameOf(source), "", source, chosen.changes(), warnings));
    }
    refuseUnlike();
    new AimCurrency(sources.get(0), chosen).check(effort);
    StudyInputs inputs = new StudyInputs(plans.get(0).stage().plant(), effort);
    drawn =
        plans.stream()
            .map(plan -> inputs.plants(plan.source(), chosen.single(), plan.changes()))
            .toList();
    avoiding = new ChangeoverWorth(ask.changeovers() ? plans : List.of());
  }

  private void ofOneFile(PlantOrigin source, List<String> asked, Warnings warnings) {
    Map<String, String> says = new LinkedHashMap<>(Map.of(PlantChanges.baseName(), ""));
    List<Plan> known = source.variants().with().plans();
    known.forEach(plan -> says.put(plan.name(), plan.says()));
    if (known.isEmpty() && asked.isEmpty()) {
      throw source.refusal(
          "the file has no plans to compare",
          "an entry under plans, several files, or --plans base for the season as it stands");
    }
    for (String name : asked.isEmpty() ? List.copyOf(says.keySet()) : asked) {
      if (!says.containsKey(name)) {
        throw source.refusal(
            "\"" + name + "\" is no plan of this file",
            Nearest.expected("a plan", name, says.keySet()));
      }
      Stream<Change> own =
          name.equals(PlantChanges.baseName()) ? Stream.of() : Stream.of(new Change.Named(name));
      List<Change> changes = Stream.concat(own, chosen.changes().stream()).toList();
      add(name, says.get(name), source, changes, warnings);
    }
  }

  private void add(
      String name, String says, PlantOrigin source, List<Change> changes, Warnings warnings) {
    if (plans.stream().anyMatch(plan -> plan.name().equals(name))) {
      throw wrong(
          "two plans are named \"" + name + "\"",
          "each plan once, and files whose names differ without their folder and ending");
    }
    Plant plant = source.variants().with(changes.toArray(Change[]::new));
    plans.add(
        new Planned(name, says, source, changes, compiled(plant), warnings.of(source, changes)));
  }

  private CompiledPlant compiled(Plant plant) {
    return plans.isEmpty() ? CompiledPlant.of(plant) : plans.get(0).stage().changedTo(plant);
  }

  private static String nameOf(PlantOrigin source) {
    return source.file().replaceFirst("\\.ya?ml$", "");
  }

  /** Money in two currencies, or years of different length, cannot be set side by side. */
  private void refuseUnlike() {
    Plant first = plans.get(0).stage().plant();
    for (Planned plan : plans) {
      Plant plant = plan.stage().plant();
      unlike(plan, "has money in", money(first), money(plant), "one currency for all plans");
      unlike(plan, "covers", dates(first), dates(plant), "one calendar from and to for all plans");
    }
  }

  private void unlike(Planned plan, String verb, String first, String other, String expected) {
    if (!first.equals(other)) {
      throw wrong(
          "plan \""
              + plan.name()
              + "\" "
              + verb
              + " "
              + other
              + " and plan \""
              + plans.get(0).name()
              + "\" "
              + verb
              + " "
              + first,
          expected);
    }
  }

  private static String money(Plant plant) {
    return plant.money().map(Money::currency).orElse("no currency");
  }

  private static String dates(Plant plant) {
    return plant.calendar().from() + " to " + plant.calendar().to();
  }

  private static ProblemsException wrong(String said, String expected) {
    return new ProblemsException(List.of(LocatedProblem.of("", said, expected, "")));
  }

  /** The plans as plants of a grid. */
  public List<Scenario> alternatives() {
    return plans.stream()
        .map(
            plan ->
                new Scenario(plan.name(), plan.source().warning(plan.warnings()), plan.changes()))
        .toList();
  }

  /** How often a calendar is simulated in all; with an aim, to begin with. */
  public int simulations() {
    return new StoppingRule(effort).first() * (plans.size() + drawnPlans() + avoiding.count());
  }

  private int drawnPlans() {
    return (int) drawn.stream().filter(Optional::isPresent).count();
  }

  /**
   * Simulates all plans.
   *
   * @param progress told of all simulates together, never two at once
   * @param stop asked now and then whether to finish early
   * @return what the finished replications say; empty if there was no time for any
   */
  public Optional<SeasonAnswer> simulate(ProgressListener progress, BooleanSupplier stop) {
    List<SeasonResults> figures = plans.stream().map(plan -> new SeasonResults()).toList();
    List<Consumer<Outcome>> takers =
        figures.stream().<Consumer<Outcome>>map(plan -> plan::add).toList();
    ReplicationBudget simulations = new ReplicationBudget(effort, progress, stop);
    FigureSoFar soFar = new FigureSoFar(plans.get(0).stage().plant());
    simulations.headline(
        () ->
            soFar.lead(
                plans.stream().map(Planned::name).toList(),
                figures.stream().map(SeasonResults::figures).toList()));
    InterleavedRuns.Simulated simulated =
        new InterleavedRuns(plans.stream().map(Planned::stage).toList(), effort)
            .simulate(simulations, figures.stream().map(SeasonResults::figures).toList(), takers);
    int count = simulated.figures().get(0).count();
    if (count == 0) {
      return Optional.empty();
    }
    List<Optional<DrawnResults>> withDrawn =
        drawn.stream().map(of -> StudyInputs.simulate(of, count, simulations)).toList();
    simulations.expect(count * avoiding.count());
    List<ChangeoverRow> avoided = avoiding.simulate(simulations, simulated.figures());
    boolean stopped =
        simulated.stopped()
            || simulations.isCut()
            || avoided.size() < avoiding.count() && stop.getAsBoolean();
    return Optional.of(
        new SeasonAnswers(sources, chosen, effort, plans, figures, withDrawn, avoided)
            .answer(stopped));
  }
}
