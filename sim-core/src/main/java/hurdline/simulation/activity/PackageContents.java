package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;

/**
 * What is in each begun package of the products that are paid by it, or that wait in a store until
 * they are sold.
 *
 * <p>Masses flow into the package that a filler has begun at the rates that hold, lot after lot,
 * and are its own once it is full: what all packages hold is what was made. Nothing here is touched
 * in a plant without such a product.
 */
final class PackageContents {
  private static final int NONE = -1;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final Fillers fillers;
  private final int products;
  private final boolean[] isFollowed; // by machine
  private final BegunPackage[] open; // [machine * products + product], null where not followed

  PackageContents(ReplicationState present, Fillers fillers) {
    this.present = present;
    this.fillers = fillers;
    layout = present.layout;
    products = layout.naming.products.count();
    open = new BegunPackage[layout.machines * products];
    isFollowed = new boolean[layout.machines];
    for (int m : fillers.packers) {
      for (int p : fillers.made[m]) {
        if (layout.selling.isByPackage(p) || layout.stores.has(p)) {
          isFollowed[m] = true;
          open[m * products + p] = new BegunPackage(layout.lines);
        }
      }
    }
  }

  void reset() {
    for (BegunPackage one : open) {
      if (one != null) {
        one.reset();
      }
    }
  }

  /** Rates at a filler change: what has flowed since they last did is in its begun packages. */
  void flows(int m) {
    if (!isFollowed[m]) {
      return;
    }
    for (int p : fillers.made[m]) {
      BegunPackage one = open[m * products + p];
      if (one != null) {
        one.carry(present.nowS);
        one.stand();
      }
    }
    int[] heads = fillers.head[m];
    for (int i = 0; i < heads.length; i++) {
      double rate = present.network.rateKgPerS(heads[i]);
      int p =
          fillers.productOf(layout.stretch[heads[i]], fillers.sink[m][i], present.network.screen);
      BegunPackage one = rate > 0 && p >= 0 ? open[m * products + p] : null;
      if (one != null) {
        flows(one, p, heads[i], fillers.sink[m][i], rate);
      }
    }
  }

  private void flows(BegunPackage one, int p, int head, int sink, double rate) {
    double[] perKg = present.network.sinkKg(head);
    int from = present.network.sinkAt(head, sink);
    int component = layout.selling.grading(p) == null ? NONE : layout.selling.grading(p).component;
    double dryKg = 0;
    double waterKg = 0;
    for (int c : present.network.landed(head, sink)) {
      dryKg += perKg[from + 2 * c];
      waterKg += perKg[from + 2 * c + 1];
      one.componentKgPerS += c == component ? rate * perKg[from + 2 * c] : 0;
    }
    one.dryKgPerS += rate * dryKg;
    double paidKgPerS = rate * layout.selling.paidKg(p, dryKg, waterKg);
    boolean tooWet = layout.selling.isTooWet(p, dryKg, waterKg);
    (tooWet ? one.tooWetKgPerS : one.fitKgPerS)[layout.headLine[head]] += paidKgPerS;
  }

  /**
   * What a package of a mass holds of a product that is made of the mean crop, by the first head
   * that leads to it; empty where none does.
   */
  void typical(int p, double massKg, BegunPackage to) {
    to.reset();
    int first = NONE;
    int sink = NONE;
    for (int m : fillers.packers) {
      for (int i = 0; i < fillers.head[m].length; i++) {
        int head = fillers.head[m][i];
        int at = fillers.sink[m][i];
        if (fillers.makes(m, i, p)
            && present.network.sinkKg(head, at) > 0
            && (first == NONE || head < first)) {
          first = head;
          sink = at;
        }
      }
    }
    if (first != NONE) {
      flows(to, p, first, sink, massKg / present.network.sinkKg(first, sink));
      to.carry(1);
      to.stand();
    }
  }

  /** What a filler's package of a product holds by now; null where nobody asks. */
  BegunPackage now(int m, int p) {
    BegunPackage one = open[m * products + p];
    if (one != null) {
      one.carry(present.nowS);
    }
    return one;
  }
}
