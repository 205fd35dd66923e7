package hurdline.plant;

/** What of the yard can be simulated and is hardly meant, or hurts someone. */
final class YardCautions {
  private static final double ROUNDING = 1e-9;

  private final Plant plant;
  private final Problems found;

  YardCautions(Plant plant, Problems found) {
    this.plant = plant;
    this.found = found;
  }

  void look() {
    plant.yard().places().forEach(this::dampPlace);
    plant.yard().places().forEach(this::stacks);
    plant.deliveries().forEach(this::idleWeather);
  }

  private void dampPlace(Yard.Place place) {
    place
        .climateAsCovered()
        .ifPresent(
            climate ->
                plant.crops().stream()
                    .filter(crop -> place.takes(crop.name()) && climate.most() >= crop.dampFrom())
                    .forEach(crop -> dampPlace(place, climate, crop)));
  }

  private void dampPlace(Yard.Place place, Yard.Climate climate, Crop crop) {
    found.add(
        "yard.places." + place.name() + ".moisture",
        "\""
            + crop.name()
            + "\" may come to have "
            + Problems.percent(climate.most())
            + " moisture here, and counts as damp from "
            + Problems.percent(crop.dampFrom())
            + " (damp_from)",
        "damp ones heat, rot and can set themselves on fire; measure what lies there and keep to"
            + " local fire codes");
  }

  /** A full stack of mean bales against what the file allows. */
  private void stacks(Yard.Place place) {
    if (place.limits().isEmpty() || place.stack().isEmpty()) {
      return;
    }
    Yard.Limits limits = place.limits().get();
    for (Crop crop : plant.crops()) {
      if (place.takes(crop.name())) {
        boolean round = crop.bale().size().map(Bale.Size::round).orElse(false);
        double kg =
            place.stack().get().bales(round)
                * crop.bale().massKg().meanWithin(0, Double.POSITIVE_INFINITY);
        double price =
            plant.money().map(m -> m.cropsPerKg().getOrDefault(crop.name(), 0.0)).orElse(0.0);
        stack(place, crop, ".limits.stack_mass", kg / limits.stackKg().orElse(Double.NaN));
        stack(
            place,
            crop,
            ".limits.stack_value",
            kg * price / limits.stackValue().orElse(Double.NaN));
      }
    }
  }

  private void stack(Yard.Place place, Crop crop, String key, double times) {
    if (times > 1 + ROUNDING) {
      found.add(
          "yard.places." + place.name() + key,
          "a full stack of \"" + crop.name() + "\" comes to " + Problems.percent(times) + " of it",
          "smaller stacks, as the local fire code and the insurer have them");
    }
  }

  private void idleWeather(Delivery delivery) {
    boolean isWetted =
        plant.yard().places().stream()
            .filter(place -> place.takes(delivery.crop()))
            .flatMap(place -> place.climateAsCovered().stream())
            .anyMatch(climate -> climate.wet().isPresent());
    if (delivery.fields().isEmpty() && delivery.mayRain() && !isWetted) {
      found.add(
          "deliveries." + delivery.crop() + ".weather",
          "\"weather\" goes with fields, or places that rain reaches, of which there are none",
          "it is not used");
    }
  }
}
