package hurdline.simulation.activity;

import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.flow.Network;
import hurdline.plant.Machine;
import java.util.Arrays;

/** Books what heads have drawn, lot by lot, and what mills took in and drew on each screen. */
public final class LotPosting implements Network.LotBooks {
  private final ReplicationState present;
  private final CompiledLines layout;
  private final Filling filling;
  private final MaterialBooks material;
  private final int[] mills;
  private final double[] screenMarkJ;

  /** [mill][screen] energy, mass and dry matter. */
  public final double[][] screenJ;

  public final double[][] screenKg;
  public final double[][] screenDryKg;

  public LotPosting(ReplicationState present, Filling filling, MaterialBooks material) {
    this.present = present;
    this.filling = filling;
    this.material = material;
    layout = present.layout;
    mills = Milling.mills(layout);
    screenMarkJ = new double[layout.machines];
    screenJ = new double[layout.machines][];
    screenKg = new double[layout.machines][];
    screenDryKg = new double[layout.machines][];
    for (int m : mills) {
      int screens = ((Machine.HammerMill) layout.machine[m]).screens().size();
      screenJ[m] = new double[screens];
      screenKg[m] = new double[screens];
      screenDryKg[m] = new double[screens];
    }
  }

  public void reset() {
    material.reset();
    Arrays.fill(screenMarkJ, 0);
    for (int m : mills) {
      Arrays.fill(screenJ[m], 0);
      Arrays.fill(screenKg[m], 0);
      Arrays.fill(screenDryKg[m], 0);
    }
  }

  /** A head's lot ends: what it has drawn is booked with the map of its stretch. */
  @Override
  public void lotEnds(int head) {
    Network network = present.network;
    double kg = network.drawnKg[head];
    if (!(kg > 0)) {
      return;
    }
    Stretch stretch = layout.stretch[head];
    if (layout.headBin[head] < 0) {
      material.fed(stretch.line, kg, network.lot(head).dry);
    }
    for (int node = 0; node < stretch.nodes; node++) {
      double dryKg = kg * network.loadDry(head, node);
      material.passed(head, node, kg * network.load(head, node), dryKg);
      double[] wayKg = material.wayKg[head][node];
      double[] ways = network.ways(head);
      for (int o = 0, at = network.outletStart(head, node); o < wayKg.length; o++, at++) {
        wayKg[o] += kg * ways[at];
      }
      int m = stretch.machine[node];
      if (m >= 0 && screenKg[m] != null) {
        screenKg[m][network.screen[m]] += kg * network.load(head, node);
        screenDryKg[m][network.screen[m]] += dryKg;
      }
    }
    material.changed(stretch.line, kg, network.driedPerKg(head), network.broken(head));
    for (int s = 0; s < stretch.sinks; s++) {
      int product = filling.productOf(stretch, s);
      material.arrived(
          head,
          s,
          product,
          kg,
          network.landed(head, s),
          network.sinkKg(head),
          network.sinkAt(head, s));
    }
  }

  /**
   * Energy of a mill since the last call belongs to the screen that is in.
   *
   * @param joules that the mill has drawn up to now
   */
  public void screenEnergy(int m, double joules) {
    screenJ[m][present.network.screen[m]] += joules - screenMarkJ[m];
    screenMarkJ[m] = joules;
  }
}
