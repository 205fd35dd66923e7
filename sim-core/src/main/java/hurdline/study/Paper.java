package hurdline.study;

import hurdline.answer.PaperAnswer;

/** What each line can do on average, by formula: rated and expected capacity, and orders against them. */
public final class Paper {
  private Paper() {}

  /**
   * Works out the answer.
   *
   * @throws hurdline.plant.ProblemsException if the changed plant has problems
   */
  public static PaperAnswer of(Source source, Chosen chosen) {
    Stage stage = Stage.of(source.variants().with(chosen.asArray()));
    Outlines outlines = new Outlines(stage);
    return new PaperAnswer(
        outlines.header(source, chosen),
        outlines.outline(),
        new Capacities(stage, outlines).byFormula(),
        source.warnings());
  }
}
