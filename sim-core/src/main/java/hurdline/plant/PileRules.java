package hurdline.plant;

/** Products that must be packed: no line may lead them to a pile, which has no packages. */
final class PileRules {
  private PileRules() {}

  static void refuse(Plant plant, Product product, String path, Problems found) {
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        if (step.outlets().stream().anyMatch(outlet -> outlet.to().equals(product.name()))) {
          found.add(
              path,
              "line \""
                  + line.name()
                  + "\" leads it from \""
                  + step.machine()
                  + "\" to a pile, which has no packages",
              "a press or bag-filler that packs it, in every line that makes it");
        }
      }
    }
  }
}
