package hurdline.text;

import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.Optional;

/** How often over the margin pays interest and repayment, as a lender asks. */
public final class CashWords {
  private final RunAnswer answer;
  private final Wording wording;

  public CashWords(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /**
   * Without its full stop; empty where the file says no loan.
   *
   * <p>The ratio is the margin before interest and tax over interest and repayment, both sums of
   * the calendar (debt service coverage; common practice, no source).
   */
  public Optional<String> sentence() {
    double due =
        answer.meanOr0(Measure.CASH_INTEREST.of()) + answer.meanOr0(Measure.CASH_REPAYMENT.of());
    return due > 0
        ? answer.find(Measure.MONEY_MARGIN.of()).map(margin -> sentence(due, margin))
        : Optional.empty();
  }

  private String sentence(double due, SummaryRow margin) {
    return "Interest and repayment take "
        + wording.rough(due, margin.unit())
        + "; the margin comes to "
        + times(margin.mean() / due)
        + " that"
        + (margin.replications() < PoorYears.FEWEST
            ? ""
            : " on average, and one time in 20 "
                + (margin.p05() < 0
                    ? "it is below 0"
                    : "to less than " + times(margin.p05() / due)));
  }

  private String times(double ratio) {
    return wording.fixed(ratio, 2, "") + " times";
  }
}
