package hurdline.plant.yaml;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** Keys that are known elsewhere, and why they do not belong where they stand. */
final class MisplacedKeys {
  private static final Set<MapKeys> MACHINES =
      EnumSet.of(
          MapKeys.FEEDER,
          MapKeys.PLAIN,
          MapKeys.CYCLONE,
          MapKeys.FILLER,
          MapKeys.PRESS,
          MapKeys.BIN,
          MapKeys.MILL);
  private static final Set<MapKeys> STEPS =
      EnumSet.of(MapKeys.STEP, MapKeys.FEEDER_STEP, MapKeys.MILL_STEP, MapKeys.BIN_STEP);
  private static final Map<String, String> OWNERS =
      Map.of(
          "feed_table", "a bale-feeder has a table",
          "spouts", "a bag-filler has spouts",
          "boxes", "a press has boxes",
          "collects", "a cyclone collects",
          "holds", "a bin holds",
          "mix", "a hammer-mill has a mix",
          "then", "a hammer-mill that works to orders has a \"then\"",
          "min_run", "a hammer-mill stays on a screen",
          "makes", "a hammer-mill makes a product of each screen",
          "own_hours", "a bin's step keeps own hours, for all that it feeds");

  private MisplacedKeys() {}

  /** Why the key does not belong into that map; null where it is simply unknown. */
  static String reason(MapKeys shape, String key) {
    Set<MapKeys> kin =
        MACHINES.contains(shape) ? MACHINES : STEPS.contains(shape) ? STEPS : Set.of();
    if (kin.stream().noneMatch(other -> other.keys().contains(key))) {
      return null;
    }
    if (shape == MapKeys.BIN) {
      return "a bin draws no power, does not stop and has no parts that move";
    }
    if (shape == MapKeys.BIN_STEP) {
      return "a bin only hands on; put it in the step of the machine that it leads to";
    }
    return OWNERS.getOrDefault(key, "it belongs to another kind")
        + ", "
        + shape.phrase()
        + " does not";
  }
}
