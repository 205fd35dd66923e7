package hurdline.plant;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * That a step packs a product.
 *
 * @param packaging name of the package: the step's, else the product's; absent where neither says
 *     one
 */
record Packed(Line line, Step step, String product, Optional<String> packaging) {
  /** All of a plant, in the order of the file. */
  static List<Packed> of(Plant plant) {
    List<Packed> all = new ArrayList<>();
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        step.packs()
            .ifPresent(
                packs ->
                    products(line, packs).stream()
                        .distinct()
                        .map(
                            product ->
                                new Packed(line, step, product, named(plant, packs, product)))
                        .forEach(all::add));
      }
    }
    return all;
  }

  private static Collection<String> products(Line line, Step.Packs packs) {
    return packs instanceof Step.PacksFromMill from
        ? Names.step(line, from.mill()).map(mill -> mill.makes().values()).orElse(List.of())
        : List.of(((Step.PacksProduct) packs).product());
  }

  private static Optional<String> named(Plant plant, Step.Packs packs, String product) {
    return packs
        .packaging()
        .or(
            () ->
                plant.products().stream()
                    .filter(each -> each.name().equals(product))
                    .findFirst()
                    .flatMap(Product::packaging));
  }
}
