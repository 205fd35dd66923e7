package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Roster;
import hurdline.compiled.Stretch;
import hurdline.event.FutureEvents;
import hurdline.measure.EventKind;
import hurdline.plant.Product;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Orders, met in due-date order from what of their product is fit to sell, at its moisture basis,
 * as it is made or, where it has a store, as it leaves that.
 */
public final class Orders {
  private static final double DAY_S = 86_400;
  private static final double ROUNDING = 1e-9;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final Filling filling;
  private final int products;
  private final Product.Order[][] order;
  private final double[][] dueS;
  private final double[][] metAtKg; // running total of the product at which each order is met
  private final int[] asMade; // products whose orders are met as they are made
  private final int[][]
      maker; // [product] heads and their sinks that may make it, one pair after another
  private final double[] madeKg; // or has left its store
  private final double[] madeKgPerS;

  /** [product] orders met so far, and when. */
  final int[] met;

  private final double[][] metS;

  private final double[] packedKg; // [product] of what has a store
  private final int[] covered; // [product] orders for which enough is packed
  private boolean newlyCovered;

  public Orders(ReplicationState present, Filling filling) {
    this.present = present;
    this.filling = filling;
    layout = present.layout;
    Roster roster = present.roster;
    products = layout.naming.products.count();
    order = new Product.Order[products][];
    dueS = new double[products][];
    metAtKg = new double[products][];
    metS = new double[products][];
    for (Product product : layout.plant.products()) {
      int p = layout.naming.products.index(product.name());
      List<Product.Order> byDue = product.ordersByDue();
      order[p] = byDue.toArray(Product.Order[]::new);
      dueS[p] = byDue.stream().mapToDouble(o -> (roster.day(o.due()) + 1) * DAY_S).toArray();
      metAtKg[p] = new double[order[p].length];
      metS[p] = new double[order[p].length];
      double sum = 0;
      for (int i = 0; i < order[p].length; i++) {
        sum += order[p][i].massKg();
        metAtKg[p][i] = sum;
      }
    }
    asMade =
        IntStream.range(0, products)
            .filter(p -> order[p].length > 0 && !layout.stores.has(p))
            .toArray();
    maker = new int[products][];
    for (int p : asMade) {
      maker[p] = maker(p);
    }
    madeKg = new double[products];
    madeKgPerS = new double[products];
    met = new int[products];
    packedKg = new double[products];
    covered = new int[products];
    filling.goods.serves(this);
  }

  public void reset() {
    Arrays.fill(madeKg, 0);
    Arrays.fill(madeKgPerS, 0);
    Arrays.fill(met, 0);
    Arrays.fill(packedKg, 0);
    Arrays.fill(covered, 0);
    newlyCovered = false;
  }

  void advance(double dtS) {
    for (int p : asMade) {
      madeKg[p] += madeKgPerS[p] * dtS;
    }
  }

  void schedule() {
    for (int p : asMade) {
      if (met[p] < order[p].length) {
        madeKgPerS[p] = rate(p);
        double left = Math.max(0, metAtKg[p][met[p]] - madeKg[p]);
        present.pending.set(
            present.slots.order[p],
            madeKgPerS[p] > 0 ? present.nowS + left / madeKgPerS[p] : Double.POSITIVE_INFINITY);
      }
    }
  }

  private int[] maker(int product) {
    IntStream.Builder pairs = IntStream.builder();
    for (int h = 0; h < layout.heads; h++) {
      Stretch s = layout.stretch[h];
      for (int k = 0; k < s.sinks; k++) {
        boolean made =
            s.sinkKind[k] == Stretch.Sink.PACKED_FROM_MILL
                || (s.sinkKind[k] == Stretch.Sink.PILED || s.sinkKind[k] == Stretch.Sink.PACKED)
                    && s.sinkTarget[k] == product;
        if (made) {
          pairs.add(h).add(k);
        }
      }
    }
    return pairs.build().toArray();
  }

  private double rate(int product) {
    double sum = 0;
    for (int i = 0; i < maker[product].length; i += 2) {
      int h = maker[product][i];
      int sink = maker[product][i + 1];
      double rate = present.network.rateKgPerS(h);
      if (rate > 0 && filling.productOf(layout.stretch[h], sink) == product) {
        sum += rate * fitKg(product, h, sink);
      }
    }
    return sum;
  }

  /** Mass at the product's moisture basis per kg that a head draws; none where that is too wet. */
  private double fitKg(int product, int head, int sink) {
    double[] perKg = present.network.sinkKg(head);
    int from = present.network.sinkAt(head, sink);
    double dryKg = 0;
    double waterKg = 0;
    for (int c : present.network.landed(head, sink)) {
      dryKg += perKg[from + 2 * c];
      waterKg += perKg[from + 2 * c + 1];
    }
    return layout.selling.isTooWet(product, dryKg, waterKg)
        ? 0
        : layout.selling.paidKg(product, dryKg, waterKg);
  }

