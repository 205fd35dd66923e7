package hurdline.plant.yaml;

import java.util.List;

/** The maps of a plant file whose keys are names of its own choosing. */
final class NameMaps {
  private static final List<String> PATHS =
      List.of(
          "crops",
          "machines",
          "products",
          "packages",
          "stores",
          "lines",
          "resources",
          "deliveries",
          "options",
          "plans",
          "choices",
          "crews",
          "crews.*",
          "hands.attendance",
          "hands.attendance.*",
          "hands.shared",
          "components",
          "calendar.shifts",
          "yard.places",
          "yard.on_hand",
          "lines.*.steps",
          "machines.*.stops",
          "machines.*.screens",
          "deliveries.*.fields",
          "season.*.tasks",
          "base_loads",
          "money.electricity.periods",
          "money.crop_prices",
          "money.crop_grades",
          "money.crop_terms",
          "money.moisture_basis");

  private NameMaps() {}

  static boolean isOne(String path) {
    String[] steps = path.split("\\.");
    return PATHS.stream().anyMatch(pattern -> fits(pattern.split("\\."), steps));
  }

  private static boolean fits(String[] pattern, String[] steps) {
    if (pattern.length != steps.length) {
      return false;
    }
    for (int i = 0; i < steps.length; i++) {
      if (!pattern[i].equals("*") && !pattern[i].equals(steps[i])) {
        return false;
      }
    }
    return true;
  }
}
