package hurdline.fit;

import hurdline.plant.Plant;
import hurdline.plant.Stop;
import hurdline.plant.Stop.Counted;
import hurdline.records.Records;
import hurdline.records.StopRecord;
import hurdline.records.WallClock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The log of stops, ready to be counted: with dates of changes, days without shifts and the end of
 * the records.
 */
final class StopLog {
  private static final double MINUTE_S = 60;

  private final Plant plant;
  private final Records records;
  private final WallClock clock;
  private final double endS;

  StopLog(Plant plant, Records records) {
    this.plant = plant;
    this.records = records;
    clock = new WallClock(records.map().zone());
    double lastS =
        records.shifts().stream().mapToDouble(hurdline.records.ShiftRecord::toS).max().orElse(0);
    double lastStopS = records.stops().stream().mapToDouble(StopRecord::beganS).max().orElse(0);
    endS =
        records
            .map()
            .to()
            .map(to -> (double) clock.epochS(to.plusDays(1).atStartOfDay()))
            .orElse(Math.max(lastS, lastStopS));
  }

  /** The lines whose work alone is counted; empty for all. */
  Set<String> only(Optional<Stop> known) {
    return known.map(stop -> stop.lines(plant.lines())).orElse(Set.of());
  }

  StopAmounts amounts(
      List<StopRecord> rows, String machine, Counted counted, List<LocalDate> changes) {
    List<StopRecord> used =
        rows.stream().filter(stop -> counted == Counted.CALENDAR || stop.onShift()).toList();
    List<Double> changesS =
        changes.stream().map(day -> (double) clock.epochS(day.atStartOfDay())).toList();
    return new StopAmounts(
        used, changesS, counted == Counted.CALENDAR ? List.of() : gaps(machine), endS);
  }

  /** Days on which the log has a stop of the machine and the shifts have none. */
  private List<Double> gaps(String machine) {
    TreeSet<LocalDate> days = new TreeSet<>();
    records.stops().stream()
        .filter(stop -> stop.machine().equals(machine) && !stop.onShift())
        .forEach(stop -> days.add(clock.wall(stop.beganS()).toLocalDate()));
    return days.stream().map(day -> (double) clock.epochS(day.atStartOfDay())).toList();
  }

  List<LocalDate> changes(String key) {
    return records.map().changed().stream()
        .filter(change -> change.stops().contains(key))
        .map(hurdline.records.RecordsMap.Changed::on)
        .sorted()
        .toList();
  }

  /** Below it an amount is no more than the clock's rounding. */
  static double least(Counted counted) {
    return counted == Counted.MASS ? 1 : MINUTE_S;
  }

  WallClock clock() {
    return clock;
  }

  double endS() {
    return endS;
  }
}
