package hurdline.chart.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.SummaryRow;
import hurdline.sample.Draft;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a reader finds in a table: each cell in the unit that its head names. */
class GridColumnsTest {
  private record Bin(String name, double holdsT, Optional<SummaryRow> level) {}

  private static final SummaryRow LEVEL =
      Draft.of(SummaryRow.class)
          .with(SummaryRow::measure, "bin.level.mean")
          .with(SummaryRow::unit, "t")
          .with(SummaryRow::mean, 10)
          .with(SummaryRow::low95, 9)
          .with(SummaryRow::high95, 11)
          .made();
  private static final List<Bin> BINS =
      List.of(
          new Bin("hurd_bin", 100, Optional.of(LEVEL)),
          new Bin("dust_bin", Double.NaN, Optional.empty()));

  private static Chart.Grid table(UnitSystem units, String levelIn) {
    return new GridColumns<Bin>(new Wording(units, Locale.US))
        .text("bin", Bin::name)
        .number("holds", 1, "t", Bin::holdsT)
        .mean("level", levelIn, Bin::level, "never filled")
        .yes("known", bin -> bin.level().isPresent())
        .of(BINS);
  }

  @Test
  void aHeadNamesTheUnitInWhichTheReaderHasItsCells() {
    Chart.Grid metric = table(UnitSystem.METRIC, "t");
    assertThat(metric.head()).containsExactly("bin", "holds t", "level t", "known");
    assertThat(metric.rows())
        .containsExactly(
            List.of("hurd_bin", "100.0", "10.0 (9.0 to 11.0)", "yes"),
            List.of("dust_bin", "not defined", "never filled", "no"));
    Chart.Grid us = table(UnitSystem.US, "t");
    assertThat(us.head()).containsExactly("bin", "holds ton", "level ton", "known");
    assertThat(us.rows().get(0)).containsExactly("hurd_bin", "110.2", "11.0 (9.9 to 12.1)", "yes");
  }

  @Test
  void aMeasureInAnotherUnitThanItsColumnIsRefused() {
    assertThatThrownBy(() -> table(UnitSystem.METRIC, "kg"))
        .hasMessage("bin.level.mean is in t; its column is in kg");
  }

  @Test
  void aRowOfAnotherLengthThanTheHeadIsRefused() {
    assertThatThrownBy(() -> new Chart.Grid(List.of("bin", "holds"), List.of(List.of("hurd_bin"))))
        .hasMessageContaining("[hurd_bin]");
  }
}
