package hurdline.study.grid;

import hurdline.answer.SimulatedCell;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.IntUnaryOperator;

/** Waits until all plants of a cell are simulated, then has it made and kept. */
final class GridKeeper implements GridPool.Taker {
  private final IntUnaryOperator plantsIn;
  private final CellMaker maker;
  private final Consumer<SimulatedCell> kept;
  private final Runnable simulated;
  private final TreeMap<Integer, List<CellStage>> begun = new TreeMap<>();

  /**
   * @param plantsIn how many plants a cell has
   * @param kept told of each whole cell
   * @param simulated told of each replication
   */
  GridKeeper(
      IntUnaryOperator plantsIn,
      CellMaker maker,
      Consumer<SimulatedCell> kept,
      Runnable simulated) {
    this.plantsIn = plantsIn;
    this.maker = maker;
    this.kept = kept;
    this.simulated = simulated;
  }

  @Override
  public void simulated() {
    simulated.run();
  }

  @Override
  public void finished(CellStage stage) {
    int cell = stage.cell();
    List<CellStage> plants = begun.computeIfAbsent(cell, key -> new ArrayList<>());
    plants.add(stage);
    if (plants.size() == plantsIn.applyAsInt(cell)) {
      SimulatedCell whole = maker.cell(cell, plants);
      plants.forEach(CellStage::release);
      begun.remove(cell);
      kept.accept(whole);
    }
  }
}
