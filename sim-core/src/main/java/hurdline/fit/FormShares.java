package hurdline.fit;

import hurdline.plant.Crop;
import hurdline.plant.Plant;
import hurdline.problem.LocatedProblem;
import java.util.List;

/**
 * Forms of a crop whose composition is their own, while shares that reach machines are the crop's.
 */
final class FormShares {
  private FormShares() {}

  static List<LocatedProblem> warnings(Plant plant, String file) {
    return plant.crops().stream()
        .filter(form -> differs(plant, form))
        .map(
            form ->
                new LocatedProblem(
                    LocatedProblem.Severity.WARNING,
                    file,
                    0,
                    0,
                    "crops." + form.name() + ".composition",
                    "it differs from that of " + form.base(),
                    "what reaches each machine is taken as of "
                        + form.base()
                        + ": figures counted on mass are off by as much as "
                        + form.name()
                        + " differs, times its share",
                    "",
                    ""))
        .toList();
  }

  private static boolean differs(Plant plant, Crop form) {
    return plant.crops().stream()
        .filter(crop -> crop.name().equals(form.base()))
        .anyMatch(crop -> !crop.bale().composition().equals(form.bale().composition()));
  }
}
