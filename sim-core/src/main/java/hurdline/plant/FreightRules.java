package hurdline.plant;

/** A load that is full by its packages needs packages, and trucks that are paid by it. */
final class FreightRules {
  private FreightRules() {}

  static void check(Plant plant, Problems found) {
    for (Product product : plant.products()) {
      boolean counted =
          product
              .freight()
              .filter(
                  freight -> freight instanceof Freight.PerLoad load && load.packages().isPresent())
              .isPresent();
      String path = "products." + product.name() + ".freight.packages";
      if (counted && product.packaging().isEmpty()) {
        found.add(
            path,
            "packages fill the load, and the product has no package",
            "a \"package\" in products." + product.name() + ", or no \"packages\" here");
      } else if (counted && product.storage().flatMap(Storage::pickUps).isPresent()) {
        found.add(
            path,
            "each truck of \"pick_ups\" is paid whole, however full",
            "no \"packages\" here; \"load\" in \"pick_ups\" says what a truck takes");
      }
    }
  }
}
