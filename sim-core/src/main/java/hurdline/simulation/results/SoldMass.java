package hurdline.simulation.results;

import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.plant.Product;
import hurdline.plant.Storage;
import hurdline.simulation.activity.Filling;
import hurdline.simulation.activity.FinishedGoods;
import hurdline.simulation.activity.PurgePackages;
import java.util.Optional;

/** What of each product has been sold: all that was made or, where it has a store, what left it. */
final class SoldMass {
  private final CompiledLines layout;
  private final MaterialBooks material;
  private final FinishedGoods goods;
  private final PurgePackages purge;
  private final double[] fitKg; // [line * products + product] made less purge
  private final double[] tooWetKg;

  SoldMass(CompiledLines layout, MaterialBooks material, Filling filling) {
    this.layout = layout;
    this.material = material;
    goods = filling.goods;
    purge = filling.purge;
    fitKg = new double[material.fitKg.length];
    tooWetKg = new double[material.fitKg.length];
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

  /** [line * products + product], purge packages left out. */
  double[] fitOfLines(int product) {
    return hasStore(product) ? goods.leftFitKg : madeFitOfLines(product);
  }

  double[] tooWetOfLines(int product) {
    return hasStore(product) ? goods.leftTooWetKg : madeTooWetOfLines(product);
  }

  /** What was made and is no purge, whether it has left a store or not. */
  double[] madeFitOfLines(int product) {
    return purge.has(product)
        ? less(material.fitKg, purge.fitKgOfLines(product), product, fitKg)
        : material.fitKg;
  }

  double[] madeTooWetOfLines(int product) {
    return purge.has(product)
        ? less(material.tooWetKg, purge.tooWetKgOfLines(product), product, tooWetKg)
        : material.tooWetKg;
  }

  double madeFitKg(int product) {
    return overLines(madeFitOfLines(product), product);
  }

  double madeTooWetKg(int product) {
    return overLines(madeTooWetOfLines(product), product);
  }

  private double[] less(double[] all, double[] purged, int product, double[] into) {
    for (int at = product; at < all.length; at += layout.naming.products.count()) {
      into[at] = all[at] - purged[at];
    }
    return into;
  }

  /** Purge packages, at the product's moisture basis. */
  double purgeKg(int product) {
    return purge.kg(product);
  }

  private double overLines(double[] kg, int product) {
    int products = layout.naming.products.count();
    double sum = 0;
    for (int at = product; at < kg.length; at += products) {
      sum += kg[at];
    }
    return sum;
  }

  /** As-is mass of full purge packages of a product with a store. */
  double purgeAsIsKg(int product) {
    return purge.packages[product] * layout.stores.packageKg[product];
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
