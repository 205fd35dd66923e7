package hurdline.plant;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether anything in a plant makes use of something that it names. */
public final class UnusedNames {
  private UnusedNames() {}

  /** Whether the path is that of a resource, package, product or machine that nothing refers to. */
  public static boolean isUnused(Plant plant, String path) {
    String[] steps = path.split("\\.");
    if (steps.length != 2) {
      return false;
    }
    return switch (steps[0]) {
      case "resources" -> !ResourceRules.needs(plant).containsValue(steps[1]);
      case "packages" ->
          plant.products().stream()
                  .noneMatch(p -> p.packaging().filter(steps[1]::equals).isPresent())
              && Packed.of(plant).stream()
                  .noneMatch(one -> one.packaging().filter(steps[1]::equals).isPresent());
      case "stores" ->
          plant.products().stream()
              .noneMatch(p -> p.storage().filter(s -> s.store().equals(steps[1])).isPresent());
      case "products" -> !aims(plant).contains(steps[1]);
      case "machines" ->
          plant.lines().stream()
              .noneMatch(
                  line ->
                      Names.step(line, steps[1]).isPresent()
                          || line.alongside().contains(steps[1]));
      default -> false;
    };
  }

  private static Set<String> aims(Plant plant) {
    return plant.lines().stream()
        .flatMap(line -> line.steps().stream())
        .flatMap(UnusedNames::aims)
        .collect(Collectors.toSet());
  }

  private static Stream<String> aims(Step step) {
    Stream<String> packed =
        step.packs().stream()
            .filter(Step.PacksProduct.class::isInstance)
            .map(packs -> ((Step.PacksProduct) packs).product());
    return Stream.concat(
        packed,
        Stream.concat(
            step.makes().values().stream(), step.outlets().stream().map(Step.Outlet::to)));
  }
}
