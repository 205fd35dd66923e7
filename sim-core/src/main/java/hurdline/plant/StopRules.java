package hurdline.plant;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Lines and crops to which a stop belongs. */
final class StopRules {
  private static final double DAY_S = 86_400;

  private StopRules() {}

  static void check(Machine machine, String path, Plant plant, Names names, Problems found) {
    for (Stop stop : machine.common().stops()) {
      stop.planned()
          .ifPresent(
              dates -> apart(stop, dates, path + ".stops." + stop.name() + ".on", plant, found));
      Set<String> seen = new HashSet<>();
      for (int i = 0; i < stop.count().onlyFor().size(); i++) {
        String name = stop.count().onlyFor().get(i);
        String at = path + ".stops." + stop.name() + ".for." + i;
        if (!seen.add(name)) {
          found.add(at, "\"" + Problems.cut(name) + "\" stands here twice", "each name once");
        } else {
          belongs(machine, name, at, plant, names, found);
        }
      }
    }
  }

  /** Planned stops of which no date falls into the calendar. */
  static void caution(Machine machine, Plant plant, Problems found) {
    for (Stop stop : machine.common().stops()) {
      if (stop.planned().isPresent() && !fallsInto(stop, stop.planned().get(), plant.calendar())) {
        found.add(
            "machines." + machine.name() + ".stops." + stop.name() + ".on",
            "none of its dates lies in the calendar",
            "it will never stop; for a stop of every year write \"repeats: yearly\"");
      }
    }
  }

  private static boolean fallsInto(Stop stop, Stop.Dates dates, Calendar calendar) {
    long days = stop.repairAnyTime() ? (long) Math.ceil(stop.lastsS().mean() / DAY_S) : 0;
    return !dates.between(calendar.from().minusDays(days), calendar.to()).isEmpty();
  }

  /** One by the clock must be over when the next begins. */
  private static void apart(Stop stop, Stop.Dates dates, String at, Plant plant, Problems found) {
    if (!stop.repairAnyTime()) {
      return;
    }
    LocalDate from = plant.calendar().from().minusYears(1);
    List<LocalDate> all = dates.between(from, plant.calendar().to().plusYears(1));
    for (int i = 1; i < all.size(); i++) {
      double apartS = DAY_S * ChronoUnit.DAYS.between(all.get(i - 1), all.get(i));
      if (apartS < stop.lastsS().mean()) {
        found.add(
            at,
            "the stop of " + all.get(i - 1) + " is not over when that of " + all.get(i) + " begins",
            "dates further apart, or one longer stop");
        return;
      }
    }
  }

  private static void belongs(
      Machine machine, String name, String at, Plant plant, Names names, Problems found) {
    List<String> known =
        Stream.concat(names.lines.keySet().stream(), names.crops.keySet().stream()).toList();
    found.known(at, name, known, "neither a line nor a crop", "a line or a crop");
    if (!known.contains(name)) {
      return;
    }
    Set<String> meant = Stop.linesOf(name, plant.lines());
    if (names.lines.containsKey(name) && meant.size() > 1) {
      found.add(
          at,
          "\"" + name + "\" is both a line and a crop that other lines work too",
          "the names of the lines that are meant");
    } else if (!names.isBin(machine.name())
        && plant.lines().stream()
            .filter(line -> meant.contains(line.name()))
            .noneMatch(line -> uses(line, machine.name()))) {
      found.add(
          at,
          "no line \""
              + name
              + "\", nor one of such a crop, uses the machine, so it would never stop",
          "a line or crop that works on \"" + machine.name() + "\"");
    }
  }

  private static boolean uses(Line line, String machine) {
    return Names.step(line, machine).isPresent() || line.alongside().contains(machine);
  }
}
