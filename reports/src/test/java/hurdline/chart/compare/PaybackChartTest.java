package hurdline.chart.compare;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.CompareAnswer;
import hurdline.answer.LifeTerms;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.ServiceLifeRow;
import hurdline.chart.kit.Chart;
import hurdline.sample.Draft;
import hurdline.sample.SampleCompare;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PaybackChartTest {
  /**
   * Five lives pay back after 1, 2, 3, 4 years and never: by definition 7 a quarter of them by 2,
   * half by 3, 5 % by 1.2 years.
   */
  @Test
  void marksAreTheQuantilesOfThePaybackTable() {
    List<ServiceLifeRow> lives = new ArrayList<>();
    for (int life = 1; life <= 5; life++) {
      lives.add(
          new ServiceLifeRow(
              "bigger_mill",
              life,
              1,
              0.1,
              Double.NaN,
              life < 5 ? life : Double.NaN,
              life < 5 ? 2 * life : Double.NaN));
    }
    double none = Double.NaN;
    PaybackRow row =
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, "bigger_mill")
            .with(PaybackRow::quantity, Quantity.SIMPLE_PAYBACK)
            .with(PaybackRow::unit, "yr")
            .with(PaybackRow::p05, 1.2)
            .with(PaybackRow::p50, 3)
            .with(PaybackRow::gaps, new PaybackRow.Gaps(5, 1, 0, none, none))
            .made();
    CompareAnswer answer =
        SampleCompare.with(
            List.of(row),
            lives,
            new LifeTerms(365, "", List.of(), 0.09, 5, LifeTerms.Carried.NOTHING));
    Chart figure =
        new CompareCharts(answer, new Wording(UnitSystem.METRIC, Locale.ROOT)).payback().get(0);
    assertThat(figure.table().rows())
        .extracting(cells -> cells.get(1))
        .containsExactly("1.20", "2.00", "3.00", "4.00", "not in its life");
  }
}
