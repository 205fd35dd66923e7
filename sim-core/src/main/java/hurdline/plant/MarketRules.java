package hurdline.plant;

/** A market takes what is not promised; where orders alone are sold, there is nothing for it. */
final class MarketRules {
  private MarketRules() {}

  static void check(Plant plant, Problems found) {
    for (Product product : plant.products()) {
      if (product.market().isPresent() && product.sellsOrdersOnly()) {
        found.add(
            "products." + product.name() + ".market",
            "only what is ordered is sold, so that nothing is left for a market",
            "no \"market\", or \"sells: all\"");
      }
    }
  }
}
