package hurdline.simulation.results;

import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.plant.Product;
import hurdline.simulation.activity.PurgePackages;

/**
 * What the first packages after changeovers bring, and what their lower price takes from revenue.
 */
final class PurgeSales {
  private static final double TONNE_KG = 1000;

  private final CompiledLines layout;
  private final PurgePackages packages;
  private final double[] kg; // [line] of one product, written anew for each question

  PurgeSales(CompiledLines layout, PurgePackages packages) {
    this.layout = layout;
    this.packages = packages;
    kg = new double[layout.lines];
  }

  private int index(Product product) {
    return layout.naming.products.index(product.name());
  }

  /** What they have earned up to now. */
  double revenue(Product product) {
    return product.purge().isPresent()
        ? packages.kg(index(product)) * product.pricePerKg() * product.purge().get().factor()
        : 0;
  }

  /** Mass that found a buyer, at the product's moisture basis. */
  double soldKg(Product product) {
    boolean sells = product.purge().filter(of -> of.factor() > 0).isPresent();
    return sells ? packages.kg(index(product)) : 0;
  }

  /** [line] mass in purge packages; read before the next question. */
  double[] kgOfLines(Product product) {
    int p = index(product);
    int products = layout.naming.products.count();
    double[] fit = packages.fitKgOfLines(p);
    double[] tooWet = packages.tooWetKgOfLines(p);
    for (int l = 0; l < kg.length; l++) {
      kg[l] = packages.has(p) ? fit[l * products + p] + tooWet[l * products + p] : 0;
    }
    return kg;
  }

  void put(OutcomeWriter tally, Product product) {
    int p = index(product);
    if (packages.has(p)) {
      double all = packages.kg(p);
      tally.put(Measure.PRODUCT_PURGE_PACKAGES, packages.packages[p], product.name());
      tally.put(Measure.PRODUCT_PURGE, all / TONNE_KG, product.name());
      if (layout.plant.money().isPresent()) {
        double cost = all * product.pricePerKg() - revenue(product);
        tally.put(Measure.PRODUCT_PURGE_COST, cost, product.name());
      }
    }
  }
}
