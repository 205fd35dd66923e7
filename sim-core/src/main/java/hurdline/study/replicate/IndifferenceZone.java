package hurdline.study.replicate;

/**
 * In what the best is to be picked, and how much better it must be to matter.
 *
 * @param measure its full name
 * @param width the least difference that is worth finding, in the measure's unit
 * @param least whether the least mean is the best
 * @param said as it was given
 */
public record IndifferenceZone(String measure, double width, boolean least, String said) {
  public IndifferenceZone {
    if (!(width > 0)) {
      throw new IllegalArgumentException("width is " + width + "; expected above 0");
    }
  }
}
