package hurdline.answer;

/**
 * What an option is worth with one input at either end; a row of {@code tornado.csv}.
 *
 * @param input its path in the plant file
 * @param low the lower end
 * @param high the upper end
 * @param unit of both ends; {@code x} where they are factors on what the file says
 * @param netPresentValueAtLow mean over the same replications as all else, in the file's currency
 * @param netPresentValue as the file says; not in the table, as are those that follow
 * @param halfWidthAtLow of the 95 % interval of the difference, life by life, between the worth at the lower end and that as
 *     the file says; NaN with fewer than two lives
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

  /** How far the ends lie apart. */
  public double width() {
    return Math.abs(netPresentValueAtHigh - netPresentValueAtLow);
  }
}
