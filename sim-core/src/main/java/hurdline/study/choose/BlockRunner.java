package hurdline.study.choose;

import hurdline.answer.SimulatedBlock;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Simulates blocks of plans; what it hands back does not depend on how. */
public interface BlockRunner extends AutoCloseable {
  /**
   * Simulates all blocks, or until stop is asked for.
   *
   * @param done told of each whole block, in whatever order, never of two at once
   * @param year told once for each simulated year, never twice at once
   * @param stop asked now and then, from one thread or several
   */
  void run(
      List<PlanBlock> blocks, Consumer<SimulatedBlock> done, Runnable year, BooleanSupplier stop);

  /** What it simulates with, where that is not this program's threads. */
  default Optional<ClusterSize> cluster() {
    return Optional.empty();
  }

  @Override
  default void close() {}
}
