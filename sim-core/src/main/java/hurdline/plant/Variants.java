package hurdline.plant;

import java.util.Optional;

/** The one door to "this plant with that changed". */
public interface Variants {

  /**
   * The plant with these changes applied in turn.
   *
   * <p>It costs what the changes touch: everything else is taken over from the plant as it stands,
   * so that plants can be asked for by the hundred (figures: {@code
   * sim-core/src/jmh/BENCHMARKS.md}). It equals, problems and all, the plant of a file that says
   * what the changes say. Any number of threads may ask at once.
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

  /**
   * What the changed file says at a path in one line, a distribution or list whole; empty where it
   * says nothing.
   *
   * @throws ProblemsException if a change cannot be applied
   */
  Optional<String> text(String path, Change... changes);
}
