package hurdline.study.rest;

import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonRest;
import hurdline.answer.SeasonRest.Hours;
import hurdline.answer.SeasonRest.Stock;
import hurdline.fit.LineLoads;
import hurdline.fit.StopAges;
import hurdline.plant.Calendar;
import hurdline.plant.Crop;
import hurdline.plant.InputDraws;
import hurdline.plant.Line;
import hurdline.plant.Plant;
import hurdline.records.Records;
import hurdline.simulation.CompiledPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.StudyInputs;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;

/**
 * A season of which a part has been: that part is taken from the records, the rest is simulated,
 * and once more for each line with a shift less or more, on the same random numbers.
 */
public final class RestStudy {
  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final Records records;
  private final String folder;
  private final LocalDate asOf;
  private final Plant plant;
  private final SeasonSoFar soFar;
  private final List<Stock> stock = new ArrayList<>();
  private final Map<String, Double> ages;
  private final OpeningContents contents;
  private final RestOfSeason rest;
  private final Run run;
  private final Optional<InputDraws> draws;
  private final List<ShiftChange> changes = new ArrayList<>();

  /**
   * @param folder name of the folder of records
   * @param asOf the first day that is simulated
   * @param loads of the changed plant
   * @throws hurdline.plant.ProblemsException if the changed plant has problems, or the records do
   *     not say how the plant stood on that day
   */
  public RestStudy(
      PlantOrigin source,
      PlantChanges chosen,
      RunSettings effort,
      Records records,
      String folder,
      LocalDate asOf,
      LineLoads loads) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.records = records;
    this.folder = folder;
    this.asOf = asOf;
    plant = source.variants().with(chosen.asArray());
    refuseDate();
    Records before = records.before(asOf);
    contents = new OpeningContents(before, asOf);
    contents.check(source, plant, folder);
    soFar = new SeasonSoFar(plant, before, asOf, contents);
    plant.crops().forEach(this::count);
    ages = new StopAges(plant, before, loads).on(plant.calendar().from(), asOf);
    rest = new RestOfSeason(asOf, soFar, contents, onHand(), ages);
    run = new Run(source, chosen, effort, rest::of);
    draws = new StudyInputs(plant, effort).draws();
    Plant left = rest.of(plant);
    for (Line line : plant.lines()) {
      if (ShiftChange.campaigns(left, line.name()).findAny().isPresent()) {
        changes.add(new ShiftChange(line.name(), Hours.AS_PLANNED, ""));
        ShiftChange.of(left, line.name()).ifPresent(changes::add);
      }
    }
  }

  private void refuseDate() {
    Calendar calendar = plant.calendar();
    if (asOf.isBefore(calendar.from()) || asOf.isAfter(calendar.to())) {
      throw source.refusal(
          "the plant as of " + asOf + " is asked for, which lies outside the calendar",
          "a date from " + calendar.from() + " to " + calendar.to());
    }
    if (records.shifts().isEmpty()) {
      throw source.refusal(
          folder + " holds no shift, so it is not known what was worked", "a shifts.csv");
    }
    LocalDate first = records.first().orElseThrow();
    LocalDate next = records.last().orElseThrow().plusDays(1);
    if (asOf.isBefore(first) || asOf.isAfter(next)) {
      throw source.refusal(
          folder + " covers " + first + " to " + next.minusDays(1) + " and nothing up to " + asOf,
          "a date from " + first + " to " + next);
    }
  }

  private void count(Crop crop) {
    Stock found =
        soFar
            .stock(crop)
            .orElseThrow(
                () ->
                    source.refusal(
                        folder + " has no count of " + crop.name() + " up to " + asOf,
                        "a row of yard.csv with a date up to " + asOf));
    boolean isOld = found.counted().isBefore(asOf) && found.count() + found.came() > 0;
    if (isOld && !soFar.knowsFed(crop.name()) && soFar.hasWorked(crop.name(), found.counted())) {
      throw source.refusal(
          folder
              + " does not say what was fed of "
              + crop.name()
              + " since it was counted on "
              + found.counted(),
          "rows of what was fed in made.csv, or a count on " + asOf + " in yard.csv");
    }
    stock.add(found);
  }

  private Map<String, Integer> onHand() {
    Map<String, Integer> bales = new LinkedHashMap<>();
    for (Stock of : stock) {
      if (of.onHand() > 0 || plant.yard().onHand().containsKey(of.crop())) {
        bales.put(of.crop(), (int) of.onHand());
      }
    }
    return bales;
  }

  /** How often a calendar is simulated in all; with an aim, to begin with. */
  public int simulations() {
    return run.simulations() + further() * effort.replications();
  }

  /** As planned, chances are those of the run itself unless inputs are drawn. */
  private int further() {
    return (int) changes.stream().filter(this::isSimulated).count();
  }

  private boolean isSimulated(ShiftChange change) {
    return change.hours() != Hours.AS_PLANNED || draws.isPresent();
  }

  /**
   * Simulates the rest of the season.
   *
   * @param progress told of all simulations together, never of two at once
   * @param stop asked between replications whether to finish early
   * @return empty if no replication was finished
   */
  public Optional<RunAnswer> simulate(ProgressListener progress, BooleanSupplier stop) {
    Optional<RunAnswer> ran = run.simulate(progress, stop);
    return ran.map(
        answer ->
            answer.with(
                rest(answer, progress, stop),
                List.of(contents.fact(plant)),
                records.cautionsUpTo(asOf)));
  }

  private SeasonRest rest(RunAnswer answer, ProgressListener progress, BooleanSupplier stop) {
    int count = answer.header().replications();
    int before = run.simulations();
    ReplicationBudget budget =
        new ReplicationBudget(
            effort, (done, of) -> progress.done(before + done, before + further() * count), stop);
    RestRows rows = new RestRows(plant, asOf, answer);
    for (ShiftChange change : changes) {
      if (!isSimulated(change)) {
        rows.addPlanned(change);
      } else if (!budget.isStopAsked()) {
        ReplicationResults figures = simulate(change, budget, count);
        if (figures.count() == count) {
          rows.add(change, figures);
        }
      }
    }
    return new SeasonRest(
        asOf,
        folder,
        records.hash(),
        draws.isPresent(),
        rows.quantities(soFar),
        stock,
        soFar.orders(),
        rows.ages(ages),
        rows.finishes());
  }

  private ReplicationResults simulate(ShiftChange change, ReplicationBudget budget, int count) {
    UnaryOperator<Plant> then = of -> change.of(rest.of(of));
    if (draws.isPresent()) {
      DrawnPlants plants =
          new DrawnPlants(source.variants(), chosen.single(), chosen.changes(), draws.get(), then);
      return budget.drawn(plants, count);
    }
    budget.expect(count);
    return budget
        .whole(CompiledPlant.of(then.apply(plant)), count)
        .orElseGet(ReplicationResults::new);
  }
}
