package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Grading;
import hurdline.plant.Product;
import java.util.ArrayList;
import java.util.List;

/**
 * What is in each package of the products whose price goes by it, and what all packages are worth.
 *
 * <p>With x the share of the component in a package's dry matter and f the factor, its mass m
 * counts as m · f(x) at the product's price; a begun package counts with what is in it so far, one
 * that waits in a store when it leaves. Mass fit to sell goes to the product's orders in turn,
 * package by package, and then to the product's own price.
 *
 * <p>Nothing here is touched in a plant without such a price.
 */
public final class PackageGrades {
  private static final double POINT = 0.01;

  private final CompiledLines layout;
  private final Fillers fillers;
  private final Product[] product; // null where its packages are paid alike
  private final List<List<Product.Order>> orders = new ArrayList<>(); // [product] by due date
  private final PackageContents contents;
  private final PurgePackages purge;
  private final GradedSales[] sold; // [product]
  private final GradedSales[] soldNow; // the same with what begun packages hold

  PackageGrades(
      ReplicationState present, Fillers fillers, PackageContents contents, PurgePackages purge) {
    this.fillers = fillers;
    this.contents = contents;
    this.purge = purge;
    layout = present.layout;
    int products = layout.naming.products.count();
    product = new Product[products];
    sold = new GradedSales[products];
    soldNow = new GradedSales[products];
    for (int p = 0; p < products; p++) {
      orders.add(List.of());
    }
    for (Product each : layout.plant.products()) {
      int p = layout.naming.products.index(each.name());
      if (layout.selling.grading(p) != null) {
        product[p] = each;
        orders.set(p, each.ordersByDue());
        sold[p] = new GradedSales(each.orders().size(), layout.lines);
        soldNow[p] = new GradedSales(each.orders().size(), layout.lines);
      }
    }
  }

  void reset() {
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

  /** A package of a product is full, and sold unless it waits in a store. */
  void full(int p, BegunPackage one) {
    if (has(p)) {
      sold[p].count(one.share());
      if (!layout.stores.has(p)) {
        add(one, p, sold[p]);
      }
    }
  }

  /** A package of a product leaves its store. */
  void leaves(int p, BegunPackage one) {
    if (has(p)) {
      add(one, p, sold[p]);
    }
  }

  private void add(BegunPackage one, int p, GradedSales to) {
    Grading grading = layout.selling.grading(p);
    double share = one.share();
    to.add(one, grading.factor(share), grading.factor(Math.min(1, share + POINT)), orders.get(p));
  }

  /**
   * What all packages that are sold hold by now: begun ones too, unless they must leave a store.
   */
  private GradedSales now(int p) {
    GradedSales now = soldNow[p];
    now.set(sold[p]);
    if (!layout.stores.has(p)) {
      addBegun(p, now);
    }
    return now;
  }

  private void addBegun(int p, GradedSales to) {
    if (purge.goesOn(p)) {
      return;
    }
    for (int m : fillers.packers) {
      BegunPackage one = contents.now(m, p);
      if (one != null) {
        add(one, p, to);
      }
    }
  }

  /** What a product would earn by now if all that waits had left its store, begun packages too. */
  double revenueOfAll(int p, PackageQueue waits, BegunPackage read) {
    GradedSales all = soldNow[p];
    all.set(sold[p]);
    for (int k = 0; k < waits.count(); k++) {
      waits.read(k, read);
      add(read, p, all);
    }
    addBegun(p, all);
    return revenue(p, all.fit) + Orders.docked(product[p], all.tooWet);
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
