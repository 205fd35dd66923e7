package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.flow.rates.IndexSet;
import hurdline.flow.rates.RateSolver;
import java.util.Arrays;

/**
 * From rates to the machines' inflows, with marks of what has moved.
 *
 * <p>Most solves change one head of several: its mill waits for a bag, say, while the saw goes on.
 * Work asks the marks and leaves alone whatever rests on rates, maps and net flows that stayed, so
 * a solve costs what it changes. {@code ShortCutsTest} holds replications against ones in which
 * everything counts as moved.
 */
final class Inflows {
  private final CompiledLines layout;
  private final RateSolver solver;
  private final HeadLoads[] loads;
  private final Limits limits;
  private final NetFlows netFlows;
  private final AffectedHeads involved;
  private final double[] rateSeen;

  /** [machine] inflow, kg/s, and the share of its limit that is used (0 without a limit). */
  final double[] kgPerS;

  final double[] usedShare;

  /** Heads whose rate or map is another. */
  final IndexSet moved;

  /**
   * Bins whose net flow, state or lots are others, or of which a head that fills or draws has
   * moved.
   */
  final IndexSet binMoved;

  Inflows(
      CompiledLines layout,
      RateSolver solver,
      HeadLoads[] loads,
      Limits limits,
      NetFlows netFlows,
      AffectedHeads involved) {
    this.layout = layout;
    this.solver = solver;
    this.loads = loads;
    this.limits = limits;
    this.netFlows = netFlows;
    this.involved = involved;
    rateSeen = new double[layout.heads];
    kgPerS = new double[layout.machines];
    usedShare = new double[layout.machines];
    moved = new IndexSet(layout.heads);
    binMoved = new IndexSet(layout.bins);
  }

  void reset() {
    Arrays.fill(rateSeen, 0);
    Arrays.fill(kgPerS, 0);
    Arrays.fill(usedShare, 0);
    allMoved();
  }

  void allMoved() {
    moved.addAll();
    binMoved.addAll();
  }

  void seen() {
    moved.clear();
    binMoved.clear();
  }

  /** The rates are found. */
  void follow() {
    double[] rate = solver.rateKgPerS();
    for (int k = 0; k < involved.heads.count(); k++) {
      int h = involved.heads.at(k);
      if (rate[h] != rateSeen[h]) {
        rateSeen[h] = rate[h];
        moved.add(h);
      }
    }
    for (int k = 0; k < involved.bin.count(); k++) {
      int b = involved.bin.at(k);
      if (netFlows.takeMoved(b)) {
        binMoved.add(b);
      }
    }
    for (int k = 0; k < moved.count(); k++) {
      int h = moved.at(k);
      binMoved.addEach(involved.binsBeside(h));
      for (int m : layout.stretch[h].machine) {
        if (m >= 0) {
          inflow(m);
        }
      }
    }
  }

  /**
   * Adds up anew what all heads bring to a machine: taking off what one brought before would leave
   * dust.
   */
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
