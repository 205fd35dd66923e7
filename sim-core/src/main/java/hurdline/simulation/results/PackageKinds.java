package hurdline.simulation.results;

import hurdline.plant.Packaging;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import java.util.List;

/** The packages that each product is sold in, found once, for every year asks for them. */
final class PackageKinds {
  private final List<List<Packaging>> kinds;
  private final boolean[] loose;

  PackageKinds(Plant plant) {
    List<Product> products = plant.products();
    kinds = products.stream().map(plant::packagings).toList();
    loose = new boolean[products.size()];
    for (int p = 0; p < loose.length; p++) {
      loose[p] = products.get(p).packaging().isEmpty() && plant.isPiled(products.get(p));
    }
  }

  /** All packages of a product, by its place among the plant's. */
  List<Packaging> of(int product) {
    return kinds.get(product);
  }

  /** Whether all of a product is in packages of one mass. */
  boolean isOneKind(int product) {
    return kinds.get(product).size() == 1 && !loose[product];
  }
}
