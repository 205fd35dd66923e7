package hurdline.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The moisture to which a mass is brought before it is paid for; none where it is paid as it is
 * weighed.
 */
final class Basis {
  private static final String AS_IS = "as is";

  /** Of a product whose file names no basis and whose crop has none. */
  private static final double USUAL = 0.12;

  private Basis() {}

  /** The mass that is paid for. */
  static double of(Optional<Double> basis, double mass, double dry) {
    return basis.map(moisture -> dry / (1 - moisture)).orElse(mass);
  }

  static Optional<Double> ofCrop(PlantFacts plant, String crop) {
    return plant
        .text("money.moisture_basis." + crop)
        .filter(text -> !text.equals(AS_IS))
        .map(Amount::of);
  }

  /**
   * Its own, else that at which the crop of the first line that makes it is paid, else the usual
   * one.
   */
  static Optional<Double> ofProduct(PlantFacts plant, String product) {
    String path = "products." + product + ".moisture";
    Optional<String> own = plant.text(path).or(() -> plant.text(path + ".basis"));
    if (own.isPresent()) {
      return own.filter(text -> !text.equals(AS_IS)).map(Amount::of);
    }
    Optional<String> crop =
        plant.names("lines").stream()
            .filter(
                line ->
                    plant
                        .at("lines." + line + ".steps")
                        .filter(steps -> names(steps, product))
                        .isPresent())
            .findFirst()
            .map(line -> MassCheck.crop(plant, line));
    boolean isSaid = crop.filter(name -> plant.has("money.moisture_basis." + name)).isPresent();
    return isSaid ? ofCrop(plant, crop.get()) : Optional.of(USUAL);
  }

  /** Whether a value anywhere within is this name. */
  private static boolean names(Object within, String name) {
    if (within instanceof Map<?, ?> map) {
      return map.values().stream().anyMatch(value -> names(value, name));
    }
    if (within instanceof List<?> list) {
      return list.stream().anyMatch(value -> names(value, name));
    }
    return name.equals(within);
  }
}
