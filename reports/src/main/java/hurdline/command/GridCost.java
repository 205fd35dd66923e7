package hurdline.command;

import hurdline.study.grid.Grid;
import hurdline.study.replicate.RunSettings;
import hurdline.unit.Counted;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;

/**
 * What a grid will cost, said before it starts: simulates of the calendar, and the time by the
 * first few.
 */
final class GridCost {
  private final Grid grid;
  private final RunSettings effort;
  private final int kept;
  private final Path folder;

  /**
   * @param kept cells that are finished already
   */
  GridCost(Grid grid, RunSettings effort, int kept, Path folder) {
    this.grid = grid;
    this.effort = effort;
    this.kept = kept;
    this.folder = folder;
  }

  void tell(PrintWriter err) {
    grid.leftOut().forEach(line -> err.println("left out: " + line));
    int threads = effort.threads();
    err.println(
        "Grid of "
            + Counted.of(grid.cells(), "cell")
            + " x "
            + (grid.plants() == 1 ? "1 plant" : grid.plants() + " plants")
            + " x "
            + (effort.replications() == 1
                ? "1 replication"
                : effort.replications() + " replications")
            + (grid.leftOut().isEmpty() ? "" : ", less " + grid.leftOut().size() + " left out")
            + ": "
            + String.format(Locale.ROOT, "%,d", grid.simulations())
            + " simulation runs of the calendar.");
    if (kept > 0) {
      err.println(
          kept
              + " of "
              + grid.cells()
              + " cells are finished in "
              + folder
              + " and are not simulated again.");
    }
    double left = grid.simulations() * (1 - (double) kept / grid.cells());
    if (left > 0) {
      err.println(
          "About "
              + SimulationTime.ofCall(
                  left / threads * SimulationTime.secondsEach(grid::trial, left / threads))
              + " on "
              + Counted.of(threads, "thread")
              + ", by the first runs.");
    }
  }
}
