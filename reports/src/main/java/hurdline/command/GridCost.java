package hurdline.command;

import hurdline.study.Effort;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;

/** What a grid will cost, said before it starts: plays of the calendar, and the time by the first few. */
final class GridCost {
  private static final int TRIALS = 12;
  private static final int LEAST_TRIALS = 3;
  private static final double TRIALS_S = 2;
  private static final double NANO = 1e-9;

  private final Studies.Gridding grid;
  private final Effort effort;
  private final int kept;
  private final Path folder;

  /** @param kept cells that are finished already */
  GridCost(Studies.Gridding grid, Effort effort, int kept, Path folder) {
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
            + grid.cells()
            + " cells x "
            + (grid.plants() == 1 ? "1 plant" : grid.plants() + " plants")
            + " x "
            + (effort.replications() == 1 ? "1 replication" : effort.replications() + " replications")
            + (grid.leftOut().isEmpty() ? "" : ", less " + grid.leftOut().size() + " left out")
            + ": "
            + String.format(Locale.ROOT, "%,d", grid.plays())
            + " plays of the calendar.");
    if (kept > 0) {
      err.println(
          kept
              + " of "
              + grid.cells()
              + " cells are finished in "
              + folder
              + " and are not played again.");
    }
    double left = grid.plays() * (1 - (double) kept / grid.cells());
    if (left > 0) {
      err.println(
          "About "
              + time(left * secondsEach() / threads)
              + " on "
              + (threads == 1 ? "1 thread" : threads + " threads")
              + ", by the first plays.");
    }
  }

  /** The fastest trial counts, for the first ones wait for the program to warm up. */
  private double secondsEach() {
    double fastest = Double.POSITIVE_INFINITY;
    double all = 0;
    for (int trial = 0; trial < LEAST_TRIALS || (trial < TRIALS && all < TRIALS_S); trial++) {
      long before = System.nanoTime();
      grid.trial();
      double seconds = (System.nanoTime() - before) * NANO;
      fastest = Math.min(fastest, seconds);
      all += seconds;
    }
    return fastest;
  }

  /** {@code 40 s}, {@code 3 min}, {@code 2.5 h}. */
  static String time(double seconds) {
    if (seconds < 90) {
      return Math.max(1, Math.round(seconds)) + " s";
    }
    if (seconds < 90 * 60) {
      return Math.round(seconds / 60) + " min";
    }
    return String.format(Locale.ROOT, "%.1f h", seconds / 3600);
  }
}
