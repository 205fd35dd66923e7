package hurdline.simulation.activity;

import hurdline.account.StoreBooks;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stores;
import hurdline.measure.EventKind;
import hurdline.plant.Product;
import java.util.Arrays;

/**
 * Full packages in their stores, until orders or trucks take them; first in, first out.
 *
 * <p>A full package goes into its product's store as soon as that has room, and stays on its spout
 * until then; several wait in the order in which they were filled. Where trucks fetch the product
 * they alone take it out: a truck leaves with a full load, or with what meets the order that is due
 * next. Without trucks orders take each package as it comes, whatever room there is.
 *
 * <p>Nothing here is touched in a plant without stores.
 */
public final class FinishedGoods {
  private static final double ROUNDING = 1e-9;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final Stores stores;
  private final Filling filling;
  private final int products;
  private final boolean[] ordersOnly; // [product]
  private final PackageQueue[] queue; // [product] in the store, and behind them those without room
  private final int[] inStore; // [product] of its queue
  private final int[] nextPickUp; // [product]
  private final int[] waiting; // spouts with a full package without room, in turn
  private int waits;
  private final BegunPackage read;
  private final double[] openedFitKg; // [product]
  private final double[] openedTooWetKg;
  private Orders orders;

  /** [line * products + product] mass that has left, at the product's moisture basis. */
  public final double[] leftFitKg;

  public final double[] leftTooWetKg;

  /** [product] packages that have left, and trucks that took some. */
  public final int[] left;

  public final int[] trucks;

  /** Levels of the stores. */
  public final StoreBooks books;

  FinishedGoods(ReplicationState present, Filling filling, int spouts) {
    this.present = present;
    this.filling = filling;
    layout = present.layout;
    stores = layout.stores;
    products = layout.naming.products.count();
    ordersOnly = new boolean[products];
    queue = new PackageQueue[products];
    for (Product product : layout.plant.products()) {
      int p = layout.naming.products.index(product.name());
      ordersOnly[p] = product.sellsOrdersOnly();
      queue[p] = stores.has(p) ? new PackageQueue(layout.lines) : null;
    }
    inStore = new int[products];
    nextPickUp = new int[products];
    waiting = new int[spouts];
    read = new BegunPackage(layout.lines);
    openedFitKg = new double[products];
    openedTooWetKg = new double[products];
    leftFitKg = new double[layout.lines * products];
    leftTooWetKg = new double[layout.lines * products];
    left = new int[products];
    trucks = new int[products];
    books = new StoreBooks(stores.count, present.roster.days());
  }

  /** Whose orders are met from the stores. */
  void serves(Orders theOrders) {
    orders = theOrders;
  }

  void reset() {
    for (int p = 0; p < products; p++) {
      if (stores.has(p)) {
        queue[p].reset();
      }
      nextPickUp[p] = -1;
      schedule(p);
    }
    waits = 0;
    Arrays.fill(inStore, 0);
    Arrays.fill(leftFitKg, 0);
    Arrays.fill(leftTooWetKg, 0);
    Arrays.fill(left, 0);
    Arrays.fill(trucks, 0);
    books.reset();
  }

  /**
   * What lies in the stores on the first day: packages as the mean crop makes them, which orders
   * may take at once; all else is reset already.
   */
  public void open() {
    for (int p = 0; p < products; p++) {
      int packages = stores.opensWith[p];
      openedFitKg[p] = 0;
      openedTooWetKg[p] = 0;
      if (packages > 0) {
        filling.typicalPackage(p, stores.packageKg[p], read);
      }
      for (int k = 0; k < packages; k++) {
        openedFitKg[p] += read.allFitKg();
        openedTooWetKg[p] += read.allKg() - read.allFitKg();
        full(p, read);
      }
      for (int k = 0; k < packages; k++) {
        if (goesAtOnce(p)) {
          takeFirst(p);
        } else {
          putsIn(p);
        }
      }
    }
  }

  /** Mass that lay in a store on the first day, at the product's moisture basis, fit to sell. */
  public double openedFitKg(int p) {
    return openedFitKg[p];
  }

  public double openedTooWetKg(int p) {
    return openedTooWetKg[p];
  }

  private void schedule(int p) {
    double[] at = stores.pickUpS[p];
    if (at != null) {
      int next = ++nextPickUp[p];
      present.pending.set(
          present.slots.pickUp[p], next < at.length ? at[next] : Double.POSITIVE_INFINITY);
    }
  }

