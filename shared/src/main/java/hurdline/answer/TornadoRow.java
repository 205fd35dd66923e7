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
 * @param afterTaxAtLow what the option is worth after loan and tax at the lower end; NaN where the
 *     file has neither, like the two below; in a table of their own
 * @param afterTaxAtHigh at the upper end
 * @param afterTax as the file says
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
    double halfWidthAtHigh,
    double afterTaxAtLow,
    double afterTaxAtHigh,
    double afterTax) {
  /** Sums in another order differ by less, as shares of themselves. */
  private static final double ROUNDING = 1e-10;

  /**
   * Swing: how far the worth moves between the ends and what it is as the file says. Where both
   * ends move it the same way, that is the distance of the farther one; NaN where an end is.
   */
  public double swing() {
    return swing(netPresentValue, netPresentValueAtLow, netPresentValueAtHigh);
  }

  /** The same after loan and tax. */
  public double swingAfterTax() {
    return swing(afterTax, afterTaxAtLow, afterTaxAtHigh);
  }

  private static double swing(double unchanged, double low, double high) {
    double most = Math.max(unchanged, Math.max(low, high));
    double least = Math.min(unchanged, Math.min(low, high));
    boolean isRounding = most - least <= ROUNDING * Math.max(Math.abs(most), Math.abs(least));
    return isRounding ? 0 : most - least;
  }
}
