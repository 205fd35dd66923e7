package hurdline.chart.run;

import hurdline.answer.BottleneckRow;
import hurdline.answer.RunAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Hatch;
import hurdline.chart.kit.IntervalBars;
import hurdline.chart.kit.IntervalData;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;

/** What held a line: one bar per cause, the longest on top, with its 95 % interval. */
final class BottleneckChart {
  private static final int BARS = 12;

  private final String line;
  private final List<BottleneckRow> rows;
  private final Wording wording;

  BottleneckChart(RunAnswer answer, String line, Wording wording) {
    this.line = line;
    this.rows = answer.holders().stream().filter(row -> row.line().equals(line)).toList();
    this.wording = wording;
  }

  Chart figure() {
    String title = "What limits " + wording.titles().lineInText(line);
    String svg =
        ChartStyle.svg(
            "limited-" + line, plot(), false, 70 + 26 * shown().size(), title, alternative());
    return new Chart("limited-" + line, title, alternative(), svg, table());
  }

  private List<BottleneckRow> shown() {
    return rows.stream().filter(row -> row.hours() > 0).limit(BARS).toList();
  }

  private CategoryPlot plot() {
    IntervalData data = new IntervalData();
    for (BottleneckRow row : shown()) {
      data.add(
          100 * row.share(),
          100 * row.shareLow95(),
          100 * row.shareHigh95(),
          "share",
          wording.titles().causeLabel(row.cause()) + "  " + share(row) + " %");
    }
    NumberAxis axis =
        ChartStyle.numberAxis("% of scheduled hours, bar of the 95 % interval", wording);
    CategoryPlot plot = new CategoryPlot(data, ChartStyle.categoryAxis(), axis, new Bars());
    return ChartStyle.lying(plot);
  }

  /** The first bar, the holder, stands out by hatching as well as by colour. */
  private static final class Bars extends IntervalBars {
    private static final long serialVersionUID = 1L;

    @Override
    public Paint getItemPaint(int series, int category) {
      return category == 0
          ? new Hatch(Palette.ORANGE, Palette.INK, Hatch.Kind.RISING)
          : Palette.BLUE;
    }
  }

  private String share(BottleneckRow row) {
    return wording.number(row.share(), row.shareLow95(), row.shareHigh95(), "share");
  }

  /** Hours are the share of nearly fixed scheduled hours, so they deserve the share's digits. */
  private String hours(BottleneckRow row) {
    double scheduled = row.hours() / row.share();
    return wording.number(
        row.hours(), scheduled * row.shareLow95(), scheduled * row.shareHigh95(), "h");
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    shown()
        .forEach(
            row -> parts.add(wording.titles().causeLabel(row.cause()) + " " + wording.share(row)));
    return "Bars of the share of scheduled hours by what limited "
        + wording.titles().lineInText(line)
        + ": "
        + String.join(", ", parts)
        + ".";
  }

  private Chart.Grid table() {
    return new GridColumns<BottleneckRow>(wording)
        .text("limited by", row -> wording.titles().causeLabel(row.cause()))
        .text("in the tables", row -> "`" + row.cause() + "`")
        .text("hours", this::hours)
        .text("%", this::share)
        .text(
            "95 % interval",
            row -> wording.interval(row.share(), row.shareLow95(), row.shareHigh95(), "share"))
        .of(rows);
  }
}
