package hurdline.simulation.results;

import hurdline.compiled.CompiledLines;
import hurdline.plant.Packaging;
import hurdline.plant.Product;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The packages that each product is sold in, found once, for every year asks for them. */
final class PackageKinds {
  private final List<List<Packaging>> kinds;
  private final boolean[] loose;

  PackageKinds(CompiledLines layout) {
    int products = layout.naming.products.count();
    kinds = new ArrayList<>(Collections.nCopies(products, List.of()));
    loose = new boolean[products];
    for (Product product : layout.plant.products()) {
      int p = layout.naming.products.index(product.name());
      kinds.set(p, layout.plant.packagings(product));
      loose[p] = product.packaging().isEmpty() && layout.plant.isPiled(product);
    }
  }

  /** All packages of a product, by its number. */
  List<Packaging> of(int product) {
    return kinds.get(product);
  }

  /** Whether all of a product is in packages of one mass. */
  boolean isOneKind(int product) {
    return kinds.get(product).size() == 1 && !loose[product];
  }
}
