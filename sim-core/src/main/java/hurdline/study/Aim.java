package hurdline.study;

/**
 * How well a measure is to be known.
 *
 * @param measure its full name
 * @param halfWidth wanted half-width of the 95 % interval of its mean: in the measure's own unit, or a
 *     share of the mean
 * @param relative whether it is a share of the mean
 * @param said the aim as it was given
 */
public record Aim(String measure, double halfWidth, boolean relative, String said) {
  public Aim {
    if (!(halfWidth > 0)) {
      throw new IllegalArgumentException(
          "halfWidth is " + halfWidth + "; expected above 0, nothing is known exactly");
    }
  }
}
