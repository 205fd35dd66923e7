package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Lot;
import hurdline.compiled.Polyline;
import hurdline.compiled.Stretch;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What one kilogram drawn by a head brings where: the linear map of its stretch for the lot that it
 * draws at present.
 *
 * <p>Without returns one pass in flow order over the {@link Edges}; with returns the inflows come
 * from {@link RecycleFlows} first.
 */
final class HeadLoads {
  private final Stretch stretch;
  private final int components;
  private final int nodes;
  private final double[][][] share;
  private final int[][] corrected; // [node] components whose shares hang on the lot
  private final Edges edges;
  private final RecycleFlows returns; // null in a stretch without
  private final boolean[] makesFines;
  private final boolean[] changes; // [node] whether it breaks or dries
  private final double[][] millFines;
  private final int hurd;
  private final int fines;
  private final double[] whole;

  final Lot lot;

  /** [component] what is in the lot, kg per kg as-is. */
  final double[] lotDry;

  final double[] lotWater;
  double moisture;

  /**
   * Per kg drawn, by place: each node's and each sink's dry matter by component, the water of each
   * behind it.
   */
  final double[] kg;

  /** [node] as-is inflow per kg drawn, and the dry matter in it. */
  final double[] load;

  final double[] loadDry;

  /**
   * [outlet] as-is mass that takes that way, per kg drawn; outlets numbered through from node to
   * node.
   */
  final double[] way;

  /** [sink] as-is mass per kg drawn. */
  final double[] sinkMass;

  /** Water to the air per kg drawn. */
  double dried;

  /** [component] dry matter that breaking adds, per kg drawn. */
  final double[] broken;

  HeadLoads(CompiledLines layout, Stretch stretch) {
    this.stretch = stretch;
    components = layout.components;
    lot = new Lot(layout);
    lotDry = lot.dry;
    lotWater = lot.water;
    nodes = stretch.nodes;
    hurd = layout.naming.components.find("hurd");
    fines = layout.naming.components.find("fines");
    millFines = new double[nodes][];
    makesFines = new boolean[nodes];
    changes = new boolean[nodes];
    for (int node = 0; node < nodes; node++) {
      int m = stretch.machine[node];
      if (m >= 0 && hurd >= 0 && fines >= 0) {
        millFines[node] = layout.millFines[m];
        makesFines[node] = millFines[node] != null;
      }
      changes[node] =
          makesFines[node] || stretch.breaksFrom[node].length > 0 || stretch.dries[node] > 0;
    }
    share = new double[nodes][][];
    corrected = new int[nodes][];
    for (int node = 0; node < nodes; node++) {
      share[node] = new double[stretch.outletTo[node].length][components];
      corrected[node] = corrected(node);
      for (int c = 0; c < components; c++) {
        shares(node, c);
      }
    }
    edges = new Edges(stretch, components);
    returns =
        stretch.returns
            ? new RecycleFlows(stretch, components, share, millFines, hurd, fines)
            : null;
    kg = new double[edges.places()];
    whole = new double[2 * components];
    load = new double[nodes];
    loadDry = new double[nodes];
    way = new double[edges.outletStart[nodes]];
    sinkMass = new double[stretch.sinks];
    broken = new double[components];
  }

  /**
   * Works out the loads of {@link #lot}.
   *
   * @param screen [machine] the screen that is in each mill; read
   */
  void spread(int[] screen) {
    moisture = 0;
    for (int c = 0; c < components; c++) {
      moisture += lotWater[c];
    }
    boolean listed = edges.standFor(lotDry, lotWater);
    if (!listed) {
      edges.makeFor(lotDry, lotWater, makesFines, hurd, fines);
    }
    for (int node = 0; node < nodes; node++) {
      for (int c : corrected[node]) {
        shares(node, c);
      }
      if (corrected[node].length > 0 || !listed) {
        parts(node);
      }
    }
    Arrays.fill(kg, 0);
    for (int c = 0; c < components; c++) {
      kg[2 * c] = lotDry[c];
      kg[2 * c + 1] = lotWater[c];
    }
    if (returns != null) {
      returns.inflows(screen, kg);
    }
    dried = 0;
    Arrays.fill(broken, 0);
    for (int node = 0; node < nodes; node++) {
      pass(node, screen);
    }
    for (int s = 0; s < sinkMass.length; s++) {
      double mass = 0;
      int at = sinkAt(s);
      for (int c : edges.landed[s]) {
        mass += kg[at + 2 * c] + kg[at + 2 * c + 1];
      }
      sinkMass[s] = mass;
    }
  }

  /** Components that can reach a sink. */
  int[] landed(int sink) {
    return edges.landed[sink];
  }

  /** Where in {@link #kg} a sink's first component stands; the next stands two further. */
  int sinkAt(int sink) {
    return edges.place(-1 - sink);
  }

  int outletStart(int node) {
    return edges.outletStart[node];
  }

