package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PlaceLimitWordsTest {
  private static SummaryRow row(Measure measure, String unit, double mean) {
    return SampleRow.of(measure.of("open"), unit, mean);
  }

  private static List<String> sentences(SummaryRow... rows) {
    return new PlaceLimitWords(List.of(rows), new Wording(UnitSystem.METRIC, Locale.ROOT))
        .sentences();
  }

  @Test
  void howFarAndHowLongIsSaid() {
    assertThat(
            sentences(
                row(Measure.YARD_PLACE_MASS_PEAK, "t", 640),
                row(Measure.YARD_PLACE_OVER_MASS, "h", 312),
                row(Measure.YARD_PLACE_TIMES_OVER_MASS, "count", 3)))
        .containsExactly(
            "Up to 640.0 t lay in the open, above the limit that the file gives in 312.0 h, 3.0"
                + " times; the local fire code and the insurer decide");
    assertThat(
            sentences(
                row(Measure.YARD_PLACE_VALUE_PEAK, "USD", 64_000),
                row(Measure.YARD_PLACE_OVER_VALUE, "h", 0)))
        .containsExactly(
            "Up to 64,000 USD lay in the open, never above the limit that the file gives");
    assertThat(
            sentences(
                row(Measure.YARD_PLACE_MASS_PEAK, "t", 640),
                row(Measure.YARD_PLACE_OVER_MASS, "h", 31),
                row(Measure.YARD_PLACE_TIMES_OVER_MASS, "count", 0.4)))
        .as("in some years alone")
        .singleElement()
        .asString()
        .contains("in 31.00 h, 0.4 times");
    assertThat(sentences()).isEmpty();
  }
}
