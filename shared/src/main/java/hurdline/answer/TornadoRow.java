package hurdline.answer;

/**
 * What an option is worth with one input at either end; a row of {@code tornado.csv}.
 *
 * @param input its path in the plant file
 * @param low the lower end
 * @param high the upper end
 * @param unit of both ends; {@code x} where they are factors on what the file says
 * @param netPresentValueAtLow mean over the same service lives as all else, in the file's currency
 * @param netPresentValue as the file says
 * @param halfWidthAtLow of the 95 % interval of the difference, life by life, between the worth at
 *     the lower end and that as the file says; NaN with fewer than two lives; not in the table, nor
 *     the other
 * @param halfWidthAtHigh the same of the upper end
 */
public record TornadoRow(
    String option,
    String input,
    double low,
    double high,
    String unit,
    double netPresentValueAtLow,
    double netPresentValueAtHigh,
    double netPresentValue,
    double halfWidthAtLow,
    double halfWidthAtHigh) {

  /**
   * Swing: how far the worth moves between the ends and what it is as the file says. Where both
   * ends move it the same way, that is the distance of the farther one; NaN where an end is.
   */
  public double swing() {
    double most = Math.max(netPresentValue, Math.max(netPresentValueAtLow, netPresentValueAtHigh));
    double least = Math.min(netPresentValue, Math.min(netPresentValueAtLow, netPresentValueAtHigh));
    return most - least;
  }
}
