package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Polyline;
import hurdline.compiled.Stretch;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The loads of a lot by a pass over every node, outlet and component: the twin of {@link
 * HeadLoads}.
 */
final class PlainLoads {
  private final Stretch stretch;
  private final int components;
  private final int nodes;
  private final double[][][] share;
  private final boolean[] corrected;
  private final double[][] millFines;
  private final int hurd;
  private final int fines;
  private final double[] dry;
  private final double[] water;
  private final double[] brokenDry;
  private final double[] brokenWater;
  private final double[] matrix;
  private final double[] nowhere; // inflows of a stretch with returns are known beforehand

  /** [component] the lot, kg per kg as-is. */
  final double[] lotDry;

  final double[] lotWater;

  /** [attribute] */
  final double[] attribute;

  double moisture;

  /** [node] as-is inflow per kg drawn, and the dry matter in it. */
  final double[] load;

  final double[] loadDry;

  /** [node][outlet] as-is mass that takes that way, per kg drawn. */
  final double[][] way;

  /** [sink] as-is mass per kg drawn. */
  final double[] sinkMass;

  /** [sink * components + component] per kg drawn. */
  final double[] sinkDry;

  final double[] sinkWater;

  /** Water to the air per kg drawn. */
  double dried;

  /** [component] dry matter that breaking adds, per kg drawn. */
  final double[] broken;

  PlainLoads(CompiledLines layout, Stretch stretch) {
    this.stretch = stretch;
    components = layout.components;
    attribute = new double[layout.naming.attributes.size()];
    nodes = stretch.nodes;
    hurd = layout.naming.components.find("hurd");
    fines = layout.naming.components.find("fines");
    millFines = new double[nodes][];
    for (int node = 0; node < nodes; node++) {
      int m = stretch.machine[node];
      if (m >= 0 && hurd >= 0 && fines >= 0) {
        millFines[node] = layout.millFines[m];
      }
    }
    share = new double[nodes][][];
    corrected = new boolean[nodes];
    for (int node = 0; node < nodes; node++) {
      share[node] = new double[stretch.outletTo[node].length][components];
      for (int o = 0; o < share[node].length; o++) {
        corrected[node] |=
            stretch.byMoisture[node][o] != null
                || Stream.of(stretch.byAttribute[node][o]).anyMatch(Objects::nonNull);
      }
      shares(node);
    }
    dry = new double[nodes * components];
    water = new double[nodes * components];
    brokenDry = new double[components];
    brokenWater = new double[components];
    nowhere = new double[components];
    matrix = stretch.returns ? new double[nodes * components * nodes * components] : new double[0];
    lotDry = new double[components];
    lotWater = new double[components];
    load = new double[nodes];
    loadDry = new double[nodes];
    way = new double[nodes][];
    for (int node = 0; node < nodes; node++) {
      way[node] = new double[share[node].length];
    }
    sinkMass = new double[stretch.sinks];
    sinkDry = new double[stretch.sinks * components];
    sinkWater = new double[stretch.sinks * components];
    broken = new double[components];
  }

  /**
   * Works out the loads of the lot in {@link #lotDry}, {@link #lotWater}, {@link #attribute}.
   *
   * @param screen [machine] the screen that is in each mill; read
   */
  void spread(int[] screen) {
    moisture = 0;
    for (int c = 0; c < components; c++) {
      moisture += lotWater[c];
    }
    for (int node = 0; node < nodes; node++) {
      if (corrected[node]) {
        shares(node);
      }
    }
    Arrays.fill(dry, 0);
    Arrays.fill(water, 0);
    System.arraycopy(lotDry, 0, dry, 0, components);
    System.arraycopy(lotWater, 0, water, 0, components);
    if (stretch.returns) {
      inflowsWithReturns(screen, dry, false);
      inflowsWithReturns(screen, water, true);
    }
    dried = 0;
    Arrays.fill(broken, 0);
    Arrays.fill(sinkDry, 0);
    Arrays.fill(sinkWater, 0);
    for (int node = 0; node < nodes; node++) {
      pass(node, screen);
    }
    for (int s = 0; s < sinkMass.length; s++) {
      double mass = 0;
      for (int c = s * components; c < (s + 1) * components; c++) {
        mass += sinkDry[c] + sinkWater[c];
      }
      sinkMass[s] = mass;
    }
  }

  /**
   * Shares of a node's outlets for the present moisture and attributes; what is left goes with the
   * rest.
   */
  private void shares(int node) {
    int rest = stretch.restOutlet[node];
    for (int c = 0; c < components; c++) {
      double left = 1;
      for (int o = 0; o < share[node].length; o++) {
        if (o != rest) {
          double taken = stretch.takes[node][o][c];
          taken *= factor(stretch.byMoisture[node][o], c, moisture);
          for (int a = 0; a < attribute.length; a++) {
            taken *= factor(stretch.byAttribute[node][o][a], c, attribute[a]);
          }
          taken = Math.min(taken, left);
          share[node][o][c] = taken;
          left -= taken;
        }
      }
      share[node][rest][c] = Math.max(0, left);
    }
  }

