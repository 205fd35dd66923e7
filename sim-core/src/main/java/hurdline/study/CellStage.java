package hurdline.study;

import hurdline.work.Outcome;
import java.util.function.Consumer;

/** One plant of one cell of a grid while it is played; compiled when the first thread comes to it. */
final class CellStage {
  private final int cell;
  private final GridPlan.Planted planted;
  private Figures figures = new Figures();
  private Consumer<Outcome> filling = new InTurn(1, figures::add);
  private Stage stage;

  CellStage(int cell, GridPlan.Planted planted) {
    this.cell = cell;
    this.planted = planted;
  }

  int cell() {
    return cell;
  }

  String name() {
    return planted.name();
  }

  synchronized Stage stage() {
    if (stage == null) {
      stage = Stage.of(planted.plant());
    }
    return stage;
  }

  Figures figures() {
    return figures;
  }

  /** Takes an outcome, in whatever order they come. */
  void take(Outcome outcome) {
    filling.accept(outcome);
  }

  /** Forgets what was played, once it is told. */
  synchronized void release() {
    stage = null;
    figures = null;
    filling = null;
  }
}
