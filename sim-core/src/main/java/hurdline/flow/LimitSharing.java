package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.flow.rates.RateSolver;
import java.util.Arrays;

/**
 * Puts what now stands before the rate solver: each head's reach, and the limits that heads compete
 * for. Limits are numbered: shared machines, then full bins, then empty bins.
 */
final class LimitSharing {
  private final CompiledLines layout;
  private final RateInputs asked;
  private final RateSolver solver;
  private final HeadLoads[] loads;
  private final Limits limits;
  private final Bins bins;
  private final AffectedHeads involved;
  private final int heads;
  private final boolean[] stale; // [limit] whether its coefficients are to be written anew
  private boolean always;

  LimitSharing(
      CompiledLines layout,
      RateInputs asked,
      RateSolver solver,
      HeadLoads[] loads,
      Limits limits,
      Bins bins,
      AffectedHeads involved) {
    this.layout = layout;
    this.asked = asked;
    this.solver = solver;
    this.loads = loads;
    this.limits = limits;
    this.bins = bins;
    this.involved = involved;
    heads = layout.heads;
    stale = new boolean[layout.shared.length + 2 * layout.bins];
    Arrays.fill(stale, true);
    Arrays.fill(solver.room(), 0, layout.shared.length, 1);
  }

  void alwaysMayCompete() {
    always = true;
  }

  /** Loads or limits of a head have changed. */
  void loadsChanged(int head) {
    for (int at = 0; at < layout.shared.length; at++) {
      if (layout.nodeOf[head][layout.shared[at]] >= 0) {
        stale[at] = true;
      }
    }
    for (int b : involved.binsBeside(head)) {
      stale[layout.shared.length + b] = true;
      stale[layout.shared.length + layout.bins + b] = true;
    }
  }

  /** Writes the reaches of heads of which something was asked anew. */
  void writeReaches() {
    double[] reach = solver.reachKgPerS();
    for (int k = 0; k < asked.heads.count(); k++) {
      int h = asked.heads.at(k);
      reach[h] = reachKgPerS(h);
    }
  }

  /**
   * Writes the limits of the involved heads for the solver, if any of them may be contested.
   *
   * @return whether heads may compete; if not, each runs at its reach. Most of a year one line runs
   *     with its bin between full and empty
   */
  boolean writeLimits() {
    if (!always && !mayCompete(solver.reachKgPerS())) {
      return false;
    }
    for (int at = 0; at < layout.shared.length; at++) {
      activate(at, anyInvolved(layout.headsOf[layout.shared[at]]));
    }
    for (int b = 0; b < layout.bins; b++) {
      int limit = layout.shared.length + b;
      activate(limit, involved.bin.has(b) && bins.fill[b] == Bins.Fill.FULL);
      activate(limit + layout.bins, involved.bin.has(b) && bins.fill[b] == Bins.Fill.EMPTY);
    }
    return true;
  }

  private boolean anyInvolved(int[] some) {
    for (int h : some) {
      if (involved.heads.has(h)) {
        return true;
      }
    }
    return false;
  }

  private void activate(int limit, boolean active) {
    solver.active()[limit] = active;
    if (active && stale[limit]) {
      stale[limit] = false;
      coefficients(limit);
      solver.coefficientsChanged(limit);
    }
  }

  private boolean mayCompete(double[] reach) {
    for (int k = 0; k < involved.bin.count(); k++) {
      int b = involved.bin.at(k);
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
      if (running > 1 && anyInvolved(layout.headsOf[m])) {
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

  private void coefficients(int limit) {
    int bin = limit - layout.shared.length;
    if (bin < 0) {
      int m = layout.shared[limit];
      for (int h : layout.headsOf[m]) {
        solver.coefficient()[limit * heads + h] = limits.usePerRate[h][layout.nodeOf[h][m]];
      }
    } else if (bin < layout.bins) {
      fullCoefficients(bin, limit);
    } else {
      emptyCoefficients(bin - layout.bins, limit);
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
    if (!asked.on[head] || hasNothing(head) || alongsideStands(head)) {
      return 0;
    }
    int[] machine = layout.stretch[head].machine;
    double[] load = loads[head].load;
    for (int node = 0; node < machine.length; node++) {
      int m = machine[node];
      if (m >= 0 && load[node] > 0 && asked.standing[m] >= 0) {
        return 0;
      }
    }
    return limits.soleKgPerS[head];
  }

  boolean hasNothing(int head) {
    int bin = layout.headBin[head];
    return bin < 0 ? asked.without[head] >= 0 : bins.barred[bin] && !asked.runsEmpty[bin];
  }

  int alongsideCause(int head) {
    if (layout.headBin[head] < 0) {
      for (int m : layout.alongside[layout.headLine[head]]) {
        if (asked.standing[m] >= 0) {
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
