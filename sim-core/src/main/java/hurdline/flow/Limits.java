package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;

/** What each machine may take in of the lot that each head draws, kg/s as-is, were it up. */
final class Limits {
  /** Reach of a lot of which nothing meets a limit: it is through at once. */
  private static final double UNBOUNDED_KG_PER_S = 1e3;

  private final CompiledLines layout;

  /** [head][node] */
  final double[][] kgPerS;

  /**
   * [head][node] rate of the head at which this node alone is full; infinite where nothing limits
   * it.
   */
  final double[][] aloneKgPerS;

  /** [head] what its whole stretch allows a head alone, were every machine up. */
  final double[] soleKgPerS;

  /** [head][node] share of the node's limit that a kg/s of the head uses. */
  final double[][] usePerRate;

  /** [head][node] what the mill's motor allows; infinite for all but mills. */
  final double[][] motorLimitKgPerS;

  Limits(CompiledLines layout) {
    this.layout = layout;
    kgPerS = new double[layout.heads][];
    motorLimitKgPerS = new double[layout.heads][];
    aloneKgPerS = new double[layout.heads][];
    usePerRate = new double[layout.heads][];
    soleKgPerS = new double[layout.heads];
    for (int h = 0; h < layout.heads; h++) {
      kgPerS[h] = new double[layout.stretch[h].nodes];
      motorLimitKgPerS[h] = new double[layout.stretch[h].nodes];
      aloneKgPerS[h] = new double[layout.stretch[h].nodes];
      usePerRate[h] = new double[layout.stretch[h].nodes];
    }
  }

  /** Works out the limits of a head for its present lot. */
  void set(int head, HeadLoads lot, int[] screen) {
    Stretch stretch = layout.stretch[head];
    double sole = UNBOUNDED_KG_PER_S;
    for (int node = 0; node < stretch.nodes; node++) {
      double limit = stretch.rateKgPerS[node];
      double motor = Double.POSITIVE_INFINITY;
      int m = stretch.machine[node];
      if (m >= 0 && layout.motorKgPerS[m] != null) {
        motor = layout.motorKgPerS[m][screen[m]] / layout.grindingByMoisture[m].of(lot.moisture);
        limit = Math.min(limit, motor);
      }
      motorLimitKgPerS[head][node] = motor;
      limit *= stretch.rateByMoisture[node].of(lot.moisture);
      for (int a = 0; a < lot.lot.attribute.length; a++) {
        limit *= stretch.rateByAttribute[node][a].of(lot.lot.attribute[a]);
      }
      kgPerS[head][node] = limit;
      double load = lot.load[node];
      double most = kgPerS[head][node];
      aloneKgPerS[head][node] = load > 0 ? most / load : Double.POSITIVE_INFINITY;
      usePerRate[head][node] = load > 0 && most > 0 ? load / most : 0;
      sole = Math.min(sole, aloneKgPerS[head][node]);
    }
    soleKgPerS[head] = sole;
  }
}
