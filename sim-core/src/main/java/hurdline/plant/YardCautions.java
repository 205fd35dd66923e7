package hurdline.plant;

/** What of the yard can be simulated and is hardly meant, or hurts someone. */
final class YardCautions {
  private final Plant plant;
  private final Problems found;

  YardCautions(Plant plant, Problems found) {
    this.plant = plant;
    this.found = found;
  }

  void look() {
    plant.yard().places().forEach(this::dampPlace);
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
