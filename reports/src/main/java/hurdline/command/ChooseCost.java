package hurdline.command;

import hurdline.study.choose.Choose;
import hurdline.study.choose.ClusterSize;
import hurdline.unit.Counted;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;

/** What a choice among plans takes until something can be stated, said before it starts. */
final class ChooseCost {
  private final Choose choose;
  private final int kept;
  private final Path folder;

  /**
   * @param kept blocks that are finished already
   */
  ChooseCost(Choose choose, int kept, Path folder) {
    this.choose = choose;
    this.kept = kept;
    this.folder = folder;
  }

  void tell(PrintWriter err) {
    err.println(
        String.format(Locale.ROOT, "%,d plans", choose.plans())
            + (choose.leftOut() == 0
                ? ""
                : String.format(
                    Locale.ROOT, ", %,d of them left out by the file", choose.leftOut()))
            + String.format(
                Locale.ROOT,
                choose.isIndependent()
                    ? ": %,d simulated years in the first stage, then as many of each plan as its spread asks for, and about %,d to show them."
                    : ": %,d simulated years until the first round is judged, then those of the plans that are left, and about %,d to show them.",
                choose.fewestYears(),
                choose.lastYears()));
    if (kept > 0) {
      err.println(
          Counted.of(kept, "block")
              + " of years "
              + Counted.are(kept)
              + " finished in "
              + folder
              + " and "
              + Counted.are(kept)
              + " not simulated again.");
    }
    double eachS = SimulationTime.secondsEach(choose::trial, years() / (double) choose.threads());
    err.println(
        about(eachS, choose.threads())
            + " on "
            + (choose.threads() == 1 ? "1 thread" : choose.threads() + " threads")
            + " of this machine, by the first runs; how long "
            + (choose.isIndependent()
                ? "the second stage takes is known after the first."
                : "the rounds between take depends on how close the plans are."));
  }

  /** The same on a cluster that is ready. */
  void tell(PrintWriter err, ClusterSize cluster) {
    err.println(
        about(cluster.secondsAYear(), cluster.cores())
            + " on "
            + cluster.address()
            + ", which has "
            + (cluster.cores() == 1 ? "1 core" : cluster.cores() + " cores")
            + ", by their first runs.");
  }

  private String about(double eachS, int atOnce) {
    return "About "
        + SimulationTime.inWords(years() * eachS / atOnce)
        + (choose.isIndependent() ? " for the first stage" : " for the first round")
        + " and the end";
  }

  private long years() {
    return choose.fewestYears() + choose.lastYears();
  }
}
