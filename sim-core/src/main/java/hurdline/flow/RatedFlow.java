package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Lot;
import java.util.Arrays;

/**
 * What one kilogram fed to a line loads on its machines in the long run, without clock or chance:
 * each bin hands on what it receives.
 *
 * <p>A draw that returns a part into its own bin draws that part again: x = f + r(x), solved by
 * going round; it draws f/(1 − return) where the return takes every component alike.
 */
public final class RatedFlow {
  private static final int MOST_ROUNDS = 100_000;
  private static final double SETTLED = 1e-14;

  private final CompiledLines layout;
  private final HeadLoads[] loads;
  private final Limits limits;

  /** [head] kg drawn per kg fed to the line. */
  private final double[] drawn;

  public RatedFlow(CompiledLines layout) {
    this.layout = layout;
    loads = new HeadLoads[layout.heads];
    for (int h = 0; h < layout.heads; h++) {
      loads[h] = new HeadLoads(layout, layout.stretch[h]);
    }
    limits = new Limits(layout);
    drawn = new double[layout.heads];
  }

  /**
   * Feeds a line its crop's mean lot.
   *
   * @param screen [machine] the screen that is in each mill; read
   */
  public void feed(int line, int[] screen) {
    Arrays.fill(drawn, 0);
    for (int h : layout.headOrder) {
      if (layout.headLine[h] != line) {
        continue;
      }
      if (layout.headBin[h] < 0) {
        layout.typicalLot(line, loads[h].lot);
        drawn[h] = 1;
        loads[h].spread(screen);
      } else {
        fromBin(h, line, screen);
      }
      if (drawn[h] > 0) {
        limits.set(h, loads[h], screen);
      }
    }
  }

  private void fromBin(int head, int line, int[] screen) {
    int n = layout.components;
    int bin = layout.headBin[head];
    double[] arrives = new double[Lot.width(layout)];
    for (int k = 0; k < layout.producers[bin].length; k++) {
      int from = layout.producers[bin][k];
      if (from != head && layout.headLine[from] == line && drawn[from] > 0) {
        mixIn(arrives, from, layout.producerSink[bin][k]);
      }
    }
    if (!(kg(arrives, n) > 0)) {
      return;
    }
    draw(head, arrives, screen);
    int own = ownSink(head, bin);
    for (int round = 0; own >= 0; round++) {
      if (round > MOST_ROUNDS) {
        throw new IllegalStateException(
            "what " + layout.naming.bins.name(bin) + " draws from itself does not settle");
      }
      double before = drawn[head];
      double[] all = arrives.clone();
      mixIn(all, head, own);
      draw(head, all, screen);
      if (Math.abs(drawn[head] - before) <= SETTLED * drawn[head]) {
        return;
      }
    }
  }

  private int ownSink(int head, int bin) {
    for (int k = 0; k < layout.producers[bin].length; k++) {
      if (layout.producers[bin][k] == head) {
        return layout.producerSink[bin][k];
      }
    }
    return -1;
  }

  /** The lot of a head is what arrives, brought to one kilogram. */
  private void draw(int head, double[] arrives, int[] screen) {
    int n = layout.components;
    double kg = kg(arrives, n);
    loads[head].lot.read(Arrays.stream(arrives).map(each -> each / kg).toArray(), 0);
    drawn[head] = kg;
    loads[head].spread(screen);
  }

  private static double kg(double[] arrives, int components) {
    double kg = 0;
    for (int k = 0; k < 2 * components; k++) {
      kg += arrives[k];
    }
    return kg;
  }

  private void mixIn(double[] to, int from, int sink) {
    int n = layout.components;
    for (int c : loads[from].landed(sink)) {
      int at = loads[from].sinkAt(sink) + 2 * c;
      to[c] += drawn[from] * loads[from].kg[at];
      to[n + c] += drawn[from] * loads[from].kg[at + 1];
    }
    loads[from].lot.mixAttributes(to, drawn[from] * loads[from].sinkMass[sink]);
  }

  /** As-is inflow of a machine in the stretch of one head, per kg fed. */
  public double load(int head, int machine) {
    int node = layout.nodeOf[head][machine];
    return node >= 0 && drawn[head] > 0 ? drawn[head] * loads[head].load[node] : 0;
  }

  /** As-is inflow of a machine per kg fed, over all heads of the line. */
  public double load(int machine) {
    double load = 0;
    for (int h : layout.headsOf[machine]) {
      load += load(h, machine);
    }
    return load;
  }

  /**
   * Seconds that a machine needs per kg fed at its limit for what one head brings, 0 where nothing
   * limits it.
   */
  public double secondsPerKgFed(int head, int machine) {
    double load = load(head, machine);
    return load > 0 ? load / limits.kgPerS[head][layout.nodeOf[head][machine]] : 0;
  }

  /** Seconds that a machine needs per kg fed at its limit, 0 where nothing limits it. */
  public double secondsPerKgFed(int machine) {
    double seconds = 0;
    for (int h : layout.headsOf[machine]) {
      seconds += secondsPerKgFed(h, machine);
    }
    return seconds;
  }

  /** As-is mass that takes an outlet of a node in a head's stretch, per kg fed. */
  public double way(int head, int node, int outlet) {
    return drawn[head] > 0
        ? drawn[head] * loads[head].way[loads[head].outletStart(node) + outlet]
        : 0;
  }

  /** As-is mass that comes to rest at a sink of a head's stretch, per kg fed. */
  public double sinkLoad(int head, int sink) {
    return drawn[head] > 0 ? drawn[head] * loads[head].sinkMass[sink] : 0;
  }

  /** The dry matter of it. */
  public double sinkDry(int head, int sink) {
    double dry = 0;
    for (int c : loads[head].landed(sink)) {
      dry += loads[head].kg[loads[head].sinkAt(sink) + 2 * c];
    }
    return drawn[head] > 0 ? drawn[head] * dry : 0;
  }
}
