package hurdline.study.choose;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;

/**
 * Which plans the last years show: those that are named, the best of those left, and all that are
 * one value away from the named one.
 */
final class ShownPlans {
  /** So many of the plans left. */
  private static final int MOST_LEFT = 20;

  private final PlanSpace space;
  private final Set<Integer> noPlant;

  /**
   * @param noPlant plans of which no plant comes
   */
  ShownPlans(PlanSpace space, Set<Integer> noPlant) {
    this.space = space;
    this.noPlant = noPlant;
  }

  /**
   * @param named first of all, others under budgets
   * @param mean of a plan left, so far
   */
  List<Integer> of(List<Integer> named, List<Integer> left, IntToDoubleFunction mean) {
    TreeSet<Integer> shown = new TreeSet<>(named);
    left.stream()
        .sorted(Comparator.comparingDouble(plan -> -mean.applyAsDouble(plan)))
        .limit(MOST_LEFT)
        .forEach(shown::add);
    for (int choice = 0; choice < space.all().size(); choice++) {
      for (int value = 0; value < space.all().get(choice).values().size(); value++) {
        int neighbor = space.with(named.get(0), choice, value);
        if (!space.isNever(neighbor) && !noPlant.contains(neighbor)) {
          shown.add(neighbor);
        }
      }
    }
    return List.copyOf(shown);
  }
}
