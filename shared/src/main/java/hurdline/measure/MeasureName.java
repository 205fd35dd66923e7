package hurdline.measure;

import java.util.List;

/**
 * A measure's name taken apart: which measure, its names in their order, and whether it is the dry
 * twin.
 */
public record MeasureName(Measure measure, List<String> names, boolean dry) {
  /** The measure's sentence; of a dry twin, that only dry matter counts. */
  public String definition() {
    return dry ? measure.sentence() + " Dry matter alone." : measure.sentence();
  }
}
