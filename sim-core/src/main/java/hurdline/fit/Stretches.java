package hurdline.fit;

import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Step;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which machines of a line stand when one of them does: those between two bins, the first of them
 * with the line's auxiliaries.
 */
final class Stretches {
  private final Map<String, List<Set<String>>> byLine = new LinkedHashMap<>();
  private final Set<String> bins = new HashSet<>();

  Stretches(Plant plant) {
    plant.machines().stream()
        .filter(Machine.Bin.class::isInstance)
        .map(Machine::name)
        .forEach(bins::add);
    plant.lines().forEach(line -> byLine.put(line.name(), stretches(line)));
  }

  private List<Set<String>> stretches(Line line) {
    Map<String, Step> steps = new LinkedHashMap<>();
    line.steps().forEach(step -> steps.put(step.machine(), step));
    List<Set<String>> stretches = new ArrayList<>();
    stretches.add(from(line.feed(), steps));
    stretches.get(0).addAll(line.alongside());
    for (Step step : line.steps()) {
      if (bins.contains(step.machine())) {
        step.outlets().stream()
            .map(Step.Outlet::to)
            .filter(steps::containsKey)
            .filter(to -> !bins.contains(to))
            .forEach(to -> stretches.add(from(to, steps)));
      }
    }
    return stretches;
  }

  private Set<String> from(String first, Map<String, Step> steps) {
    Set<String> reached = new HashSet<>();
    List<String> open = new ArrayList<>(List.of(first));
    while (!open.isEmpty()) {
      String at = open.remove(open.size() - 1);
      if (steps.containsKey(at) && !bins.contains(at) && reached.add(at)) {
        steps.get(at).outlets().forEach(outlet -> open.add(outlet.to()));
      }
    }
    return reached;
  }

  /**
   * All that stand with a machine in a line, itself among them; empty where the line does not use
   * it.
   */
  Set<String> of(String line, String machine) {
    Set<String> together = new HashSet<>();
    byLine.getOrDefault(line, List.of()).stream()
        .filter(stretch -> stretch.contains(machine))
        .forEach(together::addAll);
    return together;
  }

  /** Whether material comes to it from a bin alone. */
  boolean isBehindABin(String line, String machine) {
    List<Set<String>> stretches = byLine.getOrDefault(line, List.of());
    return !stretches.isEmpty()
        && !stretches.get(0).contains(machine)
        && !of(line, machine).isEmpty();
  }
}
