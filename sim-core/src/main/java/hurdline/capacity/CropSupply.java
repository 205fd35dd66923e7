package hurdline.capacity;

import hurdline.plant.Bale;
import hurdline.plant.Crop;

/**
 * Mean mass of a crop that a season brings: on hand, from fields and as loads, before any loss. A
 * form is asked for by itself.
 */
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

  /** Of a crop in all its forms together. */
  static double meanOfFormsKg(CapacityPlant plant, String crop) {
    return plant.layout.plant.forms(crop).stream().mapToDouble(f -> meanKg(plant, f.name())).sum();
  }

  /**
   * What part of a crop comes in one of its forms, by mean mass; where nothing comes, all in its
   * own.
   */
  static double share(CapacityPlant plant, Crop form) {
    if (plant.layout.plant.forms(form.base()).size() == 1) {
      return 1;
    }
    double allKg = meanOfFormsKg(plant, form.base());
    boolean isKnown = allKg > 0 && allKg < Double.POSITIVE_INFINITY;
    double ofNone = form.formOf().isEmpty() ? 1 : 0;
    return isKnown ? meanKg(plant, form.name()) / allKg : ofNone;
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
