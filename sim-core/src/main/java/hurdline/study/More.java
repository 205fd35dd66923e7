package hurdline.study;

import hurdline.plant.Change;
import java.util.List;

/**
 * A plant with more of one thing.
 *
 * @param what a machine or bin by its name, {@code resource.<r>} or {@code shift.<s>}
 * @param says what there is more of, a few words
 * @param changes that make it so
 */
record More(String what, String says, List<Change> changes) {
  More {
    changes = List.copyOf(changes);
  }

  static More of(String what, String says, Change... changes) {
    return new More(what, says, List.of(changes));
  }
}
