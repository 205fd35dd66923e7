package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PurgeWordsTest {
  private static final String PURGE = Measure.PRODUCT_PURGE.of("lint");

  private static List<String> sentences(SummaryRow... rows) {
    return new PurgeWords(List.of(rows), new Wording(UnitSystem.METRIC, Locale.ROOT)).sentences();
  }

  @Test
  void whatWasPurgeAndWhatItCostIsSaid() {
    assertThat(
            sentences(
                SampleRow.of(PURGE, "t", 12),
                SampleRow.of(Measure.PRODUCT_PURGE_COST.of("lint"), "USD", 9600)))
        .containsExactly(
            "12.00 t of lint were purge after changeovers, which cost 9,600 USD against the price");
    assertThat(sentences(SampleRow.of(PURGE, "t", 0)))
        .containsExactly("No package of lint was purge");
    assertThat(sentences()).isEmpty();
  }
}