  private static double factor(Polyline[] curves, int component, double value) {
    return curves == null ? 1 : curves[component].of(value);
  }

  /** Carries a node's inflow through breaking, drying and its outlets. */
  private void pass(int node, int[] screen) {
    int at = node * components;
    double inDry = 0;
    double inWater = 0;
    for (int c = 0; c < components; c++) {
      inDry += dry[at + c];
      inWater += water[at + c];
      brokenDry[c] = dry[at + c];
      brokenWater[c] = water[at + c];
    }
    load[node] = inDry + inWater;
    loadDry[node] = inDry;
    breakUp(node, screen);
    for (int c = 0; c < components; c++) {
      broken[c] += brokenDry[c] - dry[at + c];
    }
    double driesShare = stretch.dries[node];
    if (driesShare > 0) {
      dried += inWater * driesShare;
      for (int c = 0; c < components; c++) {
        brokenWater[c] *= 1 - driesShare;
      }
    }
    double collects = stretch.collects[node];
    if (collects < 1) {
      letGo(stretch.dustSink[node] * components, 1 - collects);
    }
    int[] targets = stretch.outletTo[node];
    for (int o = 0; o < targets.length; o++) {
      double[] shares = share[node][o];
      if (targets[o] < 0) {
        way[node][o] = send(sinkDry, sinkWater, (-1 - targets[o]) * components, shares, collects);
      } else if (stretch.returns) {
        way[node][o] = send(nowhere, nowhere, 0, shares, collects);
      } else {
        way[node][o] = send(dry, water, targets[o] * components, shares, collects);
      }
    }
  }

  /** Adds what an outlet takes to a target's dry matter and water, and says how much that is. */
  private double send(double[] toDry, double[] toWater, int at, double[] shares, double collects) {
    double mass = 0;
    for (int c = 0; c < components; c++) {
      double taken = shares[c] * collects;
      double dryTaken = brokenDry[c] * taken;
      double waterTaken = brokenWater[c] * taken;
      toDry[at + c] += dryTaken;
      toWater[at + c] += waterTaken;
      mass += dryTaken + waterTaken;
    }
    return mass;
  }

  private void letGo(int at, double part) {
    for (int c = 0; c < components; c++) {
      sinkDry[at + c] += brokenDry[c] * part;
      sinkWater[at + c] += brokenWater[c] * part;
    }
  }

  private void breakUp(int node, int[] screen) {
    int at = node * components;
    int[] from = stretch.breaksFrom[node];
    for (int k = 0; k < from.length; k++) {
      moveShare(at, from[k], stretch.breaksInto[node][k], stretch.breaksShare[node][k]);
    }
    if (millFines[node] != null) {
      moveShare(at, hurd, fines, millFines[node][screen[stretch.machine[node]]]);
    }
  }

  private void moveShare(int at, int from, int into, double part) {
    double movedDry = dry[at + from] * part;
    double movedWater = water[at + from] * part;
    brokenDry[from] -= movedDry;
    brokenDry[into] += movedDry;
    brokenWater[from] -= movedWater;
    brokenWater[into] += movedWater;
  }

  /** Replaces the entry's inflow in {@code x} by all nodes' inflows. */
  private void inflowsWithReturns(int[] screen, double[] x, boolean isWater) {
    int n = nodes * components;
    Arrays.fill(matrix, 0);
    for (int node = 0; node < nodes; node++) {
      for (int c = 0; c < components; c++) {
        matrix[(node * components + c) * n + node * components + c] += 1;
        double kept = 1;
        int[] from = stretch.breaksFrom[node];
        for (int k = 0; k < from.length; k++) {
          if (from[k] == c) {
            double part = stretch.breaksShare[node][k];
            leave(node, c, stretch.breaksInto[node][k], part, isWater);
            kept -= part;
          }
        }
        if (millFines[node] != null && c == hurd) {
          double part = millFines[node][screen[stretch.machine[node]]];
          leave(node, c, fines, part, isWater);
          kept -= part;
        }
        leave(node, c, c, kept, isWater);
      }
    }
    eliminate(n, x);
  }

  private void leave(int node, int from, int as, double part, boolean isWater) {
    int n = nodes * components;
    double through = part * stretch.collects[node] * (isWater ? 1 - stretch.dries[node] : 1);
    int[] targets = stretch.outletTo[node];
    for (int o = 0; o < targets.length; o++) {
      if (targets[o] >= 0) {
        matrix[(targets[o] * components + as) * n + node * components + from] -=
            through * share[node][o][as];
      }
    }
  }

  private void eliminate(int n, double[] x) {
    for (int p = 0; p < n; p++) {
      for (int i = p + 1; i < n; i++) {
        double factor = matrix[i * n + p] / matrix[p * n + p];
        if (factor != 0) {
          for (int j = p + 1; j < n; j++) {
            matrix[i * n + j] -= factor * matrix[p * n + j];
          }
          x[i] -= factor * x[p];
        }
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = x[i];
      for (int j = i + 1; j < n; j++) {
        sum -= matrix[i * n + j] * x[j];
      }
      x[i] = sum / matrix[i * n + i];
    }
  }
}
