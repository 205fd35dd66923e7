package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PriceWordsTest {
  @Test
  void aPriceIsMoneyOverMass() {
    assertThat(
            new PriceWords(
                    SampleAnswer.with(
                        List.of(
                            SampleRow.of("product.dust.revenue", "USD", -1_200),
                            SampleRow.of("product.dust.sold", "t", 100),
                            SampleRow.of("product.coarse_hurd.revenue", "USD", 58_000),
                            SampleRow.of("product.coarse_hurd.sold", "t", 200),
                            SampleRow.of("money.stalk_line.crop_cost", "USD", 165_000),
                            SampleRow.of("mass.stalk.weighed_in", "t", 1_000))),
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
