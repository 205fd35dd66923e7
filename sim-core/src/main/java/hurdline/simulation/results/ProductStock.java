package hurdline.simulation.results;

import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.plant.Product;
import hurdline.simulation.activity.FinishedGoods;
import hurdline.simulation.activity.Orders;
import java.util.OptionalDouble;

/**
 * What of products with a store has been made, or lay there on the first day, and has not left,
 * begun packages too, and what it is worth: the file's worth, or what it would bring if it left
 * now.
 */
final class ProductStock {
  private static final double TONNE_KG = 1000;
  private static final double HOUR_S = 3600;

  private final CompiledLines layout;
  private final Orders orders;
  private final MaterialBooks material;
  private final FinishedGoods goods;
  private final SoldMass sold;
  private final int products;
  private final double[] openedWorth; // [product]

  ProductStock(
      CompiledLines layout,
      Orders orders,
      MaterialBooks material,
      FinishedGoods goods,
      SoldMass sold) {
    this.layout = layout;
    this.orders = orders;
    this.material = material;
    this.goods = goods;
    this.sold = sold;
    products = layout.naming.products.count();
    openedWorth = new double[products];
  }

  /** What lies in the stores as the horizon begins is worth so much. */
  void open() {
    for (Product product : layout.plant.products()) {
      int p = layout.naming.products.index(product.name());
      openedWorth[p] =
          layout.stores.opensWith[p] == 0
              ? 0
              : product
                  .storage()
                  .flatMap(of -> of.worthPerKg().stream().boxed().findFirst())
                  .map(perKg -> perKg * worthyKg(product, p))
                  .orElseGet(() -> revenueOfAll(product, p));
    }
  }

  /** Of what lay there on the first day, less what is docked. */
  private double worthyKg(Product product, int p) {
    return goods.openedFitKg(p) + goods.openedTooWetKg(p) * (1 - product.moisture().dock());
  }

  double openedWorth(int product) {
    return openedWorth[product];
  }

  /** What a product would earn by now if all that was there or is made had left. */
  private double revenueOfAll(Product product, int p) {
    return product.cleanliness().isPresent()
        ? goods.gradedRevenueOfAll(p)
        : orders.revenue(product, goods.openedFitKg(p) + sold.madeFitKg(p))
            + Orders.docked(product, goods.openedTooWetKg(p) + sold.madeTooWetKg(p));
  }

  /** Whether any product has a store. */
  boolean any() {
    return layout.plant.products().stream().anyMatch(product -> product.storage().isPresent());
  }

  /**
   * @param earned what of the product has left its store has earned up to now
   */
  double worth(Product product, double earned) {
    if (product.storage().isEmpty()) {
      return 0;
    }
    int p = layout.naming.products.index(product.name());
    OptionalDouble perKg = product.storage().get().worthPerKg();
    if (perKg.isPresent()) {
      double tooWetKg = sold.madeTooWetKg(p) - sold.tooWetKg(p);
      double madeKg =
          sold.madeFitKg(p) - sold.fitKg(p) + tooWetKg * (1 - product.moisture().dock());
      return perKg.getAsDouble() * (worthyKg(product, p) + madeKg);
    }
    return revenueOfAll(product, p) - earned;
  }

  /**
   * Shares a worth among lines by what of theirs has not left, less what lay there on the first day
   * for the line that makes it first.
   */
  void share(int p, double worth, int maker, double[] ofLine) {
    ofLine[maker] -= openedWorth[p];
    double all = 0;
    for (int l = 0; l < layout.lines; l++) {
      all += stockKg(l, p, maker);
    }
    for (int l = 0; l < layout.lines && all > 0; l++) {
      ofLine[l] += worth * stockKg(l, p, maker) / all;
    }
  }

  private double stockKg(int line, int p, int maker) {
    int at = line * products + p;
    double opened = line == maker ? goods.openedFitKg(p) + goods.openedTooWetKg(p) : 0;
    double kg = opened + sold.madeFitOfLines(p)[at] + sold.madeTooWetOfLines(p)[at];
    return Math.max(0, kg - sold.fitOfLines(p)[at] - sold.tooWetOfLines(p)[at]);
  }

  /** What products with a store have left, and what is left of them. */
  void putProducts(OutcomeWriter tally) {
    for (Product product : layout.plant.products()) {
      if (product.storage().isPresent()) {
        int p = layout.naming.products.index(product.name());
        double leftKg = sold.leftAsIsKg(p);
        tally.put(Measure.PRODUCT_LEFT, leftKg / TONNE_KG, product.name());
        double openedKg = layout.stores.opensWith[p] * layout.stores.packageKg[p];
        if (openedKg > 0) {
          tally.put(Measure.PRODUCT_STOCK_START, openedKg / TONNE_KG, product.name());
        }
        double stockKg =
            Math.max(0, openedKg + material.productKg(p) - leftKg - sold.purgeAsIsKg(p));
        tally.put(Measure.PRODUCT_STOCK, stockKg / TONNE_KG, product.name());
        sold.trucks(product)
            .ifPresent(many -> tally.put(Measure.PRODUCT_PICK_UPS, many, product.name()));
      }
    }
  }

  /** Levels of the stores up to the end. */
  void putStores(OutcomeWriter tally, double endS) {
    for (int s = 0; s < layout.stores.count; s++) {
      String name = layout.naming.stores.name(s);
      tally.put(Measure.STORE_LEVEL_MEAN, goods.books.kgSeconds(s) / endS / TONNE_KG, name);
      tally.put(Measure.STORE_LEVEL_PEAK, goods.books.peakKg(s) / TONNE_KG, name);
      tally.put(Measure.STORE_LEVEL_END, goods.books.levelKg(s) / TONNE_KG, name);
      tally.put(Measure.STORE_HOURS_FULL, goods.books.fullS(s) / HOUR_S, name);
    }
  }

  /** [store][day] highest level of the day, kg. */
  double[][] levels(int days) {
    double[][] levels = new double[layout.stores.count][days];
    for (int s = 0; s < levels.length; s++) {
      for (int day = 0; day < days; day++) {
        levels[s][day] = goods.books.dayPeakKg(s, day);
      }
    }
    return levels;
  }
}
