package hurdline.capacity;

import hurdline.plant.Bale;
import hurdline.plant.Crop;

/** Mean mass of a crop that a season brings: on hand, from fields and as loads, before any loss. */
final class CropSupply {
  private CropSupply() {}

  static double meanKg(CapacityPlant plant, String crop) {
    Bale bale =
        plant.layout.plant.crops().stream()
            .filter(one -> one.name().equals(crop))
            .map(Crop::bale)
            .findFirst()
            .orElseThrow();
    double baleKg = Means.of(bale.massKg());
    double onHandKg = plant.layout.plant.yard().onHand().getOrDefault(crop, 0) * baleKg;
    double fieldsKg = plant.haulage.meanCropKg(plant.layout.naming.crops.index(crop));
    return onHandKg + fieldsKg + loadedBales(plant, crop) * baleKg;
  }

  /** One load for each mean distance that the stream's hours hold. */
  private static double loadedBales(CapacityPlant plant, String crop) {
    return plant.layout.plant.deliveries().stream()
        .filter(delivery -> delivery.crop().equals(crop))
        .flatMap(delivery -> delivery.loads().stream())
        .mapToDouble(loads -> loads.bales() / Means.of(loads.everyS()))
        .map(balesPerS -> balesPerS * plant.roster.loadsHours(crop).lengthS())
        .sum();
  }
}
