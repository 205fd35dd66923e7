package hurdline.study;

import hurdline.answer.Increase;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import java.util.List;

/**
 * A plant with more of one thing.
 *
 * @param what a machine or bin by its name, {@code resource.<r>} or {@code shift.<s>}
 * @param increase what there is more of
 * @param changes that make it so
 */
record More(String what, Increase increase, List<Change> changes) {
  More {
    changes = List.copyOf(changes);
  }

  static More of(String what, Increase increase, Change... changes) {
    return new More(what, increase, List.of(changes));
  }

  /** @throws ProblemsException if there cannot be more of it */
  Plant plant(Source source, Chosen base) {
    return source.variants().with(base.and(changes).asArray());
  }

  /** Whether it makes a plant without problems. */
  boolean isPossible(Source source, Chosen base) {
    try {
      plant(source, base);
      return true;
    } catch (ProblemsException inTheWay) {
      return false;
    }
  }
}
