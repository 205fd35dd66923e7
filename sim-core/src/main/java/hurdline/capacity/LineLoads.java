package hurdline.capacity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.flow.RatedFlow;
import java.util.ArrayList;
import java.util.List;

/**
 * What one kilogram fed to a line brings to its machines, with one screen in each mill.
 *
 * @param share of the mass fed for which these screens are in
 * @param screen [machine]
 * @param kg [head][machine] as-is inflow per kg fed
 * @param seconds [head][machine] that the machine needs for it at its own limit, 0 without one
 * @param ways [head][node][outlet] as-is mass that takes it per kg fed
 * @param made what comes to rest as a product
 */
record LineLoads(
    double share,
    int[] screen,
    double[][] kg,
    double[][] seconds,
    double[][][] ways,
    List<Made> made) {

  /**
   * @param packer the filler or press, −1 where it is piled
   * @param kg as-is per kg fed
   * @param fitKg at the product's moisture basis per kg fed, 0 where it is too wet to fill an order
   */
  record Made(int head, int packer, int product, double kg, double fitKg) {}

  /** Feeds a line its crop's mean lot. */
  static LineLoads of(CompiledLines layout, RatedFlow flow, int line, double share, int[] screen) {
    flow.feed(line, screen);
    double[][] kg = new double[layout.heads][layout.machines];
    double[][] seconds = new double[layout.heads][layout.machines];
    double[][][] ways = new double[layout.heads][][];
    List<Made> made = new ArrayList<>();
    for (int h = 0; h < layout.heads; h++) {
      if (layout.headLine[h] == line) {
        for (int m = 0; m < layout.machines; m++) {
          kg[h][m] = flow.load(h, m);
          seconds[h][m] = flow.secondsPerKgFed(h, m);
        }
        ways[h] = ways(layout.stretch[h], flow, h);
        made(layout, flow, h, screen, made);
      }
    }
    return new LineLoads(share, screen.clone(), kg, seconds, ways, List.copyOf(made));
  }

  private static double[][] ways(Stretch stretch, RatedFlow flow, int head) {
    double[][] ways = new double[stretch.nodes][];
    for (int node = 0; node < ways.length; node++) {
      ways[node] = new double[stretch.outletTo[node].length];
      for (int o = 0; o < ways[node].length; o++) {
        ways[node][o] = flow.way(head, node, o);
      }
    }
    return ways;
  }

  private static void made(
      CompiledLines layout, RatedFlow flow, int head, int[] screen, List<Made> made) {
    Stretch stretch = layout.stretch[head];
    for (int k = 0; k < stretch.sinks; k++) {
      int target = stretch.sinkTarget[k];
      int product =
          switch (stretch.sinkKind[k]) {
            case PILED, PACKED -> target;
            case PACKED_FROM_MILL -> layout.makes[target][screen[target]];
            case WASTE, DUST, BIN -> -1;
          };
      double kg = flow.sinkLoad(head, k);
      if (product >= 0 && kg > 0) {
        int node = stretch.sinkNode[k];
        int packer = node < 0 ? -1 : stretch.machine[node];
        made.add(
            new Made(head, packer, product, kg, fitKg(layout, product, kg, flow.sinkDry(head, k))));
      }
    }
  }

  private static double fitKg(CompiledLines layout, int product, double kg, double dryKg) {
    return layout.selling.isTooWet(product, dryKg, kg - dryKg)
        ? 0
        : layout.selling.paidKg(product, dryKg, kg - dryKg);
  }

  /**
   * What of a product is fit to fill orders, at its moisture basis, per kg fed, packed or piled.
   */
  double fitKg(int product) {
    return made.stream().filter(one -> one.product == product).mapToDouble(Made::fitKg).sum();
  }

  /** Over some heads: inflow of a machine per kg fed. */
  double kg(int machine, int[] heads) {
    double sum = 0;
    for (int h : heads) {
      sum += kg[h][machine];
    }
    return sum;
  }

  /** Over some heads: what a machine needs at its own limit per kg fed. */
  double seconds(int machine, int[] heads) {
    double sum = 0;
    for (int h : heads) {
      sum += seconds[h][machine];
    }
    return sum;
  }
}
