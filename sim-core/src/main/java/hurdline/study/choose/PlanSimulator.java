package hurdline.study.choose;

import hurdline.answer.BottleneckRow;
import hurdline.answer.ChosenLimit;
import hurdline.answer.SimulatedBlock;
import hurdline.answer.SimulatedBlock.Series;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.Replication;
import hurdline.simulation.results.Outcome;
import hurdline.study.AnswerRows;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** Makes the plant of a plan and simulates its years, on one thread. */
final class PlanSimulator {
  private final PlantOrigin source;
  private final CompiledPlant base;
  private final List<Change> before;
  private final PlanSpace space;
  private final List<String> measures;

  /**
   * @param base any plant of the source compiled, of which plans take over what they do not change
   * @param before changes of the plant before any choice is made
   * @param measures that are handed back
   */
  PlanSimulator(
      PlantOrigin source,
      CompiledPlant base,
      List<Change> before,
      PlanSpace space,
      List<String> measures) {
    this.source = source;
    this.base = base;
    this.before = List.copyOf(before);
    this.space = space;
    this.measures = List.copyOf(measures);
  }

  /** A block; empty if stop was asked for before it was whole. */
  Optional<SimulatedBlock> block(
      PlanBlock block, RandomStreams streams, Runnable year, BooleanSupplier stop) {
    List<SimulatedBlock.Plan> plans = new ArrayList<>();
    for (int plan : block.plans()) {
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
    CompiledPlant compiled;
    try {
      compiled = compiled(plan);
    } catch (ProblemsException wrong) {
      return Optional.of(problem(plan, told(wrong)));
    }
    ReplicationRange years = block.years();
    double[][] values = new double[measures.size()][years.count()];
    ReplicationResults all = new ReplicationResults();
    Replication replication = compiled.replication();
    int[] columns = null;
    for (int r = years.from(); r < years.to(); r++) {
      if (stop.getAsBoolean()) {
        return Optional.empty();
      }
      Outcome outcome = replication.run(streams, r, null);
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
    Change[] changes =
        Stream.concat(before.stream(), space.changes(plan).stream()).toArray(Change[]::new);
    return base.changedTo(source.variants().with(changes));
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
