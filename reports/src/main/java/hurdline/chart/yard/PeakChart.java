package hurdline.chart.yard;

import hurdline.answer.PeakRow;
import hurdline.answer.YardAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** How the most that would lie in a yard without limit differs from season to season. */
final class PeakChart {
  private final YardAnswer answer;
  private final Wording wording;

  PeakChart(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  Chart figure() {
    String title = "Peak of the yard without limit";
    String svg = ChartStyle.svg("peaks", plot(), true, 300, title, alternative());
    return new Chart("peaks", title, alternative(), svg, table());
  }

  private XYPlot plot() {
    YIntervalSeries peaks = new YIntervalSeries("at most this in that share of seasons");
    YIntervalSeries known =
        new YIntervalSeries("95 % interval, where the seasons are enough for one");
    for (PeakRow row : answer.peaks()) {
      peaks.add(percent(row), row.value(), row.value(), row.value());
      if (!Double.isNaN(row.low95()) && !Double.isNaN(row.high95())) {
        known.add(percent(row), row.value(), row.low95(), row.high95());
      }
    }
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(peaks);
    data.addSeries(known);
    DeviationRenderer band = new DeviationRenderer(true, false);
    band.setAlpha(0.35f);
    band.setSeriesPaint(0, Palette.BLUE);
    band.setSeriesFillPaint(0, Palette.BLUE);
    band.setSeriesStroke(0, new BasicStroke(2));
    band.setSeriesPaint(1, Palette.SKY);
    band.setSeriesFillPaint(1, Palette.SKY);
    band.setSeriesStroke(1, new BasicStroke(1));
    NumberAxis share = ChartStyle.numberAxis("share of seasons, %", wording);
    share.setRange(0, 100);
    NumberAxis level = ChartStyle.numberAxis(answer.asked().unit() + " at the peak", wording);
    level.setAutoRangeIncludesZero(false);
    return ChartStyle.dressed(new XYPlot(data, share, level, band));
  }

  private static int percent(PeakRow row) {
    return Integer.parseInt(row.quantile().substring(1));
  }

  private String alternative() {
    PeakRow first = answer.peaks().get(0);
    PeakRow last = answer.peaks().get(answer.peaks().size() - 1);
    return "A rising line of the peak that a share of seasons does not exceed: from "
        + wording.fixed(first.value(), 0, first.unit())
        + " "
        + first.unit()
        + " in one season of 20 to "
        + wording.fixed(last.value(), 0, last.unit())
        + " in 19 of 20.";
  }

  private Chart.Grid table() {
    return new GridColumns<PeakRow>(wording)
        .text("of seasons peak at or below", row -> percent(row) + " %")
        .text(answer.asked().unit(), row -> wording.fixed(row.value(), 0, row.unit()))
        .text("from (95 %)", row -> limit(row.low95(), row.unit()))
        .text("to (95 %)", row -> limit(row.high95(), row.unit()))
        .of(answer.peaks());
  }

  private String limit(double value, String unit) {
    return Double.isNaN(value) ? "no limit" : wording.fixed(value, 0, unit);
  }
}
