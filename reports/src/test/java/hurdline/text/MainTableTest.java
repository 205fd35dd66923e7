package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleAnswer;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTableTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);
  private static final MainTable YEAR = RunTable.of(SampleAnswer.year(), US);

  private static MainTable.Row row(String label, String unit, double mean, double half) {
    return MainTable.Row.of(
        "",
        label,
        unit,
        new MainTable.Figures(mean, mean - half, mean + half, mean - 3 * half, mean + 3 * half));
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 61, 66, 72, 79, 80, 90, 100})
  void noLineIsLongerThanTheTerminalIsWideAndEveryFigureIsThere(int width) {
    List<String> lines = YEAR.lines(width);
    assertThat(lines)
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
    String all = String.join("\n", lines);
    for (List<String> row : YEAR.grid()) {
      row.subList(1, row.size()).forEach(cell -> assertThat(all).contains(cell));
    }
  }

  @Test
  void wideTheColumnsStandUnderTheirHeads() {
    MainTable table =
        new MainTable(
            List.of(row("margin", "USD", 521_000, 5_500), row("carry-over", "bales", 2_000, 250)),
            US);
    assertThat(String.join("\n", table.lines(80)))
        .isEqualTo(
            """
                           mean             95 % interval       percentiles
                                                               5th     95th
            margin      521,000 USD    516,000 to 526,000  504,000  538,000
            carry-over    2,000 bales      1,800 to 2,200    1,200    2,800\
            """);
  }

  @Test
  void narrowThePercentilesStandUnderTheInterval() {
    MainTable table =
        new MainTable(List.of(row("margin before interest and tax", "USD", 521_000, 5_500)), US);
    assertThat(String.join("\n", table.lines(60)))
        .isEqualTo(
            """
                                            mean           95 % interval
                                                 5th and 95th percentile
            margin before interest and   521,000 USD  516,000 to 526,000
            tax                                      504,000 and 538,000\
            """);
  }

  @Test
  void ofOneReplicationThereAreNoIntervalsToShow() {
    MainTable table = RunTable.of(SampleAnswer.bare(), US);
    assertThat(table.head()).containsExactly("", "simulated", "unit");
    assertThat(table.legend(1)).isEqualTo("One simulated year: no interval can be given.");
    assertThat(table.lines(60))
        .containsExactly("Only", "  stalk fed          97.00 ton", "  limited by feeder  100.0 %");
  }

  @Test
  void evenTheLargestFiguresFitTheNarrowestTerminal() {
    MainTable table =
        new MainTable(
            List.of(row("revenue of all products", "USD", 8_521_342_000d, 5_500_000)), US);
    assertThat(table.lines(60))
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(60));
  }
}
