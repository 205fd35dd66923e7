package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Polyline;
import hurdline.compiled.Stretch;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Product;
import hurdline.random.Constant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What does not change about fillers and presses: what they fill, into what, and who changes it.
 */
final class Fillers {
  private final CompiledLines layout;
  private final int products;
  private final int[][] makes; // [mill][screen] product

  /** Machines that fill. */
  final int[] packers;

  /** [machine] its spouts or boxes, numbered through from its first. */
  final int[] firstSpout;

  final int[] spouts;
  final int[] spoutMachine; // [spout]

  /**
   * [machine * products + product] the package that it fills and what that holds, infinite without
   * one; who changes it, and in which turn.
   */
  final Packaging[] packaging;

  final double[] packageKg;
  final int[] resource;
  final int[] rank;

  /** [machine] heads and their sinks that fill here, and products that are filled here. */
  final int[][] head;

  final int[][] sink;
  final int[][] made;

  /**
   * [machine] what a change takes where no change can ever keep the filler waiting; NaN elsewhere.
   */
  final double[] easyChangeS;

  Fillers(ReplicationState present) {
    layout = present.layout;
    makes = layout.makes;
    products = layout.naming.products.count();
    packers =
        IntStream.range(0, layout.machines)
            .filter(m -> layout.machine[m] instanceof Machine.Packer)
            .toArray();
    firstSpout = new int[layout.machines];
    spouts = new int[layout.machines];
    spoutMachine = new int[EventSlots.spouts(layout)];
    int at = 0;
    for (int m = 0; m < layout.machines; m++) {
      firstSpout[m] = at;
      spouts[m] = EventSlots.spouts(layout.machine[m]);
      for (int k = 0; k < spouts[m]; k++) {
        spoutMachine[at++] = m;
      }
    }
    packageKg = new double[layout.machines * products];
    packaging = new Packaging[layout.machines * products];
    resource = new int[layout.machines * products];
    rank = new int[layout.machines * products];
    for (int m : packers) {
      packages(present, m);
    }
    head = new int[layout.machines][];
    sink = new int[layout.machines][];
    made = new int[layout.machines][];
    easyChangeS = new double[layout.machines];
    Arrays.fill(easyChangeS, Double.NaN);
    for (int m : packers) {
      ways(m);
      hours(present, m);
      easyChangeS[m] = easyChangeS(present, m);
    }
  }

  private void packages(ReplicationState present, int m) {
    for (Product product : layout.plant.products()) {
      int at = m * products + layout.naming.products.index(product.name());
      packaging[at] = layout.plant.packaging(layout.machine[m].name(), product).orElse(null);
      packageKg[at] = packaging[at] == null ? Double.POSITIVE_INFINITY : packaging[at].massKg();
      if (packaging[at] != null) {
        resource[at] = present.resource(packaging[at].needs(), "package_change");
        rank[at] = present.rank(resource[at], "package_change");
      }
    }
  }

  private void ways(int m) {
    List<Integer> heads = new ArrayList<>();
    List<Integer> sinks = new ArrayList<>();
    for (int h : layout.headsOf[m]) {
      Stretch s = layout.stretch[h];
      for (int k = 0; k < s.sinks; k++) {
        if (s.sinkNode[k] == layout.nodeOf[h][m]) {
          heads.add(h);
          sinks.add(k);
        }
      }
    }
    head[m] = heads.stream().mapToInt(Integer::intValue).toArray();
    sink[m] = sinks.stream().mapToInt(Integer::intValue).toArray();
    made[m] = IntStream.range(0, products).filter(p -> fills(m, p)).toArray();
  }

  private boolean fills(int m, int product) {
    for (int i = 0; i < head[m].length; i++) {
      if (makes(m, i, product)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a filler makes a product of what comes on one of its ways. */
  boolean makes(int m, int way, int product) {
    Stretch s = layout.stretch[head[m][way]];
    int target = s.sinkTarget[sink[m][way]];
    return s.sinkKind[sink[m][way]] == Stretch.Sink.PACKED
        ? target == product
        : Arrays.stream(makes[target]).anyMatch(each -> each == product);
  }

  private void hours(ReplicationState present, int m) {
    for (int p : made[m]) {
      int at = m * products + p;
      if (packaging[at] != null) {
        present.resources.hoursOf(resource[at], present.gates.machine(m));
      }
    }
  }

  /**
   * A filler of one product, whose changes need nobody and always last the same, is never kept
   * waiting if it has another spout and cannot fill that one before the change is over.
   */
  private double easyChangeS(ReplicationState present, int m) {
    if (made[m].length != 1 || spouts[m] < 2) {
      return Double.NaN;
    }
    int p = made[m][0];
    int at = m * products + p;
    boolean easy =
        packaging[at] != null
            && !layout.selling.isByPackage(p)
            && !layout.stores.has(p)
            && resource[at] == present.resources.endless()
            && packaging[at].changeS() instanceof Constant;
    if (!easy) {
      return Double.NaN;
    }
    double lastsS = Math.max(0, packaging[at].changeS().mean());
    return lastsS * (1 + 1e-9) * mostKgPerS(m) <= packageKg[at] ? lastsS : Double.NaN;
  }

  /** No more than this ever goes into a machine; infinite where nothing limits it. */
  private double mostKgPerS(int m) {
    double most = 0;
    for (int h : layout.headsOf[m]) {
      Stretch s = layout.stretch[h];
      int node = layout.nodeOf[h][m];
      double limit = s.rateKgPerS[node] * s.rateByMoisture[node].most();
      for (Polyline curve : s.rateByAttribute[node]) {
        limit *= curve.most();
      }
      most = Math.max(most, limit);
    }
    return most;
  }

  /** Product of a sink as the screens now stand. */
  int productOf(Stretch stretch, int sink, int[] screen) {
    return stretch.sinkKind[sink] == Stretch.Sink.PACKED_FROM_MILL
        ? makes[stretch.sinkTarget[sink]][screen[stretch.sinkTarget[sink]]]
        : stretch.sinkTarget[sink];
  }
}
