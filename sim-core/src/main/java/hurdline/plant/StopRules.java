package hurdline.plant;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Lines and crops to which a stop belongs. */
final class StopRules {
  private StopRules() {}

  static void check(Machine machine, String path, Plant plant, Names names, Problems found) {
    for (Stop stop : machine.common().stops()) {
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
