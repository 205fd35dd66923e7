package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.BottleneckRow;
import hurdline.answer.SummaryRow;
import hurdline.sample.Draft;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  private static SummaryRow row(String unit, double mean, double low, double high) {
    return Draft.of(SummaryRow.class)
        .with(SummaryRow::option, "base")
        .with(SummaryRow::measure, "m")
        .with(SummaryRow::unit, unit)
        .with(SummaryRow::mean, mean)
        .with(SummaryRow::low95, low)
        .with(SummaryRow::high95, high)
        .each(
            1,
            SummaryRow::sd,
            SummaryRow::p05,
            SummaryRow::p50,
            SummaryRow::p95,
            SummaryRow::least,
            SummaryRow::most)
        .with(SummaryRow::replications, 40)
        .with(SummaryRow::interval, "student")
        .made();
  }

  @ParameterizedTest
  @CsvSource({
    "2563.71, 2522.71, 2604.71, '2,560 t (2,520 to 2,600)'",
    "2563.71, 2549.71, 2577.71, '2,564 t (2,550 to 2,578)'",
    "2563.71, 2563.70, 2563.72, '2,563.7 t'",
    "0.0421, 0.038, 0.046, '0.042 t (0.038 to 0.046)'",
    "-120443.2, -141000, -100000, '-120,000 t (-140,000 to -100,000)'",
    "3, -40, 46, '0 t (-40 to 50)'"
  })
  void aNumberHasNoMoreDigitsThanItsIntervalSupports(
      double mean, double low, double high, String words) {
    assertThat(METRIC.withInterval(row("t", mean, low, high))).isEqualTo(words);
  }

  @Test
  void withoutAnIntervalFourDigitsAreEnough() {
    assertThat(METRIC.withInterval(row("t", 88.123456, Double.NaN, Double.NaN)))
        .isEqualTo("88.12 t");
    assertThat(METRIC.withInterval(row("h", 2048, 2048, 2048))).isEqualTo("2,048 h");
    assertThat(METRIC.withInterval(row("USD", 1234567, 1234567, 1234567)))
        .isEqualTo("1,234,567 USD");
  }

  @Test
  void theUndefinedIsSaidInWords() {
    assertThat(METRIC.withInterval(row("min", Double.NaN, Double.NaN, Double.NaN)))
        .isEqualTo("not defined");
  }

  @Test
  void balesAreCountedWhole() {
    assertThat(US.withInterval(row("bales", 143.24, 142.9, 143.6)))
        .isEqualTo("143 bales (143 to 144)");
    assertThat(US.withInterval(row("count", 12, 12, 12))).isEqualTo("12");
  }

  @Test
  void americanUnitsAreShortTonsAndPounds() {
    assertThat(US.amount(0.90718474, "t")).isEqualTo("1.000 ton");
    assertThat(US.amount(1, "t/h")).isEqualTo("1.102 ton/h");
    assertThat(US.amount(0.45359237, "kg")).isEqualTo("1.000 lb");
    assertThat(US.amount(100, "USD/t")).isEqualTo("90.72 USD/ton");
    assertThat(US.amount(10, "kWh")).isEqualTo("10.00 kWh");
  }

  @Test
  void aLocaleSetsItsOwnMarks() {
    assertThat(
            new Wording(UnitSystem.METRIC, Locale.GERMANY)
                .withInterval(row("t", 2563.71, 2522, 2605)))
        .isEqualTo("2.560 t (2.520 to 2.600)");
  }

  @Test
  void aShareIsSaidInPercent() {
    assertThat(US.share(new BottleneckRow("base", "l", "mill", 1, 0.571, 0.537, 0.605, "student")))
        .isEqualTo("57 % (54 to 60 %)");
    assertThat(
            US.share(new BottleneckRow("base", "l", "mill", 1, 0.571, Double.NaN, Double.NaN, "")))
        .isEqualTo("57.10 %");
  }
}
