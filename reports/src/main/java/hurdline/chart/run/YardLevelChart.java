package hurdline.chart.run;

import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.YardLevelRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;

/** What lies in the yard through the calendar: mean, 5 to 95 % band, and what the places hold. */
public final class YardLevelChart {
  private final Header header;
  private final String name;
  private final String title;
  private final String unit;
  private final List<YardLevelRow> levels;
  private final double capacity;
  private final Wording wording;

  /**
   * @param name the figure's
   * @param levels of one crop in one place or in all
   * @param capacity what the line marks; 0 for no line
   */
  public YardLevelChart(
      Header header,
      String name,
      String title,
      List<YardLevelRow> levels,
      double capacity,
      Wording wording) {
    this.header = header;
    this.name = name;
    this.title = title;
    this.levels = levels;
    this.unit = levels.isEmpty() ? "bales" : levels.get(0).unit();
    this.capacity = capacity;
    this.wording = wording;
  }

  static YardLevelChart of(RunAnswer answer, Outline.Crop crop, Wording wording) {
    return new YardLevelChart(
        answer.header(),
        "yard-" + crop.name(),
        wording.titles().crop(crop.name()) + " in the yard",
        answer.levels().stream()
            .filter(row -> row.crop().equals(crop.name()) && row.isWholeYard())
            .toList(),
        answer.outline().capacityFor(crop.name()),
        wording);
  }

  public Chart figure() {
    String svg = ChartStyle.svg(name, plot(), true, 300, title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private XYPlot plot() {
    YIntervalSeries level = new YIntervalSeries("mean, with band from 5 to 95 % of replications");
    for (YardLevelRow row : levels) {
      level.add(ChartStyle.millis(row.date()), row.mean(), row.p05(), row.p95());
    }
    NumberAxis axis = ChartStyle.numberAxis(unit + ", highest of the day", wording);
    XYPlot plot =
        ChartStyle.band(
            level, ChartStyle.dateAxis(header.from(), header.to(), wording), axis, false);
    if (capacity > 0) {
      axis.setRange(
          0,
          1.1 * Math.max(capacity, levels.stream().mapToDouble(YardLevelRow::p95).max().orElse(0)));
      plot.addRangeMarker(capacityLine());
    }
    return plot;
  }

  private ValueMarker capacityLine() {
    ValueMarker line = new ValueMarker(capacity, Palette.VERMILLION, ChartStyle.DASHED);
    ChartStyle.label(line, "places hold " + wording.amount(capacity, unit), 12);
    line.setLabelAnchor(RectangleAnchor.TOP_LEFT);
    line.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
    return line;
  }

  private String alternative() {
    YardLevelRow most = null;
    for (YardLevelRow row : levels) {
      most = most == null || row.mean() > most.mean() ? row : most;
    }
    String peak =
        most == null
            ? "nothing is recorded"
            : "on average the most at "
                + wording.date(most.date())
                + ", "
                + count(most.mean())
                + " "
                + unit
                + " with a 5 to 95 % band from "
                + count(most.p05())
                + " to "
                + count(most.p95());
    return "A line of the most that lies in the yard on each day: "
        + peak
        + (capacity > 0 ? "; all places that take it hold " + wording.amount(capacity, unit) : "")
        + ".";
  }

  /** Month ends only; every date is in yard_levels.csv. */
  private Chart.Grid table() {
    String of = " " + unit;
    return new GridColumns<YardLevelRow>(wording)
        .text("on", row -> wording.date(row.date()))
        .text("mean" + of, row -> count(row.mean()))
        .text("5 %" + of, row -> count(row.p05()))
        .text("50 %" + of, row -> count(row.p50()))
        .text("95 %" + of, row -> count(row.p95()))
        .of(levels.stream().filter(this::isLastOfMonth).toList());
  }

  private boolean isLastOfMonth(YardLevelRow row) {
    return row.date().plusDays(1).getDayOfMonth() == 1 || row.date().equals(header.to());
  }

  private String count(double value) {
    return wording.fixed(value, 0, unit);
  }
}
