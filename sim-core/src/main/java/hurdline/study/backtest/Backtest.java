package hurdline.study.backtest;

import hurdline.account.Trace;
import hurdline.answer.BacktestAnswer;
import hurdline.plant.Plant;
import hurdline.records.Records;
import hurdline.simulation.CompiledPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.StudyInputs;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.ReplicationRunner;
import hurdline.study.replicate.RunSettings;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * Simulates a season that has been, again and again, and sets the records of it among the
 * replications: one more of them, if the model is right.
 */
public final class Backtest {
  /** Fewer cannot show a chance of 5 % with any sharpness. */
  private static final int FEWEST = 99;

  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final Records records;
  private final String folder;
  private final PastSeason season;
  private final CompiledPlant stage;
  private final Optional<DrawnPlants> drawn;
  private final List<SeasonSeries> series;

  /**
   * @param folder name of the folder of records
   * @throws hurdline.plant.ProblemsException if the changed plant has problems, the records hold no
   *     shift, or nothing that the simulation has too
   */
  public Backtest(
      PlantOrigin source, PlantChanges chosen, Records records, String folder, RunSettings effort) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.records = records;
    this.folder = folder;
    if (records.shifts().isEmpty()) {
      throw source.refusal(
          folder + " holds no shift, so the season's hours are not known", "a shifts.csv");
    }
    season = new PastSeason(records);
    Plant plant = source.variants().with(chosen.asArray());
    stage = CompiledPlant.of(season.of(plant));
    series =
        new SeenSeason(plant, records, season, stage.roster().weeks(), stage.roster().months())
            .all();
    if (series.isEmpty()) {
      throw source.refusal(
          folder + " holds nothing to compare", "made.csv, stops.csv, yard.csv or power.csv");
    }
    drawn =
        new StudyInputs(plant, effort)
            .draws()
            .map(
                draws ->
                    new DrawnPlants(
                        source.variants(), chosen.single(), chosen.changes(), draws, season::of));
    drawn.ifPresent(of -> of.check(effort.replications()));
  }

  /** The fewest replications that a backtest takes. */
  public static int fewest() {
    return FEWEST;
  }

  /** How often the season is simulated. */
  public int simulations() {
    return effort.replications();
  }

  /**
   * Simulates it.
   *
   * @param progress told of each replication, never of two at once
   * @param stop asked between replications whether to finish early
   * @return empty if it was stopped before there were replications enough to say anything
   */
  public Optional<BacktestAnswer> simulate(ProgressListener progress, BooleanSupplier stop) {
    double[][][] values = new double[effort.replications()][][];
    Map<Integer, SimulatedSeason> watching = new ConcurrentHashMap<>();
    AtomicInteger done = new AtomicInteger();
    ReplicationRange range = new ReplicationRange(1, 1 + effort.replications());
    java.util.function.IntFunction<Trace> traces =
        one ->
            watching.computeIfAbsent(
                one, number -> new SimulatedSeason(series, records, season, stage));
    java.util.function.Consumer<hurdline.simulation.results.Outcome> taker =
        outcome ->
            values[outcome.replication() - 1] =
                watching.remove(outcome.replication()).values(outcome);
    Runnable told = () -> progress.done(done.incrementAndGet(), effort.replications());
    try (ReplicationRunner runner =
        new ReplicationRunner(effort.seed(), Math.min(effort.threads(), effort.replications()))) {
      if (drawn.isPresent()) {
        runner.run(drawn.get(), range, traces, taker, told, stop);
      } else {
        runner.run(stage, range, traces, taker, told, stop);
      }
    }
    if (done.get() < FEWEST) {
      return Optional.empty();
    }
    double[][][] whole = java.util.Arrays.copyOf(values, done.get());
    return Optional.of(
        new BacktestAnswers(source, chosen, effort, stage, series, drawn.map(DrawnPlants::draws))
            .answer(records, folder, whole, done.get() < effort.replications()));
  }
}
