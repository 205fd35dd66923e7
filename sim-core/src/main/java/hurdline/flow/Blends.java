package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.flow.rates.RateSolver;

/** Prepares in a bin's fresh array the blend that arrives there from all its producers. */
final class Blends {
  private final CompiledLines layout;
  private final RateSolver solver;
  private final HeadLoads[] loads;
  private final Bins bins;
  private final boolean[] stale;

  Blends(CompiledLines layout, RateSolver solver, HeadLoads[] loads, Bins bins) {
    this.layout = layout;
    this.solver = solver;
    this.loads = loads;
    this.bins = bins;
    stale = new boolean[layout.bins];
  }

  /** A head brings something else from now on. */
  void loadsChanged(int head) {
    for (int bin : layout.binsOf[head]) {
      stale[bin] = true;
    }
  }

  /**
   * All producers in equal parts, but for what the bin's own draw brings back: that is of the
   * replication before. False if nothing of theirs comes here.
   */
  boolean typical(int bin) {
    double[] fresh = bins.fresh();
    double total = 0;
    for (int k = 0; k < layout.producers[bin].length; k++) {
      int head = layout.producers[bin][k];
      if (layout.headBin[head] != bin) {
        total += mixIn(fresh, loads[head], layout.producerSink[bin][k], 1);
      }
    }
    return divide(fresh, total);
  }

  private static boolean divide(double[] fresh, double total) {
    if (!(total > 0)) {
      return false;
    }
    for (int k = 0; k < fresh.length; k++) {
      fresh[k] /= total;
    }
    return true;
  }

  /** Whether what comes to a bin may be another blend for a producer's sake, rates aside. */
  boolean isStale(int bin) {
    return stale[bin];
  }

  /**
   * Prepares the blend at the rates last found, or in equal parts where nothing moved.
   *
   * @return false if nothing can come, or if it cannot have changed since it was last prepared
   */
  boolean atRates(int bin) {
    if (!stale[bin] && layout.producers[bin].length == 1) {
      return false;
    }
    stale[bin] = false;
    double[] rate = solver.rateKgPerS();
    double[] fresh = bins.fresh();
    double total = 0;
    for (int pass = 0; pass < 2 && total == 0; pass++) {
      for (int k = 0; k < layout.producers[bin].length; k++) {
        int h = layout.producers[bin][k];
        double weight = pass == 0 ? rate[h] : 1;
        if (weight > 0 && loads[h].sinkMass[layout.producerSink[bin][k]] > 0) {
          total += mixIn(fresh, loads[h], layout.producerSink[bin][k], weight);
        }
      }
    }
    return divide(fresh, total);
  }

  private double mixIn(double[] fresh, HeadLoads from, int sink, double weight) {
    int n = layout.components;
    int at = from.sinkAt(sink);
    for (int c : from.landed(sink)) {
      fresh[c] += weight * from.kg[at + 2 * c];
      fresh[n + c] += weight * from.kg[at + 2 * c + 1];
    }
    double mass = weight * from.sinkMass[sink];
    from.lot.mixAttributes(fresh, mass);
    return mass;
  }

  /** Largest difference of two blends' shares. */
  static double differ(double[] one, double[] other) {
    double most = 0;
    for (int k = 0; k < one.length; k++) {
      most = Math.max(most, Math.abs(one[k] - other[k]));
    }
    return most;
  }
}
