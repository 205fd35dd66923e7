package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class YardMoistureWordsTest {
  private static SummaryRow row(Measure measure, double mean) {
    return SampleRow.of(measure.of("open"), "share", mean);
  }

  private static List<String> sentences(double moisture, double damp) {
    return new YardMoistureWords(
            List.of(
                row(Measure.YARD_PLACE_MOISTURE_MEAN, moisture),
                row(Measure.YARD_PLACE_DAMP, damp)),
            new Wording(UnitSystem.METRIC, Locale.ROOT))
        .sentences();
  }

  @Test
  void whatBalesHaveBecomeIsSaid() {
    assertThat(sentences(0.1432, 0.125))
        .containsExactly(
            "Bales set on the table from the open had 14.32 % moisture, 12.50 % of them damp");
    assertThat(sentences(0.1432, 0))
        .containsExactly(
            "Bales set on the table from the open had 14.32 % moisture, none of them damp");
    assertThat(sentences(Double.NaN, Double.NaN)).isEmpty();
  }
}
