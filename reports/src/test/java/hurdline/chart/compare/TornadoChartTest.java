package hurdline.chart.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.TornadoRow;
import hurdline.chart.kit.Chart;
import hurdline.sample.Draft;
import hurdline.sample.SampleCompare;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class TornadoChartTest {
  private static final Pattern BAR =
      Pattern.compile("<rect[^>]* fill=\"rgb[^>]* width=\"([0-9.]+)\" x=\"([0-9.]+)\"");

  /**
   * By 60 and 106 to the same side, then by 47 either way: all bars begin or end at what the worth
   * is as the file says.
   */
  @Test
  void bothEndsOfAnInputAreDrawnFromTheWorthInTheFile() {
    double none = Double.NaN;
    List<TornadoRow> rows =
        List.of(
            Draft.of(TornadoRow.class)
                .with(TornadoRow::option, "bigger_mill")
                .with(TornadoRow::input, "price")
                .with(TornadoRow::low, 0.8)
                .with(TornadoRow::high, 1.2)
                .with(TornadoRow::unit, "x")
                .with(TornadoRow::netPresentValueAtLow, 253)
                .with(TornadoRow::netPresentValueAtHigh, 347)
                .with(TornadoRow::netPresentValue, 300)
                .made(),
            Draft.of(TornadoRow.class)
                .with(TornadoRow::option, "bigger_mill")
                .with(TornadoRow::input, "yield")
                .with(TornadoRow::low, 0.8)
                .with(TornadoRow::high, 1.2)
                .with(TornadoRow::unit, "x")
                .with(TornadoRow::netPresentValueAtLow, 360)
                .with(TornadoRow::netPresentValueAtHigh, 406)
                .with(TornadoRow::netPresentValue, 300)
                .made());
    Wording wording = new Wording(UnitSystem.METRIC, Locale.ROOT);
    Chart figure = new CompareCharts(SampleCompare.with(rows), wording).tornado().get(0);
    assertThat(figure.table().rows())
        .extracting(row -> row.get(1))
        .containsExactly("`yield`", "`price`");
    List<double[]> bars =
        BAR.matcher(figure.svg()).results().map(TornadoChartTest::fromTo).toList();
    assertThat(bars).hasSize(4);
    double worth = bars.get(0)[0];
    assertThat(bars.get(1)[0]).as("the other end of the yield").isEqualTo(worth);
    double perUsd = (bars.get(1)[1] - worth) / 106;
    assertThat(bars.get(0)[1] - worth).isCloseTo(60 * perUsd, within(0.5));
    assertThat(bars.get(2)[1]).as("the lower price").isCloseTo(worth, within(0.5));
    assertThat(bars.get(3)[0]).as("the higher price").isCloseTo(worth, within(0.5));
  }

  private static double[] fromTo(MatchResult bar) {
    double width = Double.parseDouble(bar.group(1));
    double from = Double.parseDouble(bar.group(2));
    return new double[] {from, from + width};
  }
}
