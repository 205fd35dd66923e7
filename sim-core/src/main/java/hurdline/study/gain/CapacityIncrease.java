package hurdline.study.gain;

import hurdline.answer.Increase;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import java.util.List;

/**
 * A plant with more of one thing.
 *
 * @param what a machine or bin by its name, {@code resource.<r>} or {@code shift.<s>}
 * @param increase what there is more of
 * @param changes that make it so
 */
public record CapacityIncrease(String what, Increase increase, List<Change> changes) {
  public CapacityIncrease {
    changes = List.copyOf(changes);
  }

  public static CapacityIncrease of(String what, Increase increase, Change... changes) {
    return new CapacityIncrease(what, increase, List.of(changes));
  }

  /**
   * @throws ProblemsException if there cannot be more of it
   */
  Plant plant(PlantOrigin source, PlantChanges base) {
    return source.variants().with(base.and(changes).asArray());
  }

  /** Whether it makes a plant without problems. */
  public boolean isPossible(PlantOrigin source, PlantChanges base) {
    try {
      plant(source, base);
      return true;
    } catch (ProblemsException inTheWay) {
      return false;
    }
  }
}
