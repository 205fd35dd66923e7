package hurdline.study.grid;

import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.study.replicate.InOrderConsumer;
import hurdline.study.replicate.ReplicationResults;
import java.util.function.Consumer;

/**
 * One plant of one cell of a grid while it is simulated; compiled when the first thread comes to
 * it.
 */
final class CellStage {
  private final int cell;
  private final GridPlan.Planted planted;
  private final CompiledPlant first;
  private ReplicationResults figures = new ReplicationResults();
  private Consumer<Outcome> filling = new InOrderConsumer(1, figures::add);
  private CompiledPlant stage;

  /**
   * @param first a plant of the grid, from which is taken over what this one has alike
   */
  CellStage(int cell, GridPlan.Planted planted, CompiledPlant first) {
    this.cell = cell;
    this.planted = planted;
    this.first = first;
  }

  int cell() {
    return cell;
  }

  String name() {
    return planted.name();
  }

  synchronized CompiledPlant stage() {
    if (stage == null) {
      stage = first.changedTo(planted.plant());
    }
    return stage;
  }

  ReplicationResults figures() {
    return figures;
  }

  /** Takes an outcome, in whatever order they come. */
  void take(Outcome outcome) {
    filling.accept(outcome);
  }

  /** Forgets what was simulated, once it is told. */
  synchronized void release() {
    stage = null;
    figures = null;
    filling = null;
  }
}