  /** A package of a product is full; what it holds. */
  void full(int p, BegunPackage one) {
    if (stores.has(p)) {
      queue[p].add(one);
      orders.packed(p, one.allFitKg());
    }
  }

  /** Whether the package that is full just now is out of the filler's way. */
  boolean takesIn(int p) {
    if (!stores.has(p)) {
      return true;
    }
    if (goesAtOnce(p)) {
      takeFirst(p);
      return true;
    }
    return enters(p);
  }

  private boolean goesAtOnce(int p) {
    return stores.pickUpS[p] == null && orders.openKg(p) > 0;
  }

  private boolean enters(int p) {
    int store = stores.storeOf[p];
    if (!stores.hasRoom(p, books.levelKg(store))) {
      return false;
    }
    putsIn(p);
    return true;
  }

  /**
   * A package that was full together with another one, whose spout it shares, is put in besides.
   */
  void putsIn(int p) {
    inStore[p]++;
    books.changes(stores.storeOf[p], stores.packageKg[p], present.nowS);
  }

  /** A full package stays on its spout until there is room. */
  void waits(int spout, int p) {
    waiting[waits++] = spout;
    books.waits(stores.storeOf[p], 1, present.nowS);
  }

  /** Trucks come for a product. */
  public void pickUp(int p) {
    schedule(p);
    int load = 1;
    for (int truck = 0; truck < stores.atMost[p] && load > 0; truck++) {
      load = load(p);
      if (load > 0) {
        trucks[p]++;
        present.note(layout.naming.products.name(p), EventKind.PICKED_UP, load);
        take(p, load);
      }
    }
  }

  /** Packages that a truck leaves with: a full load, or what meets the order that is due next. */
  private int load(int p) {
    int full = stores.ofLoad[p];
    if (ordersOnly[p]) {
      full = Math.min(full, packagesOf(p, orders.openKg(p)));
    }
    if (inStore[p] >= full) {
      return full;
    }
    int next = packagesOf(p, orders.nextKg(p));
    return next <= inStore[p] ? next : 0;
  }

  /** First packages in the store that come to a mass fit to sell; endless where all are too few. */
  private int packagesOf(int p, double kg) {
    double sum = 0;
    for (int k = 0; k < inStore[p] && sum < kg * (1 - ROUNDING); k++) {
      queue[p].read(k, read);
      sum += read.allFitKg();
      if (sum >= kg * (1 - ROUNDING)) {
        return k + 1;
      }
    }
    return kg > 0 ? Integer.MAX_VALUE : 0;
  }

  private void take(int p, int packages) {
    for (int k = 0; k < packages; k++) {
      takeFirst(p);
    }
    inStore[p] -= packages;
    books.changes(stores.storeOf[p], -packages * stores.packageKg[p], present.nowS);
    letIn();
  }

  private void takeFirst(int p) {
    queue[p].read(0, read);
    queue[p].removeFirst();
    left[p]++;
    for (int l = 0; l < layout.lines; l++) {
      leftFitKg[l * products + p] += read.fitKg[l];
      leftTooWetKg[l * products + p] += read.tooWetKg[l];
    }
    filling.grades.leaves(p, read);
    orders.left(p, read.allFitKg());
  }

  /** Packages that waited for room go in, in turn, as far as they find some. */
  private void letIn() {
    int kept = 0;
    int had = waits;
    for (int i = 0; i < had; i++) {
      int spout = waiting[i];
      int p = filling.fullOn(spout);
      if (enters(p)) {
        books.waits(stores.storeOf[p], -1, present.nowS);
        filling.hasRoom(spout);
      } else {
        waiting[kept++] = spout;
      }
    }
    waits = kept;
  }

  /**
   * Mass that packages hold which have not left, at the product's moisture basis, begun ones out.
   */
  public double heldKg(int p) {
    double sum = 0;
    for (int k = 0; stores.has(p) && k < queue[p].count(); k++) {
      queue[p].read(k, read);
      sum += read.allKg();
    }
    return sum;
  }

  /** What a product whose packages are paid by what is in them would earn if all had left. */
  public double gradedRevenueOfAll(int p) {
    return filling.grades.revenueOfAll(p, queue[p], read);
  }
}
