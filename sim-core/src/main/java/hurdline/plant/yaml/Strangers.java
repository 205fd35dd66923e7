package hurdline.plant.yaml;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** Keys that are known elsewhere, and why they do not belong where they stand. */
final class Strangers {
  private static final Set<Shape> MACHINES =
      EnumSet.of(
          Shape.FEEDER,
          Shape.PLAIN,
          Shape.CYCLONE,
          Shape.FILLER,
          Shape.PRESS,
          Shape.BIN,
          Shape.MILL);
  private static final Set<Shape> STEPS =
      EnumSet.of(Shape.STEP, Shape.FEEDER_STEP, Shape.MILL_STEP, Shape.BIN_STEP);
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

  private Strangers() {}

  /** Why the key does not belong into that map; null where it is simply unknown. */
  static String reason(Shape shape, String key) {
    Set<Shape> kin = MACHINES.contains(shape) ? MACHINES : STEPS.contains(shape) ? STEPS : Set.of();
    if (kin.stream().noneMatch(other -> other.keys().contains(key))) {
      return null;
    }
    if (shape == Shape.BIN) {
      return "a bin draws no power, does not stop and has no parts that move";
    }
    if (shape == Shape.BIN_STEP) {
      return "a bin only hands on; put it in the step of the machine that it leads to";
    }
    return OWNERS.getOrDefault(key, "it belongs to another kind")
        + ", "
        + shape.phrase()
        + " does not";
  }
}
