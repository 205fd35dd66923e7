package hurdline.page;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import hurdline.chart.kit.Chart;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class OrderTableTest {
  private static final LocalDate DUE = LocalDate.of(2027, 12, 15);

  /** Day 352 of a calendar that begins on 4 January. */
  @Test
  void eachOrderHasItsRow() {
    OrderRow late =
        new OrderRow(
            "base", "fine_hurd", 2, 100, DUE, 40, 38, 30, 0.588, 0.873, 352, 4.5, 13.5, 1.25, 900);
    OrderRow never =
        new OrderRow(
            "base", "fine_hurd", 3, 50, DUE, 40, 0, 0, 0, 0.088, Double.NaN, 16, 16, 50, 0);
    RunAnswer answer =
        Draft.from(SampleAnswer.year()).with(RunAnswer::orders, List.of(late, never)).made();
    Chart.Grid grid = new OrderTable(answer, new Wording(UnitSystem.METRIC, Locale.ROOT)).grid();
    assertThat(grid.head())
        .startsWith("order", "ordered t", "due")
        .endsWith("missing t", "penalty USD");
    assertThat(grid.rows().get(0))
        .containsExactly(
            "fine hurd 2",
            "100.0",
            "2027-12-15",
            "75 (59 to 87)",
            "38",
            "2027-12-21",
            "4.5",
            "13.5",
            "1.2",
            "900");
    assertThat(grid.rows().get(1)).contains("never", "0", "50.0");
  }
}