  /** The product's next order is met. */
  public void met(int product) {
    present.pending.clear(present.slots.order[product]);
    metS[product][met[product]] = present.nowS;
    met[product]++;
    present.note(layout.naming.products.name(product), EventKind.ORDER_MET, met[product]);
    present.flowsChanged = true;
  }

  /** A full package of a product with a store: what it holds is there for the next order. */
  void packed(int product, double fitKg) {
    packedKg[product] += fitKg;
    while (isReached(product, covered[product], packedKg[product])) {
      covered[product]++;
      newlyCovered = true;
    }
  }

  /** Whether more orders are covered by what is packed than when last asked. */
  public boolean newlyCovered() {
    boolean newly = newlyCovered;
    newlyCovered = false;
    return newly;
  }

  /** Mass of a product has left its store. */
  void left(int product, double fitKg) {
    madeKg[product] += fitKg;
    while (isReached(product, met[product], madeKg[product])) {
      met(product);
    }
  }

  private boolean isReached(int product, int i, double kg) {
    return i < order[product].length && kg >= metAtKg[product][i] * (1 - ROUNDING);
  }

  /** What is still to leave for the next order, 0 where none is open. */
  double nextKg(int product) {
    return met[product] < order[product].length ? openKg(product, met[product]) : 0;
  }

  /** What is still to leave for all orders. */
  double openKg(int product) {
    int last = order[product].length - 1;
    return met[product] <= last ? openKg(product, last) : 0;
  }

  private double openKg(int product, int i) {
    return Math.max(0, metAtKg[product][i] - madeKg[product]);
  }

  /**
   * Due time of a product's next order for which there is more to make; infinite if there is none.
   */
  double nextDueS(int product) {
    int next = layout.stores.has(product) ? covered[product] : met[product];
    return next < order[product].length ? dueS[product][next] : Double.POSITIVE_INFINITY;
  }

  /** Days begun after each order's due date, added up. */
  public double lateDays(int product, double endS) {
    double days = 0;
    for (int i = 0; i < order[product].length; i++) {
      days += lateDays(product, i, endS);
    }
    return days;
  }

  public double lateCost(int product, double endS) {
    double cost = 0;
    for (int i = 0; i < order[product].length; i++) {
      cost += lateCost(product, i, endS);
    }
    return cost;
  }

  /** How many orders a product has. */
  public int count(int product) {
    return order[product].length;
  }

  /**
   * Day of the horizon, from 1, on which an order was met, in due-date order; NaN if it was not.
   */
  public double metDay(int product, int i) {
    return i < met[product]
        ? Math.max(1, Math.ceil((metS[product][i] - FutureEvents.instantS()) / DAY_S))
        : Double.NaN;
  }

  /** What of an order was not made or has not left, at the product's moisture basis. */
  public double missingKg(int product, int i) {
    return i < met[product]
        ? 0
        : Math.min(order[product][i].massKg(), Math.max(0, metAtKg[product][i] - madeKg[product]));
  }

  /** What is charged for an order that is late. */
  public double lateCost(int product, int i, double endS) {
    return lateDays(product, i, endS) * order[product][i].latePerDay();
  }

  /** Days begun after an order's due date until it was met, or to the end. */
  public double lateDays(int product, int i, double endS) {
    double whenS = i < met[product] ? metS[product][i] : endS;
    return Math.max(0, Math.ceil((whenS - dueS[product][i] - FutureEvents.instantS()) / DAY_S));
  }

  /**
   * What a product that is fit to sell earns: ordered mass at its order's price, the rest at the
   * product's, if it sells.
   */
  public double revenue(Product product, double fitKg) {
    int p = layout.naming.products.index(product.name());
    double earned = 0;
    double left = fitKg;
    for (Product.Order one : order[p]) {
      double taken = Math.min(left, one.massKg());
      earned += taken * one.pricePerKg().orElse(product.pricePerKg());
      left -= taken;
    }
    return product.sellsOrdersOnly() ? earned : earned + left * product.pricePerKg();
  }

  /** What a product that is too wet earns: it fills no order. */
  public static double docked(Product product, double tooWetKg) {
    return product.sellsOrdersOnly()
        ? 0
        : tooWetKg * product.pricePerKg() * (1 - product.moisture().dock());
  }

  /** Of what was made, at its moisture basis, that which found a buyer. */
  public double soldKg(Product product, double fitKg, double tooWetKg) {
    if (product.sellsOrdersOnly()) {
      double ordered = product.orders().stream().mapToDouble(Product.Order::massKg).sum();
      return Math.min(fitKg, ordered);
    }
    return product.moisture().dock() < 1 ? fitKg + tooWetKg : fitKg;
  }
}
