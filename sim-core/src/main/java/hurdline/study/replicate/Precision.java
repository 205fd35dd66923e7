package hurdline.study.replicate;

/**
 * How well a measure is to be known.
 *
 * @param measure its full name
 * @param halfWidth wanted half-width of the 95 % interval of its mean: in the measure's own unit,
 *     or a share of the mean
 * @param relative whether it is a share of the mean
 * @param said the aim as it was given
 */
public record Precision(String measure, double halfWidth, boolean relative, String said) {
  public Precision {
    if (!(halfWidth > 0)) {
      throw new IllegalArgumentException(
          "halfWidth is " + halfWidth + "; expected above 0, nothing is known exactly");
    }
  }
}
