package hurdline.answer;

/**
 * What an option is worth over its life, in one quantity; a row of {@code payback.csv}.
 *
 * @param quantity which one
 * @param unit the currency, {@code share} or {@code yr}
 * @param mean over the lives; NaN where it is not defined in every life
 * @param p05 5 % quantile over the lives; NaN where it is not defined
 * @param gaps how often there is none, or another one; not in the table
 */
public record PaybackRow(
    String option,
    Quantity quantity,
    String unit,
    double mean,
    double low95,
    double high95,
    double p05,
    double p50,
    double p95,
    Gaps gaps) {

  /**
   * Lives without the figure, or with another one beside it.
   *
   * @param lives all that were simulated; 0 where there is nothing to pay back
   * @param without in how many there is none: it is never paid back, or no internal rate lies above
   *     -50 %
   * @param withOther in how many there is another internal rate
   * @param otherLow the lowest of these; NaN where there is none
   * @param otherHigh the highest
   */
  public record Gaps(int lives, int without, int withOther, double otherLow, double otherHigh) {
    /** Of a figure that each of so many lives has. */
    public static Gaps none(int lives) {
      return new Gaps(lives, 0, 0, Double.NaN, Double.NaN);
    }

    /** Of an option that costs nothing. */
    public static Gaps nothingToPayBack() {
      return none(0);
    }
  }

  /** What is told of a life. */
  public enum Quantity {
    NET_PRESENT_VALUE,
    INTERNAL_RATE_OF_RETURN,
    SIMPLE_PAYBACK,
    DISCOUNTED_PAYBACK,
    CHANCE_OF_PAYBACK,
    CHANCE_OF_LOSS,
    /** What the option adds to the margin in the first year, at the file's prices. */
    ADDED_IN_FIRST_YEAR,
    /** The same in each later year, on average over a life. */
    ADDED_IN_EACH_LATER_YEAR,
    /** What the owner gains after the purchase's loan and tax, before an accountant has looked. */
    NET_PRESENT_VALUE_AFTER_TAX,
    /** After how long the owner's own money is back, after loan and tax, not discounted. */
    PAYBACK_AFTER_TAX;

    /** As it stands in the table: {@code net_present_value}. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
