package hurdline.audit;

import hurdline.measure.Measure;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Full packages of a product and what they cost: each machine that packs it has its own package,
 * and what an outlet brings to it is packed off the line into the product's own.
 */
final class PackageCheck {
  private static final double WHOLE = 1 + 1e-12;

  private final Samples samples;
  private final PlantFacts plant;
  private final int replication;
  private final Ledger ledger;

  PackageCheck(Samples samples, PlantFacts plant, int replication, Ledger ledger) {
    this.samples = samples;
    this.plant = plant;
    this.replication = replication;
    this.ledger = ledger;
  }

  /** Holds the packages of a product against its mass; what they cost. */
  double cost(String where, String product) {
    Map<String, Double> full = counts(product);
    double packages = samples.at(replication, Measure.PRODUCT_PACKAGES, product);
    String at = where + product;
    if (full.size() < 2) {
      String only = full.isEmpty() ? "" : full.keySet().iterator().next();
      double made = samples.at(replication, Measure.PRODUCT_MASS, product);
      double whole = full.isEmpty() ? 0 : Math.floor(made / mass(only) * WHOLE);
      ledger.near(MoneyCheck.PACKAGES, at, whole, packages);
      return packages * (full.isEmpty() ? 0 : plant.amount("packages." + only + ".cost"));
    }
    double all = 0;
    double cost = 0;
    for (Map.Entry<String, Double> kind : full.entrySet()) {
      double got = samples.at(replication, Measure.PRODUCT_PACKAGES_OF, product, kind.getKey());
      ledger.near(MoneyCheck.PACKAGES, at + " " + kind.getKey(), kind.getValue(), got);
      all += got;
      cost += got * plant.amount("packages." + kind.getKey() + ".cost");
    }
    ledger.near(MoneyCheck.PACKAGES, at, all, packages);
    return cost;
  }

  /** Full packages by kind, from the mass that each machine took in. */
  private Map<String, Double> counts(String product) {
    Map<String, Double> full = new LinkedHashMap<>();
    String own = plant.text("products." + product + ".package").orElse("");
    double left = samples.at(replication, Measure.PRODUCT_MASS, product);
    for (Map.Entry<String, String> machine : packers(product, own).entrySet()) {
      double in = samples.at(replication, Measure.MACHINE_MASS_IN, machine.getKey());
      full.merge(
          machine.getValue(), Math.floor(in / mass(machine.getValue()) * WHOLE), Double::sum);
      left -= in;
    }
    if (!own.isEmpty() && (full.isEmpty() || left > 1e-9)) {
      full.merge(own, Math.floor(left / mass(own) * WHOLE), Double::sum);
    }
    return full;
  }

  /** The package that each machine fills with a product by its step; a mill's are not known. */
  private Map<String, String> packers(String product, String own) {
    Map<String, String> packers = new LinkedHashMap<>();
    for (String line : plant.names("lines")) {
      for (String machine : plant.names("lines." + line + ".steps")) {
        String step = "lines." + line + ".steps." + machine;
        String in = plant.text(step + ".package").orElse(own);
        if (plant.text(step + ".packs").filter(product::equals).isPresent() && !in.isEmpty()) {
          packers.put(machine, in);
        }
      }
    }
    return packers;
  }

  private double mass(String packaging) {
    return plant.amount("packages." + packaging + ".mass");
  }
}
