package hurdline.plant;

import java.util.List;

/**
 * Purge packages: there must be packages, a changeover before them, and orders must be met by whole
 * ones.
 */
final class PurgeRules {
  private PurgeRules() {}

  static void check(Plant plant, Problems found) {
    for (Product product : plant.products()) {
      if (product.purge().isPresent()) {
        check(product, plant, found);
      }
    }
  }

  private static void check(Product product, Plant plant, Problems found) {
    String path = "products." + product.name() + ".purge";
    if (product.pricePerKg() < 0) {
      found.add(
          path,
          "a price below 0 is none that a purge could lower",
          "no \"purge\" for what costs money to be rid of");
    }
    if (product.packaging().isEmpty()) {
      found.add(
          path,
          "the first packages bring less, and the product has no package",
          "a \"package\" in products." + product.name());
      return;
    }
    if (!product.orders().isEmpty() && product.storage().isEmpty()) {
      found.add(
          path,
          "orders take what is made before a package is full, and no purge package is for them",
          "a \"store\" in products." + product.name() + ", from which orders take whole packages");
    }
    PileRules.refuse(plant, product, path, found);
  }

  /** Products with a purge that no changeover brings about. */
  static void caution(Plant plant, Problems found) {
    for (Product product : plant.products()) {
      if (product.purge().isPresent() && !isEverPurged(product, plant)) {
        found.add(
            "products." + product.name() + ".purge",
            "no changeover comes before a campaign that makes it",
            "no package will ever count as purge");
      }
    }
  }

  /** Whether a changeover comes before a campaign of a line that makes a product. */
  private static boolean isEverPurged(Product product, Plant plant) {
    List<SeasonEntry> season = plant.season();
    boolean changed = false;
    for (SeasonEntry entry : season) {
      if (entry instanceof SeasonEntry.Campaign campaign) {
        if (changed
            && plant.lines().stream()
                .filter(line -> line.name().equals(campaign.line()))
                .anyMatch(line -> SellingBasis.makes(line, product.name()))) {
          return true;
        }
        changed = false;
      } else if (entry instanceof SeasonEntry.Changeover changeover) {
        changed |= changeover.days() > 0;
      }
    }
    return false;
  }
}
