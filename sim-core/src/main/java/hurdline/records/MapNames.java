package hurdline.records;

import hurdline.plant.Machine;
import hurdline.plant.Nearest;
import hurdline.plant.Plant;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Names in {@code records.yaml} that lead nowhere, which would else be without effect in silence.
 */
final class MapNames {
  private static final String FILE = "records.yaml";

  private MapNames() {}

  /** Stops under {@code logged_from} and {@code changed} that neither the plant nor the log has. */
  static List<LocatedProblem> problems(RecordsMap map, Plant plant, List<StopRecord> stops) {
    Set<String> known = new TreeSet<>();
    for (Machine machine : plant.machines()) {
      machine.common().stops().forEach(stop -> known.add(machine.name() + "." + stop.name()));
    }
    stops.forEach(stop -> known.add(stop.key()));
    List<LocatedProblem> problems = new ArrayList<>();
    map.loggedFromS().keySet().stream()
        .sorted()
        .forEach(key -> check("logged_from", key, known, problems));
    map.changed()
        .forEach(change -> change.stops().forEach(key -> check("changed", key, known, problems)));
    return problems;
  }

  private static void check(
      String under, String key, Set<String> known, List<LocatedProblem> problems) {
    if (!known.contains(key)) {
      problems.add(
          LocatedProblem.of(
              FILE,
              "\""
                  + NumberReader.shortened(key)
                  + "\" under "
                  + under
                  + " is no stop of the plant file or the log",
              Nearest.expected("machine.stop", key, known).text(),
              Nearest.to(key, known).orElse("")));
    }
  }

  /** Names under {@code called} that the plant file does not have. */
  static List<LocatedProblem> cautions(RecordsMap map, Plant plant) {
    Set<String> machines = new TreeSet<>();
    Set<String> stops = new TreeSet<>(Set.of(StopRecord.SCREEN_CHANGE, StopRecord.PACKAGE_CHANGE));
    for (Machine machine : plant.machines()) {
      machines.add(machine.name());
      machine.common().stops().forEach(stop -> stops.add(stop.name()));
    }
    List<LocatedProblem> cautions = new ArrayList<>();
    map.machines().values().stream()
        .distinct()
        .sorted()
        .filter(name -> !machines.contains(name))
        .forEach(name -> cautions.add(caution("machine", name, machines)));
    map.reasons().values().stream()
        .distinct()
        .sorted()
        .filter(name -> !stops.contains(name))
        .forEach(name -> cautions.add(caution("stop", name, stops)));
    return cautions;
  }

  private static LocatedProblem caution(String kind, String name, Set<String> known) {
    String found =
        "\""
            + NumberReader.shortened(name)
            + "\" under called is no "
            + kind
            + " of the plant file";
    String then = Nearest.expected("a " + kind, name, known).text();
    return new LocatedProblem(
        LocatedProblem.Severity.WARNING,
        FILE,
        0,
        0,
        "",
        found,
        then,
        Nearest.to(name, known).orElse(""),
        "");
  }
}
