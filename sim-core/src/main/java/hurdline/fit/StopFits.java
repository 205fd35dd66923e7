package hurdline.fit;

import hurdline.fit.AmountFit.AmountUnit;
import hurdline.fit.LawChoice.Chosen;
import hurdline.fit.StopAmounts.Every;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Stop;
import hurdline.plant.Stop.Counted;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import hurdline.records.Records;
import hurdline.records.StopRecord;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Fits every stop that the log has, on the count that the engine has for it. */
final class StopFits {
  /** The mean mass of a bale and the shares of the file scale every mass that is counted. */
  private static final double SCALE_ERROR = 0.01;

  private final Plant plant;
  private final Records records;
  private final StopClocks clocks;
  private final RandomStreams streams;
  private final StopLog log;
  private final RepairFits repairs;
  private final CountChoice counts;

  StopFits(Plant plant, Records records, StopClocks clocks, RandomStreams streams) {
    this.plant = plant;
    this.records = records;
    this.clocks = clocks;
    this.streams = streams;
    log = new StopLog(plant, records);
    repairs = new RepairFits(records, clocks, streams, log.endS());
    counts = new CountChoice(records, clocks, log);
  }

  /** In the order of the plant file, new stops behind those of their machine. */
  List<StopFit> all() {
    Map<String, List<StopRecord>> logged = new LinkedHashMap<>();
    for (StopRecord stop : records.stops()) {
      logged.computeIfAbsent(stop.key(), key -> new ArrayList<>()).add(stop);
    }
    List<StopFit> fits = new ArrayList<>();
    for (Machine machine : plant.machines()) {
      Map<String, Optional<Stop>> stops = new LinkedHashMap<>();
      machine.common().stops().forEach(stop -> stops.put(stop.name(), Optional.of(stop)));
      logged.values().stream()
          .filter(rows -> rows.get(0).machine().equals(machine.name()))
          .forEach(rows -> stops.putIfAbsent(rows.get(0).stop(), Optional.empty()));
      stops.forEach(
          (name, known) ->
              fit(machine, name, known, logged.getOrDefault(machine.name() + "." + name, List.of()))
                  .ifPresent(fits::add));
    }
    return fits;
  }

  private Optional<StopFit> fit(
      Machine machine, String name, Optional<Stop> known, List<StopRecord> rows) {
    boolean isJob = !rows.isEmpty() && rows.get(0).isJob();
    boolean isPlanned = known.flatMap(Stop::planned).isPresent();
    if (isJob || isPlanned || rows.isEmpty()) {
      return Optional.empty();
    }
    List<String> warnings = new ArrayList<>();
    Counted counted = counts.of(machine.name(), name, known, rows, warnings);
    String path = "machines." + machine.name() + ".stops." + name;
    Set<String> only = log.only(known);
    Optional<Count> count = clocks.count(counted, machine.name(), only);
    AmountFit lasts = repairs.of(path + ".lasts", known, rows);
    if (count.isEmpty()) {
      String why =
          counted == Counted.MASS
              ? "made.csv does not say what was fed"
              : "shifts.csv does not say when the machine was crewed";
      AmountFit left =
          new AmountFit(
              path + ".every",
              AmountUnit.SECONDS,
              new Taken.Left(why),
              null,
              List.of(),
              Double.NaN,
              List.of());
      return Optional.of(
          new StopFit(
              machine.name(),
              name,
              known.isEmpty(),
              counted,
              left,
              lasts,
              Optional.empty(),
              List.of(),
              warnings));
    }
    List<LocalDate> changes = log.changes(machine.name() + "." + name);
    List<Every> periods =
        log.amounts(rows, machine.name(), counted, changes)
            .every(count.get(), StopLog.least(counted));
    List<AmountFit> fits = new ArrayList<>();
    for (int i = 0; i < periods.size(); i++) {
      boolean isLast = i == periods.size() - 1;
      fits.add(
          every(
              path + ".every",
              counted,
              periods.get(i),
              i,
              isLast ? warnings : new ArrayList<>(),
              machine.name()));
    }
    return Optional.of(
        new StopFit(
            machine.name(),
            name,
            known.isEmpty(),
            counted,
            fits.get(fits.size() - 1),
            lasts,
            changes.isEmpty() ? Optional.empty() : Optional.of(changes.get(changes.size() - 1)),
            fits.subList(0, fits.size() - 1),
            warnings));
  }

  private AmountFit every(
      String key,
      Counted counted,
      Every period,
      int number,
      List<String> warnings,
      String machine) {
    AmountUnit unit = counted == Counted.MASS ? AmountUnit.KILOGRAMS : AmountUnit.SECONDS;
    if (period.seen().isEmpty()) {
      return new AmountFit(
          key,
          unit,
          new Taken.Left("no stop after which the count is known"),
          null,
          List.of(),
          Double.NaN,
          List.of());
    }
    Observations seen = Observations.of(period.seen());
    Chosen chosen =
        new LawChoice(seen, GoodnessOfFit.spells(period.spells()), 0, streams.of(number, key))
            .every();
    List<String> notes = new ArrayList<>(chosen.notes());
    if (counted == Counted.RUNNING && clocks.isBehindABin(machine)) {
      notes.add("behind a bin hours include idling on an empty bin; counted on mass it would not");
    }
    double error = chosen.taken().meanErrorShare();
    if (!(chosen.taken() instanceof Taken.Fixed)) {
      error = Math.max(error, clustered(period, key, warnings));
      trend(period, warnings);
    }
    if (counted == Counted.MASS) {
      error = Math.hypot(error, SCALE_ERROR);
    }
    return new AmountFit(key, unit, chosen.taken(), seen, chosen.tried(), error, notes);
  }

  /** The error by blocks where stops come in clusters; 0 where they do not. */
  private double clustered(Every period, String key, List<String> warnings) {
    double[] whole = period.whole();
    RandomStream stream = streams.of(1, key + " clusters");
    Optional<Clusters> clusters = Clusters.of(whole, stream).filter(Clusters::isSignificant);
    if (clusters.isEmpty()) {
      return 0;
    }
    warnings.add(
        String.format(
            Locale.ROOT,
            "stops come in clusters (rank correlation of neighbors %.2f, p %.3f): drawn one by one they will come too evenly, and the error is still too small",
            clusters.get().correlation(),
            clusters.get().p()));
    return Clusters.blockErrorShare(whole, stream);
  }

  private void trend(Every period, List<String> warnings) {
    double[] whole = period.whole();
    Optional<Trend> trend = Trend.of(whole).filter(Trend::isSignificant);
    if (trend.isPresent()) {
      OptionalInt at = Trend.change(whole);
      String when =
          at.isPresent()
              ? " from about " + month(period.startS().get(at.getAsInt())) + " on"
              : " as time goes on";
      warnings.add(
          String.format(
              Locale.ROOT,
              "stops come more %s%s (Lewis-Robinson %.1f, p %.3f): if something was changed then, say so under \"changed\"",
              trend.get().statistic() > 0 ? "often" : "seldom",
              when,
              trend.get().statistic(),
              trend.get().p()));
    }
  }

  private String month(double instantS) {
    LocalDateTime wall = log.clock().wall(instantS);
    return wall.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + wall.getYear();
  }
}
