package hurdline.plant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Stretches, loops and circles: what would never leave, never be limited, or stand still for good.
 */
final class FlowRules {
  private FlowRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Line line : plant.lines()) {
      limits(line, names, found);
      loops(line, names, false, found);
      circles(line, names, found);
    }
  }

  private static boolean isLimited(Line line, String machine, Names names) {
    return names.mill(machine).isPresent()
        || Names.step(line, machine).filter(step -> step.rateKgPerS().isPresent()).isPresent();
  }

  private static void limits(Line line, Names names, Problems found) {
    MaterialPaths ways = new MaterialPaths(line, names, false);
    for (Step head : line.steps()) {
      if (!names.isBin(head.machine()) || head.outlets().isEmpty()) {
        continue;
      }
      boolean known =
          head.outlets().stream()
              .allMatch(
                  o ->
                      names.aims().contains(o.to())
                          && (!names.machines.containsKey(o.to())
                              || Names.step(line, o.to()).isPresent()));
      boolean limited =
          ways.stretch(head).stream().anyMatch(machine -> isLimited(line, machine, names));
      if (known && !limited) {
        found.add(
            Names.path(line, head),
            "nothing limits what is drawn from the bin \""
                + head.machine()
                + "\", so it would empty in no time",
            "a \"rate\" in a step behind it");
      }
    }
  }

  private static void loops(Line line, Names names, boolean corrected, Problems found) {
    List<String> machines =
        line.steps().stream().map(Step::machine).filter(name -> !names.isBin(name)).toList();
    Map<Set<String>, List<String>> trapped = new LinkedHashMap<>();
    new MaterialPaths(line, names, corrected)
        .trapped(machines, names.components.keySet())
        .forEach(
            (component, where) ->
                trapped.computeIfAbsent(where, key -> new ArrayList<>()).add(component));
    trapped.forEach(
        (where, components) ->
            found.add(
                "lines." + line.name() + ".steps." + where.iterator().next(),
                "a loop returns everything: \""
                    + String.join("\", \"", components)
                    + "\" cannot leave "
                    + String.join(", ", where)
                    + (corrected ? " where the corrections are largest" : ""),
                "an outlet on the way round that lets some of it out"));
    if (!corrected && trapped.isEmpty()) {
      loops(line, names, true, found);
    }
  }

  private static void circles(Line line, Names names, Problems found) {
    MaterialPaths ways = new MaterialPaths(line, names, false);
    Map<String, List<String>> fills = new LinkedHashMap<>();
    for (Step step : line.steps()) {
      if (names.isBin(step.machine())) {
        fills.put(step.machine(), ways.stretch(step).stream().filter(names::isBin).toList());
      }
    }
    fills.forEach(
        (bin, filled) -> {
          if (filled.contains(bin)) {
            ownReturn(line, bin, names, found);
          }
        });
    List<String> circle = circle(fills);
    if (!circle.isEmpty()) {
      found.add(
          "lines." + line.name() + ".steps." + circle.get(0),
          "a circle through two or more bins: "
              + String.join(", ", circle)
              + ", "
              + circle.get(0)
              + "; fresh feed can crowd out the return until all stands still",
          "a return within a stretch, or into the bin it was drawn from");
    }
  }

  private static void ownReturn(Line line, String bin, Names names, Problems found) {
    if (names.machines.get(bin) instanceof Machine.Bin known && !(known.stopAt() > 0)) {
      found.add(
          "lines." + line.name() + ".steps." + bin,
          "material returns into the bin \""
              + bin
              + "\" that it was drawn from, and that bin has no \"stop_at\" above 0",
          "\"start_at\" and \"stop_at\" in machines." + bin + ", or a return past the bin");
    }
  }

  /**
   * Bins of the shortest circle of at least two, from the first that lies on one; none where there
   * is no circle.
   */
  private static List<String> circle(Map<String, List<String>> fills) {
    for (String start : fills.keySet()) {
      List<List<String>> ways = new ArrayList<>(List.of(List.of(start)));
      Set<String> seen = new java.util.HashSet<>();
      for (int i = 0; i < ways.size(); i++) {
        List<String> way = ways.get(i);
        for (String next : fills.getOrDefault(way.get(way.size() - 1), List.of())) {
          if (next.equals(start) && way.size() > 1) {
            return way;
          }
          if (!next.equals(start) && seen.add(next)) {
            List<String> longer = new ArrayList<>(way);
            longer.add(next);
            ways.add(longer);
          }
        }
      }
    }
    return List.of();
  }
}
