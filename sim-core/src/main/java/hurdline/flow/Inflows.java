package hurdline.flow;

import hurdline.line.Layout;
import java.util.Arrays;

/**
 * From rates to the machines' inflows, with marks of what has moved.
 *
 * <p>Most solves change one head of several: its mill waits for a bag, say, while the saw goes on. Work asks
 * the marks and leaves alone whatever rests on rates, maps and net flows that stayed, so a solve costs what
 * it changes. {@code ShortCutsTest} holds replications against ones in which everything counts as moved.
 */
final class Inflows {
  private final Layout layout;
  private final RateSolver solver;
  private final HeadLoads[] loads;
  private final Limits limits;
  private final NetFlows netFlows;
  private final double[] rateSeen;

  /** [machine] inflow, kg/s, and the share of its limit that is used (0 without a limit). */
  final double[] kgPerS;

  final double[] usedShare;

  /** [head] whether its rate or its map is another. */
  final boolean[] moved;

  /** [bin] whether its net flow, its state or its lots are others, or a head that fills or draws has moved. */
  final boolean[] binMoved;

  Inflows(Layout layout, RateSolver solver, HeadLoads[] loads, Limits limits, NetFlows netFlows) {
    this.layout = layout;
    this.solver = solver;
    this.loads = loads;
    this.limits = limits;
    this.netFlows = netFlows;
    rateSeen = new double[layout.heads];
    kgPerS = new double[layout.machines];
    usedShare = new double[layout.machines];
    moved = new boolean[layout.heads];
    binMoved = new boolean[layout.bins];
  }

  void reset() {
    Arrays.fill(rateSeen, 0);
    Arrays.fill(kgPerS, 0);
    Arrays.fill(usedShare, 0);
    allMoved();
  }

  void allMoved() {
    Arrays.fill(moved, true);
    Arrays.fill(binMoved, true);
  }

  void seen() {
    Arrays.fill(moved, false);
    Arrays.fill(binMoved, false);
  }

  /** The rates are found. */
  void follow() {
    double[] rate = solver.rateKgPerS();
    for (int h = 0; h < rate.length; h++) {
      if (rate[h] != rateSeen[h]) {
        rateSeen[h] = rate[h];
        moved[h] = true;
      }
    }
    for (int b = 0; b < binMoved.length; b++) {
      binMoved[b] |= netFlows.takeMoved(b) | anyMoved(layout.producers[b]) | anyMoved(layout.draws[b]);
    }
    for (int h = 0; h < rate.length; h++) {
      if (moved[h]) {
        for (int m : layout.stretch[h].machine) {
          if (m >= 0) {
            inflow(m);
          }
        }
      }
    }
  }

  private boolean anyMoved(int[] heads) {
    for (int h : heads) {
      if (moved[h]) {
        return true;
      }
    }
    return false;
  }

  /** Adds up anew what all heads bring to a machine: taking off what one brought before would leave dust. */
  private void inflow(int m) {
    double[] rate = solver.rateKgPerS();
    double inflow = 0;
    double used = 0;
    for (int h : layout.headsOf[m]) {
      if (rate[h] > 0) {
        int node = layout.nodeOf[h][m];
        inflow += rate[h] * loads[h].load[node];
        used += rate[h] * limits.usePerRate[h][node];
      }
    }
    kgPerS[m] = inflow;
    usedShare[m] = used;
  }
}
