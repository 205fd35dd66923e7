package hurdline.plant;

/** Products, packages and what is paid. */
final class MoneyRules {
  private static final double LEAST_KG = 0.01;

  private MoneyRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Packaging packaging : plant.packages()) {
      if (!(packaging.massKg() >= LEAST_KG)) {
        found.add(
            "packages." + packaging.name() + ".mass",
            "a package so small would be full many times a second",
            "a mass such as \"260 lb\", 10 g or more");
      }
    }
    for (Product product : plant.products()) {
      product
          .packaging()
          .ifPresent(
              packaging ->
                  found.known(
                      "products." + product.name() + ".package",
                      packaging,
                      names.packages.keySet(),
                      "no package",
                      "a package"));
    }
    plant.products().forEach(product -> dock(product, found));
    plant.money().flatMap(Money::overtime).stream()
        .flatMap(overtime -> overtime.lines().stream())
        .forEach(
            line ->
                found.known("money.overtime.for", line, names.lines.keySet(), "no line", "a line"));
    plant
        .money()
        .flatMap(Money::rent)
        .ifPresent(
            rent ->
                found.known(
                    "money.rent.line", rent.line(), names.lines.keySet(), "no line", "a line"));
    plant
        .money()
        .ifPresent(
            money -> {
              money
                  .cropsPerKg()
                  .keySet()
                  .forEach(
                      crop ->
                          found.known(
                              "money.crop_prices." + crop,
                              crop,
                              names.crops.keySet(),
                              "no crop",
                              "a crop"));
              money
                  .paidAt()
                  .keySet()
                  .forEach(
                      crop ->
                          found.known(
                              "money.moisture_basis." + crop,
                              crop,
                              names.crops.keySet(),
                              "no crop",
                              "a crop"));
            });
  }

  /** What costs money to be rid of does not cost less for being wet. */
  private static void dock(Product product, Problems found) {
    if (product.moisture().atMost().isPresent() && product.pricePerKg() < 0) {
      found.add(
          "products." + product.name() + ".moisture.at_most",
          "a price below 0 has nothing to dock",
          "no \"at_most\" for what costs money to be rid of");
    }
  }
}
