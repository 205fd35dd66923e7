package hurdline.command;

import hurdline.study.choose.Choose;
import hurdline.unit.Counted;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;

/** What a choice among plans takes until something can be stated. */
final class ChooseCost {
  private final Choose choose;
  private final int kept;
  private final Path folder;
  private final double mostS;

  /**
   * @param kept blocks that are finished already
   * @param mostS after so many seconds it ends
   */
  ChooseCost(Choose choose, int kept, Path folder, double mostS) {
    this.choose = choose;
    this.kept = kept;
    this.folder = folder;
    this.mostS = mostS;
  }

  /** Before anything is simulated. */
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
  }

  /**
   * How long it takes from now on, once that is known.
   *
   * @param done years so far
   * @param goneS seconds so far
   * @param eachS seconds a year, of all that simulate together
   * @param where it is simulated
   */
  void tell(PrintWriter err, int done, double goneS, double eachS, String where) {
    double firstS = Math.max(0, choose.fewestYears() - done) * eachS;
    err.println(
        "About "
            + SimulationTime.inWords(firstS + choose.lastYears() * eachS)
            + " more for the first "
            + (choose.isIndependent() ? "stage" : "round")
            + " and the end on "
            + where
            + ", by the pace so far; how long "
            + (choose.isIndependent()
                ? "the second stage takes is known after the first."
                : "the rounds between take depends on how close the plans are."));
    if (goneS + firstS > mostS) {
      err.println(
          "--most ends it before the first "
              + (choose.isIndependent() ? "stage is whole" : "round is judged")
              + " at this pace, and then nothing is stated.");
    }
  }

  /** This machine, where no other simulates. */
  String here() {
    return Counted.of(choose.threads(), "thread") + " of this machine";
  }
}
