package hurdline.plant;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names that are taken, and spaces of names that kinds of things share. */
final class NameRules {
  private static final Set<String> CAUSES =
      Set.of(
          "no_crew",
          "no_bales",
          "kept_apart",
          "no_order",
          "crop_done",
          "lift",
          "resource",
          "no_room");
  private static final Set<String> CHANGES = Set.of("screen_change", "package_change");
  private static final String BASE = "base";

  private NameRules() {}

  static void check(Plant plant, Problems found) {
    Map<String, String> aims = new HashMap<>(Map.of(Names.WASTE, "what leaves the plant"));
    for (Machine machine : plant.machines()) {
      String path = "machines." + machine.name();
      taken(aims, machine.name(), path, "a machine", found);
      if (CAUSES.contains(machine.name())) {
        found.add(
            path,
            "\"" + machine.name() + "\" is the name of a cause that limits a line",
            "another name for the machine");
      }
      stops(machine, path, found);
    }
    plant
        .products()
        .forEach(
            product ->
                taken(aims, product.name(), "products." + product.name(), "a product", found));
    variants(plant, found);
  }

  private static void stops(Machine machine, String path, Problems found) {
    for (Stop stop : machine.common().stops()) {
      if (CHANGES.contains(stop.name())) {
        found.add(
            path + ".stops." + stop.name(),
            "\"" + stop.name() + "\" is a kind of job of its own",
            "another name for the stop");
      }
    }
  }

  private static void variants(Plant plant, Problems found) {
    Map<String, String> taken = new HashMap<>(Map.of(BASE, "the plant as it is"));
    List<Option> options = plant.options();
    options.forEach(
        option -> taken(taken, option.name(), "options." + option.name(), "an option", found));
    plant
        .plans()
        .forEach(plan -> taken(taken, plan.name(), "plans." + plan.name(), "a plan", found));
  }

  private static void taken(
      Map<String, String> names, String name, String path, String kind, Problems found) {
    String other = names.putIfAbsent(name, kind);
    if (other != null) {
      found.add(
          path,
          "\"" + name + "\" is already the name of " + other,
          "another name; the two would be mixed up");
    }
  }
}
