package hurdline.audit;

import hurdline.measure.Measure;

/** Stores: what was made has left or is there, and no day's level is more than a year's highest. */
final class StoreCheck implements Check {
  static final String STORES = "what is made has left its store or is there";
  static final String LEVELS = "levels of stores through the year";

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    for (String option : answer.options()) {
      Samples samples = answer.samples(option);
      PlantFacts plant = answer.plant(option);
      samples.each().forEach(at -> ofReplication(samples, at, plant, option, ledger));
    }
    if (answer.has(Tables.STORE_LEVELS)) {
      answer.table(Tables.STORE_LEVELS).rows().forEach(row -> level(answer, row, ledger));
    }
  }

  private static void ofReplication(
      Samples samples, int at, PlantFacts plant, String option, Ledger ledger) {
    String where = option + " replication " + (at + 1) + " ";
    for (String product : samples.names(Measure.PRODUCT_STOCK)) {
      double made = samples.at(at, Measure.PRODUCT_MASS, product);
      double left = samples.at(at, Measure.PRODUCT_LEFT, product);
      double stock = samples.at(at, Measure.PRODUCT_STOCK, product);
      double opened = samples.at(at, Measure.PRODUCT_STOCK_START, product);
      double gone = left + purge(samples, at, plant, product);
      ledger.near(STORES, where + product, opened + made, gone + stock);
      String path = "products." + product + ".pick_ups";
      if (plant.has(path)) {
        double most =
            samples.at(at, Measure.PRODUCT_PICK_UPS, product) * plant.amount(path + ".load");
        ledger.between(STORES, where + product + " trucks", 0, left, most * (1 + 1e-9));
      }
    }
    for (String store : samples.names(Measure.STORE_LEVEL_PEAK)) {
      double peak = samples.at(at, Measure.STORE_LEVEL_PEAK, store);
      double holds = plant.amount("stores." + store + ".holds");
      ledger.between(STORES, where + store, 0, peak, holds * (1 + 1e-9));
      double mean = samples.at(at, Measure.STORE_LEVEL_MEAN, store);
      ledger.between(STORES, where + store + " mean", 0, mean, peak);
      double end = samples.at(at, Measure.STORE_LEVEL_END, store);
      ledger.between(STORES, where + store + " end", 0, end, peak);
      double there = 0;
      for (String product : samples.names(Measure.PRODUCT_STOCK)) {
        boolean here =
            plant.text("products." + product + ".store").filter(store::equals).isPresent();
        there += here ? samples.at(at, Measure.PRODUCT_STOCK, product) : 0;
      }
      ledger.between(STORES, where + store + " there", 0, end, there * (1 + 1e-9));
    }
  }

  /** Purge packages, which no store takes in. */
  private static double purge(Samples samples, int at, PlantFacts plant, String product) {
    if (!samples.has(Measure.PRODUCT_PURGE_PACKAGES.of(product))) {
      return 0;
    }
    String packaging = plant.text("products." + product + ".package").orElseThrow();
    return samples.at(at, Measure.PRODUCT_PURGE_PACKAGES, product)
        * plant.amount("packages." + packaging + ".mass");
  }

  /** By replication no day is above the highest of its year, so neither are means and quantiles. */
  private static void level(WrittenAnswer answer, Table.Row row, Ledger ledger) {
    Samples samples = answer.samples(row.text(Columns.OPTION));
    Statistic peaks = Statistic.of(samples.all(Measure.STORE_LEVEL_PEAK, row.text("store")));
    double rounding = 1 + 1e-9;
    ledger.between(LEVELS, row, 0, row.number(Columns.MEAN), peaks.mean() * rounding);
    for (String quantile : new String[] {Columns.P05, Columns.P50, Columns.P95}) {
      ledger.between(LEVELS, row, 0, row.number(quantile), peaks.max() * rounding);
    }
  }
}
