package hurdline.simulation.results;

import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.plant.Money;
import hurdline.plant.Packaging;
import hurdline.plant.Product;
import hurdline.simulation.activity.Crewing;
import hurdline.simulation.activity.Filling;
import hurdline.simulation.activity.Orders;
import hurdline.simulation.activity.ReplicationState;
import hurdline.simulation.activity.StateRecorder;
import hurdline.simulation.activity.Stopping;
import java.util.Arrays;

/**
 * What a replication earned and cost, in all and by line.
 *
 * <p>One file because all its lines of money add up to the one margin.
 */
final class MoneyResult {
  private static final double TONNE_KG = 1000;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final Stopping stopping;
  private final Filling filling;
  private final Orders orders;
  private final StateRecorder watching;
  private final MaterialBooks material;
  private final int products;
  private final Makers makers;
  private final Money money;
  private final ElectricityBill bill;
  private final MarketSales markets;
  private final FreightCost freight;
  private final PurgeSales purge;
  private final SoldMass sold;
  private final ProductStock productStock;
  private final CashView cash;
  private final double[] revenue; // by line, like all that follow
  private final double[] packages;
  private final double[] late;
  private final double[] freights;
  private final double[] drierFuel;
  private final double[] unsold; // worth of products that have not left
  private final double[] margin;
  private final CropPurchases purchases;
  private final CoverCost covers;
  private final WageBill pay;
  private double marginOfAll;

  MoneyResult(
      ReplicationState present,
      Makers makers,
      Crewing crewing,
      Stopping stopping,
      Filling filling,
      Orders orders,
      StateRecorder watching,
      MaterialBooks material,
      CropPurchases purchases,
      CoverCost covers) {
    this.present = present;
    this.makers = makers;
    this.stopping = stopping;
    this.filling = filling;
    this.orders = orders;
    this.watching = watching;
    this.material = material;
    this.purchases = purchases;
    this.covers = covers;
    layout = present.layout;
    products = layout.naming.products.count();
    money = layout.plant.money().orElse(null);
    bill =
        new ElectricityBill(
            watching.power,
            present.roster.meter(),
            present.roster.months(),
            layout.plant.money().map(Money::tariff).orElse(null));
    revenue = new double[layout.lines];
    packages = new double[layout.lines];
    late = new double[layout.lines];
    sold = new SoldMass(layout, material, filling);
    productStock = new ProductStock(layout, orders, material, filling.goods, sold);
    markets = new MarketSales(present, sold, filling.grades);
    purge = new PurgeSales(layout, filling.purge);
    freight = new FreightCost(layout, orders, material, markets, sold);
    cash = new CashView(layout.plant, present.roster.years());
    freights = new double[layout.lines];
    drierFuel = new double[layout.lines];
    unsold = new double[layout.lines];
    margin = new double[layout.lines];
    pay = new WageBill(present, crewing, money, purchases::share);
  }

  /** Full packages of a product: those filled, and those that its pile would fill. */
  double packages(Product product) {
    int p = layout.naming.products.index(product.name());
    double full = 0;
    for (int m = 0; m < layout.machines; m++) {
      full += filling.full[m * products + p];
    }
    return full + packedOffLine(product, p);
  }

  /** Those of one package alone, of a product that is packed in several ways. */
  double packages(Product product, Packaging packaging) {
    int p = layout.naming.products.index(product.name());
    boolean own = product.packaging().filter(packaging.name()::equals).isPresent();
    return filling.full(p, packaging) + (own ? packedOffLine(product, p) : 0);
  }

  private double packedOffLine(Product product, int p) {
    return layout
        .plant
        .packaging(product)
        .map(packaging -> Math.floor(material.pileKg[p] / packaging.massKg() * (1 + 1e-12)))
        .orElse(0.0);
  }

  /** What all products have earned up to now. */
  double revenue() {
    double sum = 0;
    for (Product product : layout.plant.products()) {
      sum += revenue(product);
    }
    return sum;
  }

