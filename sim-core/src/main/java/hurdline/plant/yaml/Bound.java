package hurdline.plant.yaml;

import hurdline.plant.Plant;
import hurdline.plant.Problem;
import hurdline.plant.Rules;
import java.util.List;

/** A tree bound and held against all rules. */
final class Bound {
  private Bound() {}

  /** The plant of the tree; of use only if nothing was found to be wrong with it. */
  static Plant plant(Tree tree, Findings findings) {
    Plant plant = PlantBinder.plant(tree, findings);
    List<Problem> broken =
        Rules.problems(plant).stream().filter(problem -> !findings.covers(problem.path())).toList();
    broken.forEach(problem -> findings.add(new Finding(Locator.of(tree, problem.path()), problem)));
    return plant;
  }
}
