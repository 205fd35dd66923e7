package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class MarketWordsTest {
  private static final String BEYOND = Measure.PRODUCT_BEYOND_MARKET.of("hurd");

  private static List<String> sentences(SummaryRow... rows) {
    return new MarketWords(List.of(rows), new Wording(UnitSystem.METRIC, Locale.ROOT)).sentences();
  }

  @Test
  void whatLayBeyondAndWhatItCostIsSaid() {
    assertThat(
            sentences(
                SampleRow.of(BEYOND, "t", 320),
                SampleRow.of(Measure.PRODUCT_MARKET_COST.of("hurd"), "USD", 12_400)))
        .containsExactly(
            "320.0 t of hurd lay beyond what its market takes at the price, which cost 12,400 USD"
                + " against one price for all");
    assertThat(sentences(SampleRow.of(BEYOND, "t", 320)))
        .containsExactly("320.0 t of hurd lay beyond what its market takes at the price");
  }

  @Test
  void aMarketThatTookAllIsSaidToo() {
    assertThat(sentences(SampleRow.of(BEYOND, "t", 0)))
        .containsExactly("The market took all hurd at the price");
    assertThat(sentences()).isEmpty();
  }
}