  /** All that was earned and paid up to now, shifts and changeovers by their start. */
  void put(OutcomeWriter tally) {
    if (money == null) {
      return;
    }
    workOut();
    double endS = present.nowS;
    bill.upTo(endS);
    double electricity = bill.total();
    double overhead = money.overheadPerS() * endS;
    double[] stops = stopping.cost;
    double wageSum = sum(pay.byLine) + pay.ofNoLine;
    double cropSum = sum(purchases.crops) + purchases.cropsOfNoLine;
    double stockSum = sum(purchases.stock) + purchases.stockOfNoLine;
    double costs =
        cropSum
            + wageSum
            + sum(packages)
            + sum(stops)
            + sum(late)
            + sum(freights)
            + sum(drierFuel)
            + covers.total();
    tally.put(Measure.MONEY_REVENUE, sum(revenue));
    tally.put(Measure.MONEY_CROP_COST, cropSum);
    tally.put(Measure.MONEY_WAGES, wageSum);
    bill.put(tally);
    tally.put(Measure.MONEY_PACKAGES, sum(packages));
    tally.put(Measure.MONEY_STOPS, sum(stops));
    tally.put(Measure.MONEY_LATE_PENALTIES, sum(late));
    if (freight.any()) {
      tally.put(Measure.MONEY_FREIGHT, sum(freights));
    }
    if (money.drierFuelPerKg() > 0) {
      tally.put(Measure.MONEY_DRIER_FUEL, sum(drierFuel));
    }
    tally.put(Measure.MONEY_OVERHEAD, overhead);
    tally.put(Measure.MONEY_STOCK_CHANGE, stockSum);
    if (productStock.any()) {
      tally.put(Measure.MONEY_PRODUCT_STOCK, sum(unsold));
    }
    marginOfAll = sum(revenue) + sum(unsold) + stockSum - costs - electricity - overhead;
    tally.put(Measure.MONEY_MARGIN, marginOfAll);
    covers.put(tally);
    purchases.put(tally);
    cash.put(tally, marginOfAll, purchases.interest(), endS);
    for (int l = 0; l < layout.lines; l++) {
      putLine(tally, l, stops[l]);
    }
    money.rent().ifPresent(rent -> putRent(tally, rent, marginOfAll));
  }

  /** What each product earned up to now. */
  void putProducts(OutcomeWriter tally) {
    for (Product product : layout.plant.products()) {
      if (money != null) {
        tally.put(Measure.PRODUCT_REVENUE, revenue(product), product.name());
        putStockWorth(tally, product);
      }
    }
    if (money != null) {
      freight.put(tally);
    }
  }

  /** Of what was made, at its moisture basis, that which found a buyer. */
  double soldKg(Product product) {
    int p = layout.naming.products.index(product.name());
    return orders.soldKg(product, sold.fitKg(p), sold.tooWetKg(p))
        - markets.unsoldKg(p)
        + purge.soldKg(product);
  }

  /** What first packages after changeovers bring. */
  PurgeSales purge() {
    return purge;
  }

  /** What markets do not take at the price. */
  MarketSales markets() {
    return markets;
  }

  /** What of a product has not left its store is worth. */
  void putStockWorth(OutcomeWriter tally, Product product) {
    if (product.storage().isPresent()) {
      int p = layout.naming.products.index(product.name());
      if (layout.stores.opensWith[p] > 0) {
        tally.put(Measure.PRODUCT_STOCK_WORTH_START, productStock.openedWorth(p), product.name());
      }
      tally.put(Measure.PRODUCT_STOCK_WORTH, stockWorth(product), product.name());
    }
  }

  /** What of each product has been sold. */
  SoldMass sold() {
    return sold;
  }

  /** What purge packages brought is no part of what goes through a store. */
  private double stockWorth(Product product) {
    return productStock.worth(product, revenue(product) - purge.revenue(product));
  }

  /** What of products has not left. */
  ProductStock productStock() {
    return productStock;
  }

  /** What it costs to haul products. */
  FreightCost freight() {
    return freight;
  }

  /** What a product earned up to now. */
  double revenue(Product product) {
    int p = layout.naming.products.index(product.name());
    double earned = filling.grades.has(p) ? filling.grades.revenue(p) : atOnePrice(product);
    return earned - markets.cost(p) + purge.revenue(product);
  }

  /** What a product would earn if all its packages were paid alike. */
  double atOnePrice(Product product) {
    int p = layout.naming.products.index(product.name());
    return orders.revenue(product, sold.fitKg(p)) + Orders.docked(product, sold.tooWetKg(p));
  }

  private void putRent(OutcomeWriter tally, Money.Rent rent, double all) {
    int line = layout.naming.lines.index(rent.line());
    double paid = rent.fixedPerS() * present.nowS + rent.perKg() * material.fedKg[line];
    tally.put(Measure.MONEY_RENT, paid);
    tally.put(Measure.MONEY_OWNER, all - margin[line] + paid);
    tally.put(Measure.MONEY_TENANT, margin[line] - paid);
  }

