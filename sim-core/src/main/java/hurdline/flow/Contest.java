package hurdline.flow;

import hurdline.line.Layout;
import java.util.Arrays;

/**
 * Puts what now stands before the rate solver: each head's reach, and the limits that heads compete
 * for. Limits are numbered: shared machines, then full bins, then empty bins.
 */
final class Contest {
  private final Layout layout;
  private final Network network;
  private final RateSolver solver;
  private final HeadLoads[] loads;
  private final Limits limits;
  private final Bins bins;
  private final int heads;
  private boolean stale = true;
  private boolean always;

  Contest(
      Layout layout,
      Network network,
      RateSolver solver,
      HeadLoads[] loads,
      Limits limits,
      Bins bins) {
    this.layout = layout;
    this.network = network;
    this.solver = solver;
    this.loads = loads;
    this.limits = limits;
    this.bins = bins;
    heads = layout.heads;
    Arrays.fill(solver.room(), 0, layout.shared.length, 1);
    Arrays.fill(solver.active(), 0, layout.shared.length, true);
  }

  void alwaysMayCompete() {
    always = true;
  }

  /** Loads or limits of a head have changed. */
  void loadsChanged() {
    stale = true;
  }

  /**
   * Writes reaches and, if anything may be contested, the limits for the solver.
   *
   * @return whether heads may compete; if not, each runs at its reach. Most of a year one line runs with its bin
   *     between full and empty
   */
  boolean write() {
    double[] reach = solver.reachKgPerS();
    for (int h = 0; h < heads; h++) {
      reach[h] = reachKgPerS(h);
    }
    if (!always && !mayCompete(reach)) {
      return false;
    }
    writeLimits();
    return true;
  }

  private boolean mayCompete(double[] reach) {
    for (int b = 0; b < layout.bins; b++) {
      Bins.Fill fill = bins.fill[b];
      if (fill == Bins.Fill.FULL && anyOf(layout.producers[b], reach)
          || fill == Bins.Fill.EMPTY && anyOf(layout.draws[b], reach)) {
        return true;
      }
    }
    for (int m : layout.shared) {
      int running = 0;
      for (int h : layout.headsOf[m]) {
        running += reach[h] > 0 ? 1 : 0;
      }
      if (running > 1) {
        return true;
      }
    }
    return false;
  }

  private static boolean anyOf(int[] some, double[] reach) {
    for (int h : some) {
      if (reach[h] > 0) {
        return true;
      }
    }
    return false;
  }

  private void writeLimits() {
    int limit = layout.shared.length;
    for (int b = 0; b < layout.bins; b++, limit++) {
      solver.active()[limit] = bins.fill[b] == Bins.Fill.FULL;
      solver.active()[limit + layout.bins] = bins.fill[b] == Bins.Fill.EMPTY;
    }
    if (stale) {
      coefficients();
      solver.coefficientsChanged();
      stale = false;
    }
  }

  private void coefficients() {
    double[] coefficient = solver.coefficient();
    int limit = 0;
    for (int m : layout.shared) {
      for (int h : layout.headsOf[m]) {
        coefficient[limit * heads + h] = limits.usePerRate[h][layout.nodeOf[h][m]];
      }
      limit++;
    }
    for (int b = 0; b < layout.bins; b++) {
      fullCoefficients(b, limit++);
    }
    for (int b = 0; b < layout.bins; b++) {
      emptyCoefficients(b, limit++);
    }
  }

  private void fullCoefficients(int bin, int limit) {
    double[] coefficient = solver.coefficient();
    int at = limit * heads;
    Arrays.fill(coefficient, at, at + heads, 0);
    for (int h : layout.draws[bin]) {
      coefficient[at + h] -= bins.frontUnit(bin);
    }
    for (int k = 0; k < layout.producers[bin].length; k++) {
      int h = layout.producers[bin][k];
      coefficient[at + h] += unitsInto(bin, h, layout.producerSink[bin][k]);
    }
  }

  /** Capacity units of a bin that a head brings it per kg drawn. */
  double unitsInto(int bin, int head, int sink) {
    HeadLoads from = loads[head];
    if (!layout.byVolume[bin]) {
      return from.sinkMass[sink];
    }
    double volume = 0;
    for (int c : from.landed(sink)) {
      int at = from.sinkAt(sink) + 2 * c;
      volume += (from.kg[at] + from.kg[at + 1]) / layout.looseKgPerM3[c];
    }
    return volume;
  }

  private void emptyCoefficients(int bin, int limit) {
    double[] coefficient = solver.coefficient();
    int at = limit * heads;
    Arrays.fill(coefficient, at, at + heads, 0);
    for (int h : layout.draws[bin]) {
      coefficient[at + h] += 1;
    }
    for (int k = 0; k < layout.producers[bin].length; k++) {
      int h = layout.producers[bin][k];
      coefficient[at + h] -= loads[h].sinkMass[layout.producerSink[bin][k]];
    }
  }

  private double reachKgPerS(int head) {
    if (!network.on[head] || hasNothing(head) || alongsideStands(head)) {
      return 0;
    }
    int[] machine = layout.stretch[head].machine;
    double[] load = loads[head].load;
    for (int node = 0; node < machine.length; node++) {
      int m = machine[node];
      if (m >= 0 && load[node] > 0 && network.standing[m] >= 0) {
        return 0;
      }
    }
    return limits.soleKgPerS[head];
  }

  boolean hasNothing(int head) {
    int bin = layout.headBin[head];
    return bin < 0 ? network.without[head] >= 0 : bins.barred[bin] && !network.runsEmpty[bin];
  }

  int alongsideCause(int head) {
    if (layout.headBin[head] < 0) {
      for (int m : layout.alongside[layout.headLine[head]]) {
        if (network.standing[m] >= 0) {
          return m;
        }
      }
    }
    return -1;
  }

  private boolean alongsideStands(int head) {
    return alongsideCause(head) >= 0;
  }
}
