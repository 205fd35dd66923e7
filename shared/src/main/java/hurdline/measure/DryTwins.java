package hurdline.measure;

import java.util.EnumSet;
import java.util.Set;

/** Measures of mass that have a twin without their water. */
final class DryTwins {
  private static final Set<Measure> HAVE_ONE =
      EnumSet.of(
          Measure.YARD_PLACE_LOST,
          Measure.MASS_ON_HAND_AT_START,
          Measure.MASS_WEIGHED_IN,
          Measure.MASS_FED,
          Measure.MASS_LOST_IN_YARD,
          Measure.MASS_LOST_AT_FIELD,
          Measure.MASS_REJECTED,
          Measure.MASS_FAILED,
          Measure.MASS_ON_HAND_AT_END,
          Measure.MACHINE_MASS_IN,
          Measure.MACHINE_SCREEN_MASS_IN,
          Measure.BIN_LEVEL_START,
          Measure.BIN_LEVEL_END,
          Measure.PRODUCT_MASS,
          Measure.AIR_DUST,
          Measure.MACHINE_AIR_DUST,
          Measure.WASTE_MASS);

  private DryTwins() {}

  static boolean has(Measure measure) {
    return HAVE_ONE.contains(measure);
  }
}