  private int[] corrected(int node) {
    return IntStream.range(0, components).filter(c -> isCorrected(node, c)).toArray();
  }

  private boolean isCorrected(int node, int component) {
    for (int o = 0; o < share[node].length; o++) {
      boolean is = corrects(stretch.byMoisture[node][o], component);
      for (Polyline[] curves : stretch.byAttribute[node][o]) {
        is |= corrects(curves, component);
      }
      if (is) {
        return true;
      }
    }
    return false;
  }

  private static boolean corrects(Polyline[] curves, int component) {
    return curves != null && !curves[component].isOne();
  }

  /**
   * A component's shares of a node's outlets for the present moisture and attributes; what is left
   * goes with the rest.
   */
  private void shares(int node, int c) {
    int rest = stretch.restOutlet[node];
    double left = 1;
    for (int o = 0; o < share[node].length; o++) {
      if (o != rest) {
        double taken = stretch.takes[node][o][c];
        taken *= factor(stretch.byMoisture[node][o], c, moisture);
        for (int a = 0; a < lot.attribute.length; a++) {
          taken *= factor(stretch.byAttribute[node][o][a], c, lot.attribute[a]);
        }
        taken = Math.min(taken, left);
        share[node][o][c] = taken;
        left -= taken;
      }
    }
    share[node][rest][c] = Math.max(0, left);
  }

  private static double factor(Polyline[] curves, int component, double value) {
    return curves == null ? 1 : curves[component].of(value);
  }

  /** Writes a node's shares to its edges. */
  private void parts(int node) {
    int first = edges.outletStart[node];
    for (int o = 0; o < share[node].length; o++) {
      for (int e = edges.edgeStart[first + o]; e < edges.edgeStart[first + o + 1]; e++) {
        edges.part[e] = share[node][o][edges.component[e]] * stretch.collects[node];
      }
    }
  }

  /** Carries a node's inflow through breaking, drying and its outlets. */
  private void pass(int node, int[] screen) {
    final double[] kg = this.kg;
    final int[] live = edges.live;
    double inDry = 0;
    double inWater = 0;
    for (int k = edges.liveStart[node], end = edges.liveStart[node + 1]; k < end; k++) {
      inDry += kg[live[k]];
      inWater += kg[live[k] + 1];
    }
    load[node] = inDry + inWater;
    loadDry[node] = inDry;
    if (changes[node]) {
      change(node, screen, inWater);
    }
    if (stretch.collects[node] < 1) {
      letGo(node, 1 - stretch.collects[node]);
    }
    send(node);
  }

  /** Adds what each outlet takes to its target's dry matter and water. */
  private void send(int node) {
    final double[] kg = this.kg;
    final int[] from = edges.from;
    final int[] to = edges.to;
    final double[] part = edges.part;
    int e = edges.edgeStart[edges.outletStart[node]];
    for (int o = edges.outletStart[node], last = edges.outletStart[node + 1]; o < last; o++) {
      double mass = 0;
      for (int end = edges.edgeStart[o + 1]; e < end; e++) {
        double dryTaken = kg[from[e]] * part[e];
        double waterTaken = kg[from[e] + 1] * part[e];
        kg[to[e]] += dryTaken;
        kg[to[e] + 1] += waterTaken;
        mass += dryTaken + waterTaken;
      }
      way[o] = mass;
    }
  }

  /** Turns a node's inflow, in place, into what leaves it. */
  private void change(int node, int[] screen, double inWater) {
    int at = edges.place(node);
    System.arraycopy(kg, at, whole, 0, whole.length);
    int[] from = stretch.breaksFrom[node];
    for (int k = 0; k < from.length; k++) {
      moveShare(at, from[k], stretch.breaksInto[node][k], stretch.breaksShare[node][k]);
    }
    if (makesFines[node]) {
      moveShare(at, hurd, fines, millFines[node][screen[stretch.machine[node]]]);
    }
    for (int c = 0; c < components; c++) {
      broken[c] += kg[at + 2 * c] - whole[2 * c];
    }
    double driesShare = stretch.dries[node];
    if (driesShare > 0) {
      dried += inWater * driesShare;
      for (int c = 0; c < components; c++) {
        kg[at + 2 * c + 1] *= 1 - driesShare;
      }
    }
  }

  private void moveShare(int at, int from, int into, double part) {
    for (int k = 0; k < 2; k++) { // dry matter, then water
      double moved = whole[2 * from + k] * part;
      kg[at + 2 * from + k] -= moved;
      kg[at + 2 * into + k] += moved;
    }
  }

  private void letGo(int node, double part) {
    int on = edges.place(-1 - stretch.dustSink[node]) - edges.place(node);
    for (int k = edges.liveStart[node]; k < edges.liveStart[node + 1]; k++) {
      int at = edges.live[k];
      kg[at + on] += kg[at] * part;
      kg[at + on + 1] += kg[at + 1] * part;
    }
  }
}
