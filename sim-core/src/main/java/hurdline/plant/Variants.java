package hurdline.plant;

import java.util.Optional;

/** The one door to "this plant with that changed". */
public interface Variants {

  /**
   * The plant with these changes applied in turn.
   *
   * @throws ProblemsException with every problem of the changed plant
   */
  Plant with(Change... changes);

  /**
   * What the changed file says at a path, as it is written there; empty where it says nothing, more
   * than one value, or a distribution.
   *
   * @throws ProblemsException if a change cannot be applied
   */
  Optional<String> said(String path, Change... changes);
}
