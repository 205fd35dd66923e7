package hurdline.study.choose;

import hurdline.plant.Change;
import hurdline.plant.InputDraws;
import java.util.List;
import java.util.Optional;

/**
 * What plans are made and simulated by, besides the plant itself: texts and numbers only.
 *
 * @param seed of all chance
 * @param before changes of the plant before any choice is made
 * @param narrowed choices of the call
 * @param measures that are handed back
 * @param draws of inputs, a fresh row for each year and the same for all plans; empty where all
 *     inputs are as the file has them
 */
public record PlanRecipe(
    long seed,
    List<Change> before,
    List<ChoiceChange> narrowed,
    List<String> measures,
    Optional<InputDraws> draws) {
  public PlanRecipe {
    before = List.copyOf(before);
    narrowed = List.copyOf(narrowed);
    measures = List.copyOf(measures);
  }
}
