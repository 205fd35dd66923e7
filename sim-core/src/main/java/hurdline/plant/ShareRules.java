package hurdline.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Shares that leave a machine: none is left over, none is taken twice. */
final class ShareRules {
  private ShareRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Line line : plant.lines()) {
      Set<String> present = ComponentPresence.in(line, plant, names);
      for (Step step : line.steps()) {
        outlets(line, step, present, names, found);
      }
    }
  }

  private static void outlets(
      Line line, Step step, Set<String> present, Names names, Problems found) {
    String path = Names.path(line, step) + ".outlets";
    List<Integer> rests = new ArrayList<>();
    for (int i = 0; i < step.outlets().size(); i++) {
      if (step.outlets().get(i).takes().isEmpty()) {
        rests.add(i);
      }
    }
    if (rests.size() > 1) {
      found.add(
          path + "." + rests.get(1),
          "a second of the outlets has no \"takes\"; only one can get the rest",
          "\"takes\" with a share of each component, for all outlets but one");
    }
    for (String component : names.components.keySet()) {
      double sum = taken(step, component);
      if (sum > 1 + 1e-9) {
        found.add(
            path,
            "the outlets take " + Problems.percent(sum) + " of \"" + component + "\"",
            "at most 100 % of each component in all \"takes\" together");
      }
    }
    if (rests.isEmpty() && !step.outlets().isEmpty()) {
      noRest(step, path, present, found);
    }
  }

  private static void noRest(Step step, String path, Set<String> present, Problems found) {
    boolean corrected =
        step.outlets().stream()
            .flatMap(outlet -> outlet.corrections().stream())
            .anyMatch(curves -> !curves.isEmpty());
    List<String> left =
        present.stream().filter(name -> taken(step, name) < 1 - 1e-9).sorted().toList();
    if (corrected) {
      found.add(
          path,
          "shares are corrected, but no outlet gets what they then leave",
          "one outlet without \"takes\"");
    } else if (!left.isEmpty()) {
      found.add(
          path,
          "the outlets do not take all of " + String.join(", ", left) + ", and none gets the rest",
          "one outlet without \"takes\", or shares of 100 % in all");
    }
  }

  /** Sum of the shares of a component in all outlets of a step. */
  static double taken(Step step, String component) {
    double sum = 0;
    for (Step.Outlet outlet : step.outlets()) {
      sum += outlet.takes().orElse(Map.of()).getOrDefault(component, 0.0);
    }
    return sum;
  }
}
