package hurdline.plant.yaml;

import hurdline.plant.Plant;
import hurdline.plant.Problem;
import hurdline.plant.Rules;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Locator;
import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.Tree;
import java.util.List;
import java.util.regex.Pattern;

/** A tree bound and held against all rules. */
final class BoundPlant {
  private static final List<String> SECTIONS = List.of("calendar", "crops", "machines", "lines");

  /** What is held against the calendar's first and last day, of which one cannot be read. */
  private static final Pattern OF_THE_HORIZON =
      Pattern.compile(
          "calendar\\.(from|to|repeats)|(?:plans\\.[^.]+\\.)?season\\.\\d+\\.(?:from|to|changeover)");

  private BoundPlant() {}

  /** The plant of the tree; of use only if nothing was found to be wrong with it. */
  static Plant plant(Tree tree, RainFiles rains, Findings findings) {
    return plant(tree, new Binding(rains, findings, new Findings()));
  }

  /** The same with all that is met on the way. */
  static Plant plant(Tree tree, Binding binding) {
    Findings findings = binding.findings();
    Plant plant = PlantBinder.plant(tree, binding);
    if (findings.isFull() || lacksASection(findings)) {
      return plant;
    }
    boolean hasNoHorizon = findings.covers("calendar.from") || findings.covers("calendar.to");
    List<Problem> broken =
        Rules.problems(plant, binding.before().plant()).stream()
            .filter(problem -> !echoes(tree, findings, problem.path()))
            .filter(problem -> !hasNoHorizon || !OF_THE_HORIZON.matcher(problem.path()).matches())
            .toList();
    broken.forEach(
        problem ->
            findings.add(new Finding(Locator.of(tree, problem.path()), named(tree, problem))));
    return plant;
  }

  /** The problem, with the space named that makes a name another and that nobody can see. */
  private static Problem named(Tree tree, Problem problem) {
    String odd = MessageText.oddSpace(Locator.value(tree, problem.path()), problem.said());
    return odd.isEmpty() ? problem : problem.adding(odd);
  }

  /**
   * Whether what most of a plant refers to is missing whole, so that all else would be told to lead
   * nowhere.
   */
  static boolean lacksASection(Findings findings) {
    return SECTIONS.stream().anyMatch(section -> findings.covers(section, false));
  }

  /**
   * Whether something at, inside or above that path is already known to be wrong and would only be
   * told again.
   */
  private static boolean echoes(Tree tree, Findings findings, String path) {
    if (findings.covers(path)) {
      return true;
    }
    for (int dot = path.lastIndexOf('.'); dot > 0; dot = path.lastIndexOf('.', dot - 1)) {
      String above = path.substring(0, dot);
      if (findings.covers(above, false) && !Locator.holdsMore(tree, above)) {
        return true;
      }
    }
    return !(tree instanceof Tree.Entries);
  }
}
