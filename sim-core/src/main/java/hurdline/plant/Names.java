package hurdline.plant;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** The plant's things by name, for rules to look up. */
final class Names {
  static final String WASTE = "waste";

  final Map<String, Component> components;
  final Map<String, Crop> crops;
  final Map<String, Machine> machines;
  final Map<String, Product> products;
  final Map<String, Packaging> packages;
  final Map<String, Store> stores;
  final Map<String, Line> lines;
  final Map<String, Calendar.Shift> shifts;
  final Map<String, Resource> resources;
  final Map<String, Yard.Place> places;

  /** All that a step may lead to. */
  private final Set<String> aims;

  Names(Plant plant) {
    components = byName(plant.components(), Component::name);
    crops = byName(plant.crops(), Crop::name);
    machines = byName(plant.machines(), Machine::name);
    products = byName(plant.products(), Product::name);
    packages = byName(plant.packages(), Packaging::name);
    stores = byName(plant.stores(), Store::name);
    lines = byName(plant.lines(), Line::name);
    shifts = byName(plant.calendar().shifts(), Calendar.Shift::name);
    resources = byName(plant.resources(), Resource::name);
    places = byName(plant.yard().places(), Yard.Place::name);
    aims = new LinkedHashSet<>(machines.keySet());
    aims.addAll(products.keySet());
    aims.add(WASTE);
  }

  private static <T> Map<String, T> byName(Collection<T> things, Function<T, String> name) {
    Map<String, T> map = new LinkedHashMap<>();
    things.forEach(thing -> map.putIfAbsent(name.apply(thing), thing));
    return map;
  }

  boolean isBin(String name) {
    return machines.get(name) instanceof Machine.Bin;
  }

  Optional<Machine.HammerMill> mill(String name) {
    return Optional.ofNullable(machines.get(name))
        .filter(Machine.HammerMill.class::isInstance)
        .map(Machine.HammerMill.class::cast);
  }

  /** All that a step may lead to. */
  Set<String> aims() {
    return aims;
  }

  static Optional<Step> step(Line line, String machine) {
    for (Step step : line.steps()) {
      if (step.machine().equals(machine)) {
        return Optional.of(step);
      }
    }
    return Optional.empty();
  }

  static String path(Line line, Step step) {
    return "lines." + line.name() + ".steps." + step.machine();
  }

  /** Where the plant file has an outlet; a step with {@code to} alone has no list of them. */
  static String path(Line line, Step step, int outlet) {
    boolean alone = step.outlets().size() == 1 && step.outlets().get(0).takes().isEmpty();
    return path(line, step) + (alone ? "" : ".outlets." + outlet);
  }
}
