package hurdline.chart.yard;

import hurdline.answer.GainRow;
import hurdline.answer.YardAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GainBars;
import hurdline.text.Wording;
import java.util.Comparator;
import java.util.List;

/**
 * By how much the peak of the yard without limit differs with one thing changed, the lowest peak
 * first.
 */
final class ShorterPeakChart {
  private final String unit;
  private final List<GainRow> rows;
  private final GainBars bars;

  ShorterPeakChart(YardAnswer answer, Wording wording) {
    unit = answer.asked().unit();
    rows = answer.gains().stream().sorted(Comparator.comparingDouble(GainRow::gain)).toList();
    bars = new GainBars(rows, wording);
  }

  Chart figure() {
    String title = "What shortens the peak";
    String name = "shorter-peak";
    return new Chart(
        name,
        title,
        alternative(),
        bars.svg(name, unit + " of peak", 80, title, alternative()),
        table());
  }

  private String alternative() {
    return "Bars of the difference in the peak, "
        + unit
        + ": "
        + bars.said(bars::label)
        + (bars.leavesOut() ? "; the others change nothing" : "")
        + ".";
  }

  private Chart.Grid table() {
    return new Chart.Grid(
        List.of("", "changed", "peak, " + unit, "joint 95 % interval", "significant"),
        rows.stream().map(bars::cells).toList());
  }
}
