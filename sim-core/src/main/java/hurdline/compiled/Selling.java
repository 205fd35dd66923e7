package hurdline.compiled;

import hurdline.plant.Basis;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.SellingBasis;

/** At which moisture products are sold, by number. */
public final class Selling {
  /** A moisture that equals the most but for rounding is not above it. */
  private static final double ROUNDING = 1e-9;

  private final Basis[] basis;
  private final double[]
      atMost; // [product] water over mass; infinite where all moistures sell alike

  private final Grading[] grading; // [product] null where all packages are paid alike
  private final boolean[] purged; // [product] whether first packages after a changeover bring less

  Selling(Plant plant, Indexes naming) {
    SellingBasis found = new SellingBasis(plant);
    basis = new Basis[naming.products.count()];
    atMost = new double[naming.products.count()];
    grading = new Grading[naming.products.count()];
    purged = new boolean[naming.products.count()];
    for (Product product : plant.products()) {
      int p = naming.products.index(product.name());
      basis[p] = found.of(product);
      purged[p] = product.purge().isPresent();
      atMost[p] = product.moisture().atMost().orElse(Double.POSITIVE_INFINITY);
      grading[p] =
          product
              .cleanliness()
              .map(of -> new Grading(of, naming.components.index(of.component())))
              .orElse(null);
    }
  }

  /** By what is in a package a product's price changes; null where all are paid alike. */
  public Grading grading(int product) {
    return grading[product];
  }

  /** Whether what is in each package counts: for its price, or since it may be purge. */
  public boolean isByPackage(int product) {
    return grading[product] != null || purged[product];
  }

  /** Mass at the product's moisture basis. */
  public double paidKg(int product, double dryKg, double waterKg) {
    return basis[product].paidKg(dryKg + waterKg, dryKg);
  }

  public boolean isTooWet(int product, double dryKg, double waterKg) {
    return waterKg > atMost[product] * (1 + ROUNDING) * (dryKg + waterKg);
  }
}
