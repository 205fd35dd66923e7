package hurdline.study.choose;

import hurdline.plant.Change;
import java.util.List;

/**
 * What plans are made and simulated by, besides the plant itself: texts and numbers only.
 *
 * @param seed of all chance
 * @param before changes of the plant before any choice is made
 * @param narrowed choices of the call
 * @param measures that are handed back
 */
public record PlanRecipe(
    long seed, List<Change> before, List<ChoiceChange> narrowed, List<String> measures) {
  public PlanRecipe {
    before = List.copyOf(before);
    narrowed = List.copyOf(narrowed);
    measures = List.copyOf(measures);
  }
}
