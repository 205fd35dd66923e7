package hurdline.simulation.results;

import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.plant.Product;
import hurdline.plant.Storage;
import hurdline.simulation.activity.FinishedGoods;
import java.util.Optional;

/** What of each product has been sold: all that was made or, where it has a store, what left it. */
final class SoldMass {
  private final CompiledLines layout;
  private final MaterialBooks material;
  private final FinishedGoods goods;

  SoldMass(CompiledLines layout, MaterialBooks material, FinishedGoods goods) {
    this.layout = layout;
    this.material = material;
    this.goods = goods;
  }

  boolean hasStore(int product) {
    return layout.stores.has(product);
  }

  /** At the product's moisture basis, fit to sell. */
  double fitKg(int product) {
    return overLines(fitOfLines(product), product);
  }

  double tooWetKg(int product) {
    return overLines(tooWetOfLines(product), product);
  }

  /** [line * products + product] */
  double[] fitOfLines(int product) {
    return hasStore(product) ? goods.leftFitKg : material.fitKg;
  }

  double[] tooWetOfLines(int product) {
    return hasStore(product) ? goods.leftTooWetKg : material.tooWetKg;
  }

  private double overLines(double[] kg, int product) {
    int products = layout.naming.products.count();
    double sum = 0;
    for (int at = product; at < kg.length; at += products) {
      sum += kg[at];
    }
    return sum;
  }

  /** As-is mass of packages that have left a store. */
  double leftAsIsKg(int product) {
    return goods.left[product] * layout.stores.packageKg[product];
  }

  /** Trucks that fetched it; empty where none do. */
  Optional<Integer> trucks(Product product) {
    int p = layout.naming.products.index(product.name());
    return product.storage().flatMap(Storage::pickUps).map(of -> goods.trucks[p]);
  }
}
