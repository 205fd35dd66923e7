package hurdline.plant;

import java.util.function.Predicate;

/** Prices by what is left in each package: there must be packages, and something to be left. */
final class CleanlinessRules {
  private CleanlinessRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Product product : plant.products()) {
      product.cleanliness().ifPresent(of -> check(of, product, plant, names, found));
    }
  }

  private static void check(
      Cleanliness of, Product product, Plant plant, Names names, Problems found) {
    String path = "products." + product.name() + ".cleanliness";
    found.known(
        path + ".component",
        of.component(),
        names.components.keySet(),
        "no component",
        "a component");
    if (product.pricePerKg() < 0) {
      found.add(
          path,
          "a price below 0 is none that cleanliness could raise",
          "no \"cleanliness\" for what costs money to be rid of");
    }
    if (product.packaging().isEmpty() && Packed.of(plant).stream().noneMatch(of(product))) {
      found.add(
          path,
          "each package is paid by what is in it, and the product has no package",
          "a \"package\" in products." + product.name());
      return;
    }
    PileRules.refuse(plant, product, path, found);
  }

  /** A step that names a package for the product. */
  private static Predicate<Packed> of(Product product) {
    return one -> one.product().equals(product.name()) && one.packaging().isPresent();
  }
}
