package hurdline.records;

import hurdline.plant.Packaging;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.Step;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which package a word of the records means: its own name, a product that goes into one kind of
 * package, or a machine that fills one kind.
 */
final class PackageNames {
  private final Map<String, String> packages = new LinkedHashMap<>();
  private final NameReader names;

  PackageNames(Plant plant, RecordsMap map) {
    Map<String, String> called = new LinkedHashMap<>(map.machines());
    called.putAll(map.products());
    names = new NameReader(called);
    plant.packages().forEach(of -> packages.put(of.name(), of.name()));
    for (Product product : plant.products()) {
      only(plant.packagings(product)).ifPresent(of -> packages.putIfAbsent(product.name(), of));
    }
    filled(plant).forEach((machine, of) -> packages.putIfAbsent(machine, of));
  }

  private static Optional<String> only(List<Packaging> kinds) {
    return kinds.size() == 1 ? Optional.of(kinds.get(0).name()) : Optional.empty();
  }

  /** The package of each machine that fills one kind alone. */
  static Map<String, String> filled(Plant plant) {
    Map<String, Set<String>> kinds = new LinkedHashMap<>();
    plant
        .lines()
        .forEach(
            line ->
                line.steps().stream()
                    .filter(step -> step.packs().isPresent())
                    .forEach(
                        step ->
                            products(line.steps(), step.packs().get()).stream()
                                .flatMap(
                                    name ->
                                        plant.products().stream()
                                            .filter(p -> p.name().equals(name)))
                                .flatMap(product -> plant.packagings(product).stream())
                                .forEach(
                                    of ->
                                        kinds
                                            .computeIfAbsent(step.machine(), m -> new TreeSet<>())
                                            .add(of.name()))));
    Map<String, String> one = new LinkedHashMap<>();
    kinds.forEach(
        (machine, of) -> {
          if (of.size() == 1) {
            one.put(machine, of.iterator().next());
          }
        });
    return one;
  }

  private static List<String> products(List<Step> steps, Step.Packs packs) {
    if (packs instanceof Step.PacksProduct product) {
      return List.of(product.product());
    }
    String mill = ((Step.PacksFromMill) packs).mill();
    return steps.stream()
        .filter(step -> step.machine().equals(mill))
        .flatMap(step -> step.makes().values().stream())
        .toList();
  }

  /** The package; empty where no name is near, which the row's reason then says. */
  Optional<String> of(Row row, String word) {
    Optional<NameReader.Read> read = names.read(word, packages.keySet());
    if (read.isEmpty()) {
      row.setAside(
          "\""
              + NumberReader.shortened(word)
              + "\" is no package, no product of one package and no machine that fills one;"
              + " say it under called: {products: …}");
      return Optional.empty();
    }
    row.note(read.get().how());
    return Optional.of(packages.get(read.get().name()));
  }
}
