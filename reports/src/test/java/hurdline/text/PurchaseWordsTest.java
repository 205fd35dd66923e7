package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PurchaseWordsTest {
  private static SummaryRow row(Measure measure, String unit, double mean) {
    return SampleRow.of(measure.of("stalk"), unit, mean);
  }

  private static List<String> sentences(SummaryRow... rows) {
    return new PurchaseWords(List.of(rows), new Wording(UnitSystem.METRIC, Locale.ROOT))
        .sentences();
  }

  @Test
  void whatGradesAndLimitsDidIsSaid() {
    assertThat(
            sentences(
                row(Measure.INTAKE_REJECTED, "bales", 120),
                row(Measure.MASS_REJECTED, "t", 57.6),
                row(Measure.MASS_PRICE_FACTOR, "share", 0.934)))
        .containsExactly(
            "120 bales of stalk, 57.60 t, were rejected at weigh-in",
            "By its grades stalk was paid 93.40 % of what its price alone would come to");
    assertThat(sentences(row(Measure.INTAKE_REJECTED, "bales", 0)))
        .containsExactly("No load of stalk was rejected at weigh-in");
    assertThat(sentences(row(Measure.MASS_PRICE_FACTOR, "share", Double.NaN))).isEmpty();
    assertThat(sentences(row(Measure.YARD_KEPT_APART, "bales", 96)))
        .containsExactly("Up to 96 bales of stalk were kept apart until their release");
    assertThat(
            sentences(
                row(Measure.INTAKE_FAILED, "bales", 64),
                row(Measure.MASS_FAILED, "t", 26.1),
                row(Measure.MONEY_CROP_FAILED, "USD", 480)))
        .containsExactly(
            "64 bales of stalk, 26.10 t, failed their test and were not paid for; to be rid of them"
                + " cost 480.0 USD");
    assertThat(
            sentences(
                row(Measure.INTAKE_FAILED, "bales", 64), row(Measure.MONEY_CROP_FAILED, "USD", 0)))
        .containsExactly("64 bales of stalk failed their test and were not paid for");
    assertThat(sentences(row(Measure.INTAKE_FAILED, "bales", 0)))
        .containsExactly("No load of stalk failed its test");
    assertThat(sentences()).isEmpty();
  }

  @Test
  void whatTermsCostIsSaid() {
    assertThat(sentences(row(Measure.MONEY_CROP_AREA, "USD", 12_400)))
        .containsExactly("12,400 USD of what stalk cost was paid for the area of its fields");
    assertThat(sentences(row(Measure.MONEY_ADVANCE_INTEREST, "USD", 1_250)))
        .containsExactly(
            "Until they were earned, advances on stalk cost 1,250 USD interest, which is not in the"
                + " margin");
    assertThat(
            sentences(
                row(Measure.MONEY_ADVANCE, "USD", 40_000),
                row(Measure.MONEY_ADVANCE_OPEN, "USD", 1_500),
                row(Measure.MONEY_ADVANCE_SHORT, "USD", 3_200)))
        .containsExactly(
            "40,000 USD was paid for fields of stalk on contract, 3,200 USD more than all bales of"
                + " a field came to and 1,500 USD for bales that had not come by the end");
    assertThat(
            sentences(
                row(Measure.MONEY_ADVANCE, "USD", 40_000),
                row(Measure.MONEY_ADVANCE_OPEN, "USD", 0),
                row(Measure.MONEY_ADVANCE_SHORT, "USD", 0)))
        .containsExactly(
            "40,000 USD was paid for fields of stalk on contract, and their bales came to as much");
  }
}
