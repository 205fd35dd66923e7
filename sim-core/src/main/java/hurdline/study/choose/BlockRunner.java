package hurdline.study.choose;

import hurdline.answer.SimulatedBlock;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Simulates blocks of plans; what it hands back does not depend on how. */
interface BlockRunner {
  /**
   * Simulates all blocks, or until stop is asked for.
   *
   * @param done told of each whole block, in whatever order, never of two at once
   * @param year told after each simulated year, never twice at once
   * @param stop asked before each year
   */
  void run(
      List<PlanBlock> blocks, Consumer<SimulatedBlock> done, Runnable year, BooleanSupplier stop);
}
