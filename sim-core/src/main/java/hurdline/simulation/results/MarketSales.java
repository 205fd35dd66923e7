package hurdline.simulation.results;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Periods;
import hurdline.measure.Measure;
import hurdline.plant.Market;
import hurdline.plant.Product;
import hurdline.simulation.activity.PackageGrades;
import hurdline.simulation.activity.ReplicationState;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** What of each product its market took below the price, or not at all, period by period. */
final class MarketSales {
  private static final double TONNE_KG = 1000;

  private final CompiledLines layout;
  private final Sale[] sale; // [product] null where all is paid alike
  private final List<Sale> all;

  MarketSales(ReplicationState present, SoldMass sold, PackageGrades grades) {
    layout = present.layout;
    sale = new Sale[layout.naming.products.count()];
    for (Product product : layout.plant.products()) {
      int p = layout.naming.products.index(product.name());
      product
          .market()
          .ifPresent(
              market -> {
                boolean monthly = market.per() == Market.Per.MONTH;
                Periods periods = monthly ? present.roster.months() : present.roster.years();
                sale[p] = new Sale(product, market, periods, sold, grades, p);
              });
    }
    all = Arrays.stream(sale).filter(Objects::nonNull).toList();
  }

  void reset() {
    all.forEach(Sale::reset);
  }

  /** All that heads have drawn is booked; closes the periods that end now. */
  void book(double nowS) {
    for (Sale one : all) {
      one.book(nowS);
    }
  }

  /** What was sold below the price, or not at all, and what that took from the revenue. */
  void put(OutcomeWriter tally, Product product) {
    int p = layout.naming.products.index(product.name());
    if (has(p)) {
      tally.put(Measure.PRODUCT_BEYOND_MARKET, sale[p].beyondKg() / TONNE_KG, product.name());
      if (layout.plant.money().isPresent()) {
        tally.put(Measure.PRODUCT_MARKET_COST, cost(p), product.name());
      }
    }
  }

  private boolean has(int product) {
    return sale[product] != null;
  }

  /** What finds no buyer, at the product's moisture basis. */
  double unsoldKg(int product) {
    return has(product) ? sale[product].unsoldKg() : 0;
  }

  /** What the product would have earned more had all been taken at the price. */
  double cost(int product) {
    return has(product) ? sale[product].shortKg() * sale[product].product.pricePerKg() : 0;
  }

  /**
   * By how much less its market costs if each package held a percentage point more of what it is
   * graded by.
   */
  double pointCost(int product) {
    return has(product)
        ? (sale[product].shortKg() - sale[product].shortOfPointKg())
            * sale[product].product.pricePerKg()
        : 0;
  }

  /**
   * Of one product. What its packages are graded at is paid at the period's mean factor, so that it
   * does not matter which of them was made first.
   */
  private static final class Sale {
    private final Product product;
    private final Market market;
    private final Periods periods;
    private final SoldMass sold;
    private final PackageGrades grades;
    private final int p;
    private final double orderedKg;
    private int period;
    private double fromKg; // not ordered, as the period began
    private double fromGradedKg;
    private double fromOfPointKg;
    private double beyondKg; // of periods that are over, like all that follow
    private double unsoldKg;
    private double shortKg;
    private double shortOfPointKg;

    Sale(
        Product product,
        Market market,
        Periods periods,
        SoldMass sold,
        PackageGrades grades,
        int p) {
      this.product = product;
      this.market = market;
      this.periods = periods;
      this.sold = sold;
      this.grades = grades;
      this.p = p;
      orderedKg = product.orders().stream().mapToDouble(Product.Order::massKg).sum();
    }

    void reset() {
      period = 0;
      fromKg = 0;
      fromGradedKg = 0;
      fromOfPointKg = 0;
      beyondKg = 0;
      unsoldKg = 0;
      shortKg = 0;
      shortOfPointKg = 0;
    }

    void book(double nowS) {
      if (period < periods.count() && nowS == periods.toS(period)) {
        beyondKg = beyondKg();
        unsoldKg = unsoldKg();
        shortKg = shortKg();
        shortOfPointKg = shortOfPointKg();
        fromKg = freeKg();
        fromGradedKg = gradedKg();
        fromOfPointKg = ofPointKg();
        period++;
      }
    }

    /** Sold up to now, fit and not ordered. */
    private double freeKg() {
      return Math.max(0, sold.fitKg(p) - orderedKg);
    }

    /** The same, each package times its factor. */
    private double gradedKg() {
      return grades.has(p) ? grades.freeKg(p) : freeKg();
    }

    private double ofPointKg() {
      return grades.has(p) ? grades.freeOfPointKg(p) : freeKg();
    }

    private double inPeriodKg() {
      return freeKg() - fromKg;
    }

    double beyondKg() {
      return beyondKg + Math.max(0, inPeriodKg() - market.takesKg());
    }

    double unsoldKg() {
      return unsoldKg + inPeriodKg() - market.soldKg(inPeriodKg());
    }

    /** Mass that would earn at the price what its market's lower prices take. */
    double shortKg() {
      return shortKg + (gradedKg() - fromGradedKg) * lostShare();
    }

    double shortOfPointKg() {
      return shortOfPointKg + (ofPointKg() - fromOfPointKg) * lostShare();
    }

    private double lostShare() {
      double kg = inPeriodKg();
      return kg > 0 ? 1 - market.paidKg(kg) / kg : 0;
    }
  }
}
