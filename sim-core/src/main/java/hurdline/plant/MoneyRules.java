package hurdline.plant;

/** Products, packages and what is paid. */
final class MoneyRules {
  private MoneyRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Product product : plant.products()) {
      product
          .packaging()
          .ifPresent(
              packaging -> found.known("products." + product.name() + ".package", packaging, names.packages.keySet(), "no package", "a package"));
    }
    plant
        .money()
        .ifPresent(
            money -> {
              money.cropsPerKg().keySet().forEach(crop -> found.known("money.crops." + crop, crop, names.crops.keySet(), "no crop", "a crop"));
              money.paidAt().keySet().forEach(crop -> found.known("money.paid_at." + crop, crop, names.crops.keySet(), "no crop", "a crop"));
            });
  }
}
