package hurdline.study.backtest;

import hurdline.plant.Plant;
import hurdline.records.MadeRecord;
import java.util.HashMap;
import java.util.Map;

/** Mass of what was fed or made: as weighed, else by count and the plant file's mean mass. */
public final class RecordedMasses {
  private final Map<String, Double> baleKg = new HashMap<>();
  private final Map<String, Double> packageKg = new HashMap<>();

  public RecordedMasses(Plant plant) {
    plant.crops().forEach(crop -> baleKg.put(crop.name(), crop.bale().massKg().mean()));
    plant
        .products()
        .forEach(
            product ->
                packageKg.put(
                    product.name(),
                    plant.packagings(product).size() == 1
                        ? plant.packagings(product).get(0).massKg()
                        : Double.NaN));
  }

  /** NaN where neither a mass nor a count with a known mass was written down. */
  public double kg(MadeRecord row) {
    Map<String, Double> eachKg = row.isFed() ? baleKg : packageKg;
    return Double.isNaN(row.massKg())
        ? row.count() * eachKg.getOrDefault(row.what(), Double.NaN)
        : row.massKg();
  }

  /** Bales of a row of what was fed: as counted, else by mass. */
  public double bales(MadeRecord row) {
    return Double.isNaN(row.count())
        ? row.massKg() / baleKg.getOrDefault(row.what(), Double.NaN)
        : row.count();
  }

  /** Bales of a mass of a crop. */
  public double bales(String crop, double kg) {
    return kg / baleKg.getOrDefault(crop, Double.NaN);
  }
}
