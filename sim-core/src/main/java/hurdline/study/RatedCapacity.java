package hurdline.study;

import hurdline.answer.CheckAnswer;
import hurdline.simulation.CompiledPlant;

/**
 * What each line can do on average, by formula: rated and expected capacity, and orders against
 * them.
 */
public final class RatedCapacity {
  private RatedCapacity() {}

  /**
   * Works out the answer.
   *
   * @throws hurdline.plant.ProblemsException if the changed plant has problems
   */
  public static CheckAnswer of(PlantOrigin source, PlantChanges chosen) {
    CompiledPlant stage = CompiledPlant.of(source.variants().with(chosen.asArray()));
    PlantOutline outlines = new PlantOutline(stage);
    Capacities capacities = new Capacities(stage, outlines);
    return new CheckAnswer(
        outlines.header(source, chosen),
        outlines.outline(),
        capacities.byFormula(),
        capacities.flows(),
        source.warnings());
  }
}
