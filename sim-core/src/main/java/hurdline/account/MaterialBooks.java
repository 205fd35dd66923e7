package hurdline.account;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import java.util.Arrays;

/**
 * Where material went: booked lot by lot from the mass that a head drew and the map of its stretch,
 * so that what is drawn and what arrives balance to rounding.
 */
public final class MaterialBooks {
  private final CompiledLines layout;
  private final int components;
  private final int products;

  /** [line] mass that its feed has drawn, the dry matter in it, and water that its driers took. */
  public final double[] fedKg;

  public final double[] fedDryKg;
  public final double[] driedKg;

  /** [component] dry matter that breaking has added to it. */
  public final double[] brokenKg;

  /** [machine] inflow. */
  public final double[] machineKg;

  public final double[] machineDryKg;

  /** [machine] water of it that went to the air there. */
  public final double[] machineDriedKg;

  /** [line * machines + machine] inflow from heads of the line. */
  public final double[] lineMachineKg;

  /** [line * products + product] */
  public final double[] productKg;

  public final double[] productDryKg;

  /** [line * products + product] mass at the product's moisture basis: fit to sell, and too wet. */
  public final double[] fitKg;

  public final double[] tooWetKg;

  /** [product] as-is mass that is too wet. */
  public final double[] tooWetAsIsKg;

  /** [product] what reached it beside any filler. */
  public final double[] pileKg;

  public double wasteKg;
  public double wasteDryKg;
  public double dustKg;
  public double dustDryKg;

  /** [component] dry matter that left the line for good, in whatever way. */
  public final double[] leftComponentKg;

  public double leftWaterKg;

  /** [head][node][outlet] mass that took that way. */
  public final double[][][] wayKg;

  public MaterialBooks(CompiledLines layout) {
    this.layout = layout;
    components = layout.components;
    products = layout.naming.products.count();
    fedKg = new double[layout.lines];
    fedDryKg = new double[layout.lines];
    driedKg = new double[layout.lines];
    brokenKg = new double[components];
    machineKg = new double[layout.machines];
    machineDryKg = new double[layout.machines];
    machineDriedKg = new double[layout.machines];
    lineMachineKg = new double[layout.lines * layout.machines];
    productKg = new double[layout.lines * products];
    productDryKg = new double[layout.lines * products];
    fitKg = new double[layout.lines * products];
    tooWetKg = new double[layout.lines * products];
    tooWetAsIsKg = new double[products];
    pileKg = new double[products];
    leftComponentKg = new double[components];
    wayKg = new double[layout.heads][][];
    for (int h = 0; h < layout.heads; h++) {
      wayKg[h] = new double[layout.stretch[h].nodes][];
      for (int node = 0; node < wayKg[h].length; node++) {
        wayKg[h][node] = new double[layout.stretch[h].outletTo[node].length];
      }
    }
  }

  public void reset() {
    Arrays.fill(fedKg, 0);
    Arrays.fill(fedDryKg, 0);
    Arrays.fill(driedKg, 0);
    Arrays.fill(brokenKg, 0);
    Arrays.fill(machineKg, 0);
    Arrays.fill(machineDryKg, 0);
    Arrays.fill(machineDriedKg, 0);
    Arrays.fill(lineMachineKg, 0);
    Arrays.fill(productKg, 0);
    Arrays.fill(productDryKg, 0);
    Arrays.fill(fitKg, 0);
    Arrays.fill(tooWetKg, 0);
    Arrays.fill(tooWetAsIsKg, 0);
    Arrays.fill(pileKg, 0);
    Arrays.fill(leftComponentKg, 0);
    wasteKg = 0;
    wasteDryKg = 0;
    dustKg = 0;
    dustDryKg = 0;
    leftWaterKg = 0;
    for (double[][] nodes : wayKg) {
      for (double[] ways : nodes) {
        Arrays.fill(ways, 0);
      }
    }
  }

  /** A feed has drawn this mass of a lot; {@code dry} holds kg per kg drawn, by component; read. */
  public void fed(int line, double kg, double[] dry) {
    fedKg[line] += kg;
    for (int c = 0; c < components; c++) {
      fedDryKg[line] += kg * dry[c];
    }
  }

  /** Material of a head has reached one node. */
  public void passed(int head, int node, double kg, double dryKg) {
    int m = layout.stretch[head].machine[node];
    if (m >= 0) {
      machineKg[m] += kg;
      machineDryKg[m] += dryKg;
      machineDriedKg[m] += (kg - dryKg) * layout.stretch[head].dries[node];
      lineMachineKg[layout.stretch[head].line * layout.machines + m] += kg;
    }
  }

  /** Water that a line sent to the air, and dry matter that changed its component, per kg drawn. */
  public void changed(int line, double kg, double driedPerKg, double[] brokenPerKg) {
    driedKg[line] += kg * driedPerKg;
    leftWaterKg += kg * driedPerKg;
    for (int c = 0; c < components; c++) {
      brokenKg[c] += kg * brokenPerKg[c];
    }
  }

  /**
   * Material of a head has reached one sink.
   *
   * @param product its product, −1 where the sink is none
   * @param landed components that can be there; read
   * @param perKg from a place on, dry matter per kg drawn by component, the water of each behind
   *     it; read
   */
  public void arrived(
      int head, int sink, int product, double kg, int[] landed, double[] perKg, int from) {
    Stretch stretch = layout.stretch[head];
    Stretch.Sink kind = stretch.sinkKind[sink];
    if (kind == Stretch.Sink.BIN) {
      return;
    }
    double dryKg = 0;
    double waterKg = 0;
    for (int c : landed) {
      int at = from + 2 * c;
      dryKg += kg * perKg[at];
      waterKg += kg * perKg[at + 1];
      leftComponentKg[c] += kg * perKg[at];
    }
    leftWaterKg += waterKg;
    switch (kind) {
      case WASTE -> {
        wasteKg += dryKg + waterKg;
        wasteDryKg += dryKg;
      }
      case DUST -> {
        dustKg += dryKg + waterKg;
        dustDryKg += dryKg;
      }
      case PILED, PACKED, PACKED_FROM_MILL -> {
        int at = stretch.line * products + product;
        productKg[at] += dryKg + waterKg;
        productDryKg[at] += dryKg;
        sell(product, at, dryKg, waterKg);
        if (kind == Stretch.Sink.PILED) {
          pileKg[product] += dryKg + waterKg;
        }
      }
      case BIN -> throw new IllegalStateException("a bin is no end");
    }
  }

  private void sell(int product, int at, double dryKg, double waterKg) {
    double paidKg = layout.selling.paidKg(product, dryKg, waterKg);
    if (layout.selling.isTooWet(product, dryKg, waterKg)) {
      tooWetKg[at] += paidKg;
      tooWetAsIsKg[product] += dryKg + waterKg;
    } else {
      fitKg[at] += paidKg;
    }
  }

  /** Mass of a product over all lines. */
  public double productKg(int product) {
    return overLines(productKg, product);
  }

  public double productDryKg(int product) {
    return overLines(productDryKg, product);
  }

  public double fitKg(int product) {
    return overLines(fitKg, product);
  }

  public double tooWetKg(int product) {
    return overLines(tooWetKg, product);
  }

  private double overLines(double[] kg, int product) {
    double sum = 0;
    for (int l = 0; l < layout.lines; l++) {
      sum += kg[l * products + product];
    }
    return sum;
  }
}
