package hurdline.plant;

/** The one door to "this plant with that changed". */
public interface Variants {

  /**
   * The plant with these changes applied in turn.
   *
   * @throws ProblemsException with every problem of the changed plant
   */
  Plant with(Change... changes);
}
