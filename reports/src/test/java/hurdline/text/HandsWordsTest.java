package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class HandsWordsTest {
  private static SummaryRow row(String measure, double mean) {
    return SampleRow.of(measure, "h", mean);
  }

  private static List<String> sentences(double missedH, double absentH) {
    List<SummaryRow> rows =
        List.of(
            row(Measure.CREW_SHORT.of("stalk_line"), missedH),
            row(Measure.CREW_ABSENT.of("stalk_line"), absentH));
    return new HandsWords(rows, new Wording(UnitSystem.METRIC, Locale.ROOT)).sentences();
  }

  @Test
  void shiftsThatWereNotRunAreSaid() {
    assertThat(sentences(48, 210))
        .containsExactly(
            "Too few hands came for 48.00 h of shifts of the stalk line; hands missing in its other"
                + " shifts come to 210.0 h");
    assertThat(sentences(0, 12))
        .containsExactly(
            "Enough hands came to every shift of the stalk line; hands missing in its other shifts"
                + " come to 12.00 h");
  }
}
