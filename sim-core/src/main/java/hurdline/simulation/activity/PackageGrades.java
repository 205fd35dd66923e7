package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Grading;
import hurdline.plant.Product;
import java.util.ArrayList;
import java.util.List;

/**
 * What is in each package of the products whose price goes by it, and what all packages are worth.
 *
 * <p>Masses flow into the package that a filler has begun at the rates that hold, lot after lot,
 * and are its own once it is full: what all packages hold is what was made. With x the share of the
 * component in a package's dry matter and f the factor, its mass m counts as m · f(x) at the
 * product's price; a begun package counts with what is in it so far. Mass fit to sell goes to the
 * product's orders in turn, package by package, and then to the product's own price.
 *
 * <p>Nothing here is touched in a plant without such a price.
 */
public final class PackageGrades {
  private static final double POINT = 0.01;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final int products;
  private final int lines;
  private final Fillers fillers;
  private final Product[] product; // null where its packages are paid alike
  private final List<List<Product.Order>> orders = new ArrayList<>(); // [product] by due date
  private final boolean[] isGraded; // by machine
  private final BegunPackage[] open; // [machine * products + product]
  private final GradedSales[] sold; // [product]
  private final GradedSales[] soldNow; // the same with what begun packages hold

  PackageGrades(ReplicationState present, Fillers fillers) {
    this.present = present;
    this.fillers = fillers;
    layout = present.layout;
    products = layout.naming.products.count();
    lines = layout.lines;
    product = new Product[products];
    sold = new GradedSales[products];
    soldNow = new GradedSales[products];
    open = new BegunPackage[layout.machines * products];
    for (int p = 0; p < products; p++) {
      orders.add(List.of());
    }
    for (Product each : layout.plant.products()) {
      int p = layout.naming.products.index(each.name());
      if (layout.selling.grading(p) != null) {
        product[p] = each;
        orders.set(p, each.ordersByDue());
        sold[p] = new GradedSales(each.orders().size(), lines);
        soldNow[p] = new GradedSales(each.orders().size(), lines);
      }
    }
    isGraded = new boolean[layout.machines];
    for (int m : fillers.packers) {
      for (int p : fillers.made[m]) {
        isGraded[m] |= has(p);
        open[m * products + p] = has(p) ? new BegunPackage(lines) : null;
      }
    }
  }

  void reset() {
    for (BegunPackage one : open) {
      if (one != null) {
        one.reset();
      }
    }
    for (GradedSales one : sold) {
      if (one != null) {
        one.reset();
      }
    }
  }

  /** Whether packages of a product are paid by what is in them. */
  public boolean has(int product) {
    return this.product[product] != null;
  }

  /** Rates at a filler change: what has flowed since they last did is in its begun packages. */
  void flows(int m) {
    if (!isGraded[m]) {
      return;
    }
    for (int p : fillers.made[m]) {
      if (has(p)) {
        open[m * products + p].carry(present.nowS);
        open[m * products + p].stand();
      }
    }
    int[] heads = fillers.head[m];
    for (int i = 0; i < heads.length; i++) {
      double rate = present.network.rateKgPerS(heads[i]);
      int p =
          fillers.productOf(layout.stretch[heads[i]], fillers.sink[m][i], present.network.screen);
      if (rate > 0 && p >= 0 && has(p)) {
        flows(open[m * products + p], p, heads[i], fillers.sink[m][i], rate);
      }
    }
  }

  private void flows(BegunPackage one, int p, int head, int sink, double rate) {
    double[] perKg = present.network.sinkKg(head);
    int from = present.network.sinkAt(head, sink);
    int component = layout.selling.grading(p).component;
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

  /** A filler's package of a product is full. */
  void full(int m, int p) {
    if (has(p)) {
      BegunPackage one = open[m * products + p];
      one.carry(present.nowS);
      add(one, p, sold[p]);
      sold[p].count(one.share());
      one.empty();
    }
  }

  private void add(BegunPackage one, int p, GradedSales to) {
    Grading grading = layout.selling.grading(p);
    double share = one.share();
    to.add(one, grading.factor(share), grading.factor(Math.min(1, share + POINT)), orders.get(p));
  }

  /** What all packages of a product hold by now, begun ones too. */
  private GradedSales now(int p) {
    GradedSales now = soldNow[p];
    now.set(sold[p]);
    for (int m : fillers.packers) {
      BegunPackage one = open[m * products + p];
      if (one != null) {
        one.carry(present.nowS);
        add(one, p, now);
      }
    }
    return now;
  }

  /** What a product has earned by now. */
  public double revenue(int p) {
    return fitRevenue(p) + docked(p);
  }

  /** Of it, what is fit to sell. */
  public double fitRevenue(int p) {
    return revenue(p, now(p).fit);
  }

  /** Of it, what is too wet. */
  public double docked(int p) {
    return Orders.docked(product[p], now(p).tooWet);
  }

  /** Mass fit to sell that no order takes, each package's times its factor. */
  public double freeKg(int p) {
    return now(p).fit[orders.get(p).size()];
  }

  /** The same with one percentage point more of the component in each package. */
  public double freeOfPointKg(int p) {
    return now(p).fitOfPoint[orders.get(p).size()];
  }

  private double revenue(int p, double[] kg) {
    Product of = product[p];
    List<Product.Order> ordered = orders.get(p);
    double earned = of.sellsOrdersOnly() ? 0 : kg[ordered.size()] * of.pricePerKg();
    for (int at = 0; at < ordered.size(); at++) {
      earned += kg[at] * ordered.get(at).pricePerKg().orElse(of.pricePerKg());
    }
    return earned;
  }

  /** What one percentage point more of the component in each package would take from revenue. */
  public double pointCost(int p) {
    GradedSales now = now(p);
    double ofPoint = revenue(p, now.fitOfPoint) + Orders.docked(product[p], now.tooWetOfPoint);
    return revenue(p, now.fit) + Orders.docked(product[p], now.tooWet) - ofPoint;
  }

  /** [line] mass fit to sell, each package's times its factor; read before the next question. */
  public double[] fitKgOfLines(int p) {
    return now(p).fitOfLine;
  }

  /** The same of what is too wet. */
  public double[] tooWetKgOfLines(int p) {
    return now(p).tooWetOfLine;
  }

  /** Mean share over full packages; NaN where there is none. */
  public double meanShare(int p) {
    return sold[p].packages > 0 ? sold[p].meanShare : Double.NaN;
  }

  /** Standard deviation between full packages; NaN for fewer than two. */
  public double shareDeviation(int p) {
    return sold[p].packages > 1 ? Math.sqrt(sold[p].squares / (sold[p].packages - 1)) : Double.NaN;
  }
}
