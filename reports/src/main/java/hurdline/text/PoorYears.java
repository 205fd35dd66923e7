package hurdline.text;

import hurdline.answer.SummaryRow;

/** What a poor year brings beside the mean one, whose interval says nothing of single years. */
final class PoorYears {
  /** With fewer simulated years the 5th percentile is hardly more than the poorest of them. */
  static final int FEWEST = 20;

  private final Spoken spoken;

  PoorYears(Spoken spoken) {
    this.spoken = spoken;
  }

  /**
   * {@code ; one time in 20 less than 397,000 USD}, or a loss of more than that; empty where single
   * years do not differ or are too few.
   */
  String of(SummaryRow money) {
    if (money.replications() < FEWEST || !(money.p05() < money.p95())) {
      return "";
    }
    String amount =
        spoken.amount(Math.abs(money.p05()), money.low95(), money.high95(), money.unit());
    return "; one time in 20 " + (money.p05() < 0 ? "a loss of more than " : "less than ") + amount;
  }
}
