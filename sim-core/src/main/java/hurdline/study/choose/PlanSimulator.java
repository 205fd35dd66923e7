package hurdline.study.choose;

import hurdline.answer.BottleneckRow;
import hurdline.answer.ChosenLimit;
import hurdline.answer.SimulatedBlock;
import hurdline.answer.SimulatedBlock.Series;
import hurdline.plant.Change;
import hurdline.plant.Choices;
import hurdline.plant.InputDraws;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.Replication;
import hurdline.simulation.results.Outcome;
import hurdline.study.AnswerRows;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** Makes the plants of plans and simulates their years; of any number of threads at once. */
public final class PlanSimulator {
  private final PlantOrigin source;
  private final CompiledPlant base;
  private final List<Change> before;
  private final PlanSpace space;
  private final List<String> measures;
  private final long seed;
  private final Optional<InputDraws> draws;

  /**
   * @param base any plant of the source compiled, of which plans take over what they do not change
   */
  PlanSimulator(PlantOrigin source, CompiledPlant base, PlanSpace space, PlanRecipe recipe) {
    this.source = source;
    this.base = base;
    before = recipe.before();
    this.space = space;
    measures = recipe.measures();
    seed = recipe.seed();
    draws = recipe.draws();
  }

  /**
   * Where nothing else is known of the choosing, as on another machine.
   *
   * @param ofFile what the file leaves open
   */
  public static PlanSimulator of(PlantOrigin source, Choices ofFile, PlanRecipe recipe) {
    List<LocatedProblem> wrong = new ArrayList<>();
    Choices open = OpenChoices.of(source.file(), ofFile, recipe.narrowed(), wrong);
    if (!wrong.isEmpty()) {
      throw new ProblemsException(wrong);
    }
    CompiledPlant base =
        CompiledPlant.of(source.variants().with(recipe.before().toArray(Change[]::new)));
    return new PlanSimulator(source, base, new PlanSpace(open), recipe);
  }

  /**
   * One year of the plant as it stands, as text that shows the last bit of every number: machines
   * that agree in it simulate alike.
   */
  public String checkYear() {
    StringBuilder all = new StringBuilder();
    Outcome outcome = base.replication().run(new RandomStreams(seed), 1, null);
    for (int at = 0; at < outcome.values().length; at++) {
      all.append(outcome.columns().get(at).name())
          .append(' ')
          .append(Double.toHexString(outcome.values()[at]))
          .append('\n');
    }
    return all.toString();
  }

  /** A block, on one thread; empty if stop was asked for before it was whole. */
  public Optional<SimulatedBlock> block(PlanBlock block, Runnable year, BooleanSupplier stop) {
    RandomStreams common = new RandomStreams(seed);
    List<SimulatedBlock.Plan> plans = new ArrayList<>();
    for (int plan : block.plans()) {
      RandomStreams streams = block.own() ? common.apart(plan) : common;
      Optional<SimulatedBlock.Plan> done = plan(plan, block, streams, year, stop);
      if (done.isEmpty()) {
        return Optional.empty();
      }
      plans.add(done.get());
    }
    return Optional.of(
        new SimulatedBlock(block.stage(), block.number(), block.years().from(), plans));
  }

  private Optional<SimulatedBlock.Plan> plan(
      int plan, PlanBlock block, RandomStreams streams, Runnable year, BooleanSupplier stop) {
    try {
      return years(plan, block, streams, year, stop);
    } catch (ProblemsException wrong) { // of the plan, or of one with inputs as they are drawn
      return Optional.of(problem(plan, told(wrong)));
    }
  }

  private Optional<SimulatedBlock.Plan> years(
      int plan, PlanBlock block, RandomStreams streams, Runnable year, BooleanSupplier stop) {
    CompiledPlant compiled = compiled(plan);
    Optional<DrawnPlants> drawn = drawn(plan);
    ReplicationRange years = block.years();
    double[][] values = new double[measures.size()][years.count()];
    ReplicationResults all = new ReplicationResults();
    Replication replication = compiled.replication();
    int[] columns = null;
    for (int r = years.from(); r < years.to(); r++) {
      if (stop.getAsBoolean()) {
        return Optional.empty();
      }
      int row = r;
      Replication own = drawn.map(of -> of.plant(row).replication()).orElse(replication);
      Outcome outcome = own.run(streams, r, null);
      if (columns == null) {
        Optional<String> missing = missing(outcome);
        if (missing.isPresent()) {
          return Optional.of(problem(plan, "the plant has no measure " + missing.get()));
        }
        columns = columns(outcome);
      }
      for (int m = 0; m < columns.length; m++) {
        values[m][r - years.from()] = outcome.values()[columns[m]];
      }
      if (block.limits()) {
        all.add(outcome);
      }
      year.run();
    }
    return Optional.of(
        new SimulatedBlock.Plan(
            plan,
            "",
            Stream.of(values).map(Series::new).toList(),
            block.limits() ? limits(compiled, all) : List.of()));
  }

  /** The first problem, without the folder that the file lies in. */
  private String told(ProblemsException wrong) {
    LocatedProblem first = wrong.problems().get(0);
    return (first.file().endsWith(source.file()) ? first.inFile(source.file()) : first).text();
  }

  private static SimulatedBlock.Plan problem(int plan, String said) {
    return new SimulatedBlock.Plan(plan, said, List.of(), List.of());
  }

  /**
   * @throws ProblemsException if no plant comes of the plan
   */
  CompiledPlant compiled(int plan) {
    return base.changedTo(source.variants().with(changes(plan).toArray(Change[]::new)));
  }

  private List<Change> changes(int plan) {
    return Stream.concat(before.stream(), space.changes(plan).stream()).toList();
  }

  /** The plan's plants year by year, where inputs are drawn. */
  private Optional<DrawnPlants> drawn(int plan) {
    List<Change> single = before.stream().filter(Change.Value.class::isInstance).toList();
    return draws.map(of -> new DrawnPlants(source.variants(), single, changes(plan), of));
  }

  private Optional<String> missing(Outcome outcome) {
    List<String> known = outcome.columns().stream().map(Outcome.Column::name).toList();
    return measures.stream().filter(measure -> !known.contains(measure)).findFirst();
  }

  private int[] columns(Outcome outcome) {
    List<String> known = outcome.columns().stream().map(Outcome.Column::name).toList();
    return measures.stream().mapToInt(known::indexOf).toArray();
  }

  private static List<ChosenLimit> limits(CompiledPlant compiled, ReplicationResults all) {
    Map<String, ChosenLimit> first = new LinkedHashMap<>();
    for (BottleneckRow row :
        new AnswerRows("", compiled, all, new PlantOutline(compiled)).holders()) {
      first.putIfAbsent(row.line(), new ChosenLimit(row.line(), row.cause(), row.share()));
    }
    return List.copyOf(first.values());
  }
}
