package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class MarketWordsTest {
  private static final String BEYOND = Measure.PRODUCT_BEYOND_MARKET.of("hurd");

  private static SummaryRow row(String measure, String unit, double mean) {
    return new SummaryRow(
        "base", measure, unit, mean, mean, mean, 0, mean, mean, mean, mean, mean, 40, "student");
  }

  private static List<String> sentences(SummaryRow... rows) {
    return new MarketWords(List.of(rows), new Wording(UnitSystem.METRIC, Locale.ROOT)).sentences();
  }

  @Test
  void whatLayBeyondAndWhatItCostIsSaid() {
    assertThat(
            sentences(
                row(BEYOND, "t", 320), row(Measure.PRODUCT_MARKET_COST.of("hurd"), "USD", 12_400)))
        .containsExactly(
            "320.0 t of hurd lay beyond what its market takes at the price, which cost 12,400 USD"
                + " against one price for all");
    assertThat(sentences(row(BEYOND, "t", 320)))
        .containsExactly("320.0 t of hurd lay beyond what its market takes at the price");
  }

  @Test
  void aMarketThatTookAllIsSaidToo() {
    assertThat(sentences(row(BEYOND, "t", 0)))
        .containsExactly("The market took all hurd at the price");
    assertThat(sentences()).isEmpty();
  }
}