  private void putLine(OutcomeWriter tally, int l, double stops) {
    String line = layout.naming.lines.name(l);
    margin[l] =
        revenue[l]
            + unsold[l]
            + purchases.stock[l]
            - purchases.crops[l]
            - pay.byLine[l]
            - packages[l]
            - stops
            - late[l]
            - freights[l]
            - drierFuel[l]
            - covers.byLine[l];
    double fed = material.fedKg[l] / TONNE_KG;
    tally.put(Measure.MONEY_LINE_REVENUE, revenue[l], line);
    tally.put(Measure.MONEY_LINE_CROP_COST, purchases.crops[l], line);
    tally.put(Measure.MONEY_LINE_WAGES, pay.byLine[l], line);
    tally.put(Measure.MONEY_LINE_PACKAGES, packages[l], line);
    tally.put(Measure.MONEY_LINE_STOPS, stops, line);
    tally.put(Measure.MONEY_LINE_LATE_PENALTIES, late[l], line);
    if (freight.any()) {
      tally.put(Measure.MONEY_LINE_FREIGHT, freights[l], line);
    }
    if (money.drierFuelPerKg() > 0) {
      tally.put(Measure.MONEY_LINE_DRIER_FUEL, drierFuel[l], line);
    }
    if (covers.any()) {
      tally.put(Measure.MONEY_LINE_COVERS, covers.byLine[l], line);
    }
    tally.put(Measure.MONEY_LINE_STOCK_CHANGE, purchases.stock[l], line);
    if (productStock.any()) {
      tally.put(Measure.MONEY_LINE_PRODUCT_STOCK, unsold[l], line);
    }
    tally.put(Measure.MONEY_LINE_MARGIN, margin[l], line);
    tally.put(Measure.MONEY_LINE_MARGIN_PER_TONNE, fed > 0 ? margin[l] / fed : Double.NaN, line);
  }

  /** What the plant has earned; to be asked after {@link #put}. */
  double margin() {
    return marginOfAll;
  }

  /** What a line has earned before electricity and overhead; to be asked after {@link #put}. */
  double margin(int line) {
    return margin[line];
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  private void workOut() {
    Arrays.fill(revenue, 0);
    Arrays.fill(late, 0);
    Arrays.fill(freights, 0);
    Arrays.fill(unsold, 0);
    filling.book();
    System.arraycopy(filling.cost, 0, packages, 0, packages.length);
    for (Product product : layout.plant.products()) {
      ofProduct(product);
    }
    purchases.workOut(present.nowS);
    covers.workOut();
    for (int l = 0; l < layout.lines; l++) {
      drierFuel[l] = material.driedKg[l] * money.drierFuelPerKg();
    }
    pay.workOut();
  }

  /**
   * Shares a product's money among the lines that made it: what was sold by mass sold, costs by
   * mass made.
   */
  private void ofProduct(Product product) {
    int p = layout.naming.products.index(product.name());
    if (filling.grades.has(p)) {
      share(filling.grades.fitRevenue(p) - markets.cost(p), filling.grades.fitKgOfLines(p), 1, 0);
      share(filling.grades.docked(p), filling.grades.tooWetKgOfLines(p), 1, 0);
    } else {
      double earned = orders.revenue(product, sold.fitKg(p)) - markets.cost(p);
      share(earned, sold.fitOfLines(p), products, p);
      share(Orders.docked(product, sold.tooWetKg(p)), sold.tooWetOfLines(p), products, p);
    }
    share(purge.revenue(product), purge.kgOfLines(product), 1, 0);
    productStock.share(p, stockWorth(product), makers.first(p), unsold);
    double made = material.productKg(p);
    double charged = orders.lateCost(p, present.nowS);
    double hauled = freight.of(product);
    double each = layout.plant.packaging(product).map(Packaging::cost).orElse(0.0);
    double offLine = packedOffLine(product, p) * each;
    int maker = makers.first(p);
    for (int l = 0; l < layout.lines; l++) {
      double share = made > 0 ? material.productKg[l * products + p] / made : l == maker ? 1 : 0;
      late[l] += charged * share;
      freights[l] += hauled * share;
      packages[l] += offLine * share;
    }
  }

  /** Shares what a product earned among the lines by masses of theirs, [line * each + at]. */
  private void share(double earned, double[] kg, int each, int at) {
    double all = 0;
    for (int l = 0; l < layout.lines; l++) {
      all += kg[l * each + at];
    }
    for (int l = 0; l < layout.lines && all > 0; l++) {
      revenue[l] += earned * kg[l * each + at] / all;
    }
  }

  double[] wagesByMonth() {
    return pay.byMonth;
  }

  /** What a month's demand costs. */
  double demand(int month) {
    return bill.demand(month);
  }

  /** What electricity costs. */
  ElectricityBill bill() {
    return bill;
  }
}
