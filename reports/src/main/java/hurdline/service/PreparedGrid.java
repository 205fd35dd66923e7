package hurdline.service;

import hurdline.answer.GridAnswer;
import hurdline.study.grid.CellStore;
import hurdline.study.grid.Grid;
import hurdline.study.replicate.ProgressListener;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A grid whose plants have been read.
 *
 * @param grid what it consists of
 * @param how it is simulated
 */
public record PreparedGrid(Grid grid, Simulation how) {
  PreparedGrid(Grid grid) {
    this(grid, grid::simulate);
  }

  /** How a grid is simulated. */
  @FunctionalInterface
  public interface Simulation {
    /**
     * Simulates every cell that is not kept.
     *
     * @param stop asked whether to finish early
     * @return empty if it was stopped; finished cells are then in the store
     */
    Optional<GridAnswer> simulate(CellStore store, ProgressListener progress, BooleanSupplier stop);
  }

  /** Simulates it; see {@link Simulation#simulate}. */
  public Optional<GridAnswer> simulate(
      CellStore store, ProgressListener progress, BooleanSupplier stop) {
    return how.simulate(store, progress, stop);
  }
}
