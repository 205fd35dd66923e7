package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CashWordsTest {
  private static SummaryRow row(String measure, double mean, double p05) {
    return Draft.of(SummaryRow.class)
        .with(SummaryRow::option, "base")
        .with(SummaryRow::measure, measure)
        .with(SummaryRow::unit, "USD")
        .with(SummaryRow::mean, mean)
        .with(SummaryRow::p05, p05)
        .with(SummaryRow::replications, 40)
        .made();
  }

  private static String said(double poorMargin) {
    return new CashWords(
            SampleAnswer.with(
                List.of(
                    row("money.margin", 206_000, poorMargin),
                    row("cash.interest", 41_500, 41_500),
                    row("cash.repayment", 39_900, 39_900))),
            new Wording(UnitSystem.US, Locale.ROOT))
        .sentence()
        .orElseThrow();
  }

  @Test
  void theMarginIsSetAgainstWhatTheLoanTakes() {
    assertThat(said(126_000))
        .isEqualTo(
            "Interest and repayment take 81,400 USD; the margin comes to 2.53 times that on"
                + " average, and one time in 20 to less than 1.55 times");
    assertThat(said(-2_000)).endsWith("on average, and one time in 20 it is below 0");
  }

  @Test
  void withoutALoanNothingIsSaid() {
    assertThat(
            new CashWords(SampleAnswer.year(), new Wording(UnitSystem.US, Locale.ROOT)).sentence())
        .isEmpty();
  }
}
