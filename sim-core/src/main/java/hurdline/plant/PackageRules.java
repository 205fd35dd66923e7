package hurdline.plant;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Packages that steps name: what a machine fills with a product is one package in all lines. */
final class PackageRules {
  private final Plant plant;
  private final Names names;
  private final Problems found;

  private PackageRules(Plant plant, Names names, Problems found) {
    this.plant = plant;
    this.names = names;
    this.found = found;
  }

  static void check(Plant plant, Names names, Problems found) {
    new PackageRules(plant, names, found).check();
  }

  private void check() {
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        step.packs()
            .flatMap(Step.Packs::packaging)
            .ifPresent(
                name ->
                    found.known(
                        path(line, step),
                        name,
                        names.packages.keySet(),
                        "no package",
                        "a package"));
      }
    }
    List<Packed> packed = Packed.of(plant);
    oneAtAMachine(packed);
    plant.products().forEach(product -> oneOnly(product, packed));
  }

  private static String path(Line line, Step step) {
    return Names.path(line, step) + ".package";
  }

  private void oneAtAMachine(List<Packed> packed) {
    Map<List<String>, Packed> first = new HashMap<>();
    for (Packed one : packed) {
      Packed before = first.putIfAbsent(List.of(one.step().machine(), one.product()), one);
      if (before != null && !before.packaging().equals(one.packaging())) {
        found.add(
            one.step().packs().flatMap(Step.Packs::packaging).isPresent()
                ? path(one.line(), one.step())
                : Names.path(one.line(), one.step()) + ".packs",
            "line \""
                + before.line().name()
                + "\" has \""
                + one.step().machine()
                + "\" fill another package with \""
                + one.product()
                + "\"",
            "one package for a product at a machine, or a product for each package");
      }
    }
  }

  /** Stores and loads that are full by their packages go by packages of one mass. */
  private void oneOnly(Product product, List<Packed> packed) {
    Set<Optional<String>> kinds =
        packed.stream()
            .filter(one -> one.product().equals(product.name()))
            .map(Packed::packaging)
            .collect(Collectors.toSet());
    kinds.remove(product.packaging());
    boolean counted =
        product
            .freight()
            .filter(of -> of instanceof Freight.PerLoad load && load.packages().isPresent())
            .isPresent();
    if (product.packaging().isPresent()
        && !kinds.isEmpty()
        && (product.storage().isPresent() || counted)) {
      found.add(
          "products." + product.name() + (counted ? ".freight.packages" : ".store"),
          "its packages are not all alike, since a step fills another one",
          counted
              ? "\"load\" alone, or a product for each package"
              : "one package, or a product for each package");
    }
  }
}
