package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PriceWordsTest {
  private static SummaryRow row(String measure, String unit, double mean) {
    return Draft.of(SummaryRow.class)
        .with(SummaryRow::option, "base")
        .with(SummaryRow::measure, measure)
        .with(SummaryRow::unit, unit)
        .with(SummaryRow::mean, mean)
        .made();
  }

  @Test
  void aPriceIsMoneyOverMass() {
    assertThat(
            new PriceWords(
                    SampleAnswer.with(
                        List.of(
                            row("product.dust.revenue", "USD", -1_200),
                            row("product.dust.sold", "t", 100),
                            row("product.coarse_hurd.revenue", "USD", 58_000),
                            row("product.coarse_hurd.sold", "t", 200),
                            row("money.stalk_line.crop_cost", "USD", 165_000),
                            row("mass.stalk.weighed_in", "t", 1_000))),
                    new Wording(UnitSystem.METRIC, Locale.ROOT))
                .sentence())
        .contains(
            "Mean prices behind these sums: coarse hurd 290 USD/t and dust -12.0 USD/t, sold at their"
                + " moisture basis; stalk 165 USD/t, bought as weighed in. They are the plant file's,"
                + " with its grades and terms, and stay the same over the calendar");
  }

  @Test
  void whereNothingIsSoldOrBoughtNothingIsSaid() {
    assertThat(
            new PriceWords(SampleAnswer.bare(), new Wording(UnitSystem.US, Locale.ROOT)).sentence())
        .isEmpty();
  }
}
