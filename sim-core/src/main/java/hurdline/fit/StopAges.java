package hurdline.fit;

import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Stop;
import hurdline.plant.Stop.Counted;
import hurdline.records.Records;
import hurdline.records.StopRecord;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How much each stop has counted since its last one, on the morning of a day. */
public final class StopAges {
  private final Plant plant;
  private final Records records;
  private final StopLog log;
  private final StopClocks clocks;

  /**
   * @param records of the days before, by {@link Records#before}
   */
  public StopAges(Plant plant, Records records, LineLoads loads) {
    this.plant = plant;
    this.records = records;
    log = new StopLog(plant, records);
    clocks = new StopClocks(plant, records, loads);
  }

  /**
   * By {@code machine.stop}, in the unit of the stop's {@code every}; a stop whose count the
   * records do not have is missing. A stop that has not come since the first day has its initial
   * age too.
   *
   * @param first day of the plant's calendar
   * @param asOf on whose morning
   */
  public Map<String, Double> on(LocalDate first, LocalDate asOf) {
    Map<String, Double> ages = new LinkedHashMap<>();
    double atS = log.clock().epochS(asOf.atStartOfDay());
    for (Machine machine : plant.machines()) {
      for (Stop stop : machine.common().stops()) {
        age(machine.name(), stop, first, atS)
            .ifPresent(age -> ages.put(machine.name() + "." + stop.name(), age));
      }
    }
    return ages;
  }

  private Optional<Double> age(String machine, Stop stop, LocalDate first, double atS) {
    if (stop.planned().isPresent()) {
      return Optional.empty();
    }
    String key = machine + "." + stop.name();
    Set<String> only = stop.lines(plant.lines());
    double beganS = log.clock().epochS(first.atStartOfDay());
    Optional<Double> renewedS = renewedS(key, stop.counted(), atS);
    double fromS = renewedS.map(last -> Math.max(last, beganS)).orElse(beganS);
    double already = renewedS.filter(last -> last >= beganS).isPresent() ? 0 : stop.already();
    if (!(atS > beganS)) {
      return Optional.of(stop.already());
    }
    return clocks
        .count(stop.counted(), machine, only)
        .map(count -> already + count.untilInstant(atS) - count.untilInstant(fromS));
  }

  /** The end of the last stop, or the date from which its part is another. */
  private Optional<Double> renewedS(String key, Counted counted, double atS) {
    Optional<Double> changedS =
        log.changes(key).stream()
            .map(day -> (double) log.clock().epochS(day.atStartOfDay()))
            .filter(at -> at <= atS)
            .max(Comparator.naturalOrder());
    Optional<Double> endedS =
        records.stops().stream()
            .filter(row -> row.key().equals(key))
            .filter(row -> counted == Counted.CALENDAR || row.onShift())
            .map(StopAges::endS)
            .map(end -> Math.min(end, atS))
            .max(Comparator.naturalOrder());
    return endedS.isPresent() && changedS.isPresent()
        ? Optional.of(Math.max(endedS.get(), changedS.get()))
        : endedS.or(() -> changedS);
  }

  private static double endS(StopRecord row) {
    return row.endedS() > row.beganS() ? row.endedS() : row.beganS();
  }
}
