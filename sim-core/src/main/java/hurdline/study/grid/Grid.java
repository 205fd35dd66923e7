package hurdline.study.grid;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.SimulatedCell;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.study.FigureSoFar;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.SafetyFacts;
import hurdline.study.Scenario;
import hurdline.study.option.OptionPlants;
import hurdline.study.replicate.LifeCalendar;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.RunSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * What plants do over a grid of values of one or two of their keys, all cells on the same chance.
 */
public final class Grid {
  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final String called;
  private final List<Scenario> alternatives;
  private final List<GridKey> keys;
  private final RunSettings effort;
  private final GridPlan plan;
  private final CompiledPlant first;
  private final GridMeasures measures;

  /**
   * @param source of the first plant, and what the answer says of where it came from
   * @param chosen what is changed in all plants before any value is varied
   * @param called what tells the plants apart: {@code option} or {@code plan}
   * @param keys one or two
   * @throws hurdline.plant.ProblemsException if a plant has problems without the varied values, or
   *     none can be simulated with any of them
   */
  public Grid(
      PlantOrigin source,
      PlantChanges chosen,
      String called,
      List<Scenario> alternatives,
      List<GridKey> keys,
      RunSettings effort) {
    if (alternatives.isEmpty() || keys.isEmpty()) {
      throw new IllegalArgumentException("expected at least one plant and one key");
    }
    this.source = source;
    this.chosen = chosen;
    this.called = called;
    this.alternatives = List.copyOf(alternatives);
    this.keys = List.copyOf(keys);
    this.effort = effort;
    plan = new GridPlan(this.alternatives, this.keys);
    first = CompiledPlant.of(this.alternatives.get(0).with(List.of()));
    measures =
        new GridMeasures(
            new PlantOutline(first).outline(),
            first.plant().money().isPresent(),
            isRepeated() && isAnyPurchase(),
            called.equals("plan"));
  }

  /** Whether some option costs something, here or in a cell: the others are no purchases. */
  private boolean isAnyPurchase() {
    boolean varied = keys.stream().anyMatch(key -> key.path().startsWith("options."));
    return alternatives.stream()
        .filter(Scenario::bought)
        .anyMatch(
            option ->
                varied || OptionPlants.joined(option.name(), first.plant().options()).isPurchase());
  }

  private boolean isRepeated() {
    return LifeCalendar.of(first.plant().calendar()).isPresent();
  }

  /** How many cells there are. */
  public int cells() {
    return plan.cells().size();
  }

  /** How many plants stand side by side in a cell. */
  public int plants() {
    return alternatives.size();
  }

  /** How often a calendar is simulated in all. */
  public int simulations() {
    return plan.plants() * effort.replications();
  }

  /** The problems for which plants are left out of cells, a line each. */
  public List<String> leftOut() {
    return plan.cells().stream()
        .flatMap(cell -> cell.leftOut().stream())
        .map(leftOut -> leftOut.problem().text())
        .toList();
  }

  /** All that a finished cell hangs on, a line each; two grids with the same may share cells. */
  public List<String> settings() {
    List<String> lines = new ArrayList<>();
    lines.add("program: " + source.version());
    lines.add("seed: " + effort.seed());
    lines.add("replications: " + effort.replications());
    keys.forEach(key -> lines.add("vary: " + key.path() + "=" + key.said()));
    alternatives.forEach(plant -> lines.add(called + " " + plant.name() + ": " + plant.told()));
    return lines.stream().map(line -> line.replaceAll("\\s+", " ")).toList();
  }

  /**
   * Simulates one replication of the first plant that can be, and forgets it: to see how long one
   * takes.
   */
  public void trial() {
    for (int cell = 0; cell < cells(); cell++) {
      if (!plan.in(cell).isEmpty()) {
        CompiledPlant stage = first.changedTo(plan.in(cell).get(0).plant());
        stage.replication().run(new RandomStreams(effort.seed()), 1, null);
        return;
      }
    }
  }

  /**
   * Simulates every cell that is not kept.
   *
   * @param progress told of all simulates together, never two at once
   * @param stop asked before each replication whether to finish early
   * @return the answer; empty if it was stopped before all cells were done, which are then in the
   *     store
   */
  public Optional<GridAnswer> simulate(
      CellStore store, ProgressListener progress, BooleanSupplier stop) {
    TreeMap<Integer, SimulatedCell> finished = new TreeMap<>();
    List<CellStage> due = new ArrayList<>();
    for (int cell = 0; cell < cells(); cell++) {
      Optional<SimulatedCell> kept = store.kept(cell);
      if (kept.isPresent()) {
        finished.put(cell, kept.get());
      } else {
        int at = cell;
        plan.in(cell).forEach(planted -> due.add(new CellStage(at, planted, first)));
      }
    }
    int before = simulations() - due.size() * effort.replications();
    AtomicInteger done = new AtomicInteger(before);
    FigureSoFar soFar = new FigureSoFar(first.plant());
    CellMaker maker = new CellMaker(alternatives, measures);
    GridKeeper keeper =
        new GridKeeper(
            cell -> plan.in(cell).size(),
            maker,
            whole -> {
              store.keep(whole);
              finished.put(whole.cell(), whole);
            },
            () -> {
              progress.headline(() -> soFar.highest(finished.values()));
              progress.done(done.incrementAndGet(), simulations());
            });
    new GridPool(due, effort, keeper, stop).simulate();
    return finished.size() < simulated()
        ? Optional.empty()
        : Optional.of(answers(List.copyOf(finished.values())).answer());
  }

  private long simulated() {
    return plan.cells().stream().filter(cell -> cell.leftOut().size() < plants()).count();
  }

  private GridAnswers answers(List<SimulatedCell> cells) {
    return new GridAnswers(
        new PlantOutline(first).header(source, chosen, effort, effort.replications(), false),
        new PlantOutline(first).outline(),
        called,
        alternatives.stream().map(Scenario::name).toList(),
        keys,
        plan.cells(),
        measures,
        cells,
        GridFacts.facts(
            effort.replications(),
            first.plant().calendar(),
            plan.cells(),
            first.plant().money().isPresent() && isAnyPurchase()),
        new SafetyFacts(first.plant()).facts(),
        source.warnings());
  }
}
