package hurdline.chart;

import hurdline.answer.HolderRow;
import hurdline.answer.RunAnswer;
import hurdline.words.Wording;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;

/** What held a line: one bar per cause, the longest on top, with its 95 % interval. */
final class HolderChart {
  private static final int BARS = 12;

  private final String line;
  private final List<HolderRow> rows;
  private final Wording wording;

  HolderChart(RunAnswer answer, String line, Wording wording) {
    this.line = line;
    this.rows = answer.holders().stream().filter(row -> row.line().equals(line)).toList();
    this.wording = wording;
  }

  Figure figure() {
    String title = "What limits " + wording.titles().lineInText(line);
    String svg =
        Look.svg("limited-" + line, plot(), false, 70 + 26 * shown().size(), title, alternative());
    return new Figure("limited-" + line, title, alternative(), svg, table());
  }

  private List<HolderRow> shown() {
    return rows.stream().filter(row -> row.hours() > 0).limit(BARS).toList();
  }

  private CategoryPlot plot() {
    IntervalData data = new IntervalData();
    for (HolderRow row : shown()) {
      data.add(
          100 * row.share(),
          100 * row.shareLow95(),
          100 * row.shareHigh95(),
          "share",
          wording.titles().causeLabel(row.cause()) + "  " + share(row) + " %");
    }
    NumberAxis axis = Look.numberAxis("% of scheduled hours, bar of the 95 % interval", wording);
    CategoryPlot plot = new CategoryPlot(data, Look.categoryAxis(), axis, new Bars());
    return Look.lying(plot);
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

  private String share(HolderRow row) {
    return wording.number(row.share(), row.shareLow95(), row.shareHigh95(), "share");
  }

  /** Hours are the share of nearly fixed scheduled hours, so they deserve the share's digits. */
  private String hours(HolderRow row) {
    double scheduled = row.hours() / row.share();
    return wording.number(
        row.hours(), scheduled * row.shareLow95(), scheduled * row.shareHigh95(), "h");
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    shown().forEach(row -> parts.add(wording.titles().causeLabel(row.cause()) + " " + wording.share(row)));
    return "Bars of the share of scheduled hours by what limited "
        + wording.titles().lineInText(line)
        + ": "
        + String.join(", ", parts)
        + ".";
  }

  private Figure.Grid table() {
    List<List<String>> cells = new ArrayList<>();
    for (HolderRow row : rows) {
      String range = wording.interval(row.share(), row.shareLow95(), row.shareHigh95(), "share");
      cells.add(List.of(wording.titles().causeLabel(row.cause()), "`" + row.cause() + "`", hours(row), share(row), range));
    }
    return new Figure.Grid(
        List.of("limited by", "in the tables", "hours", "%", "95 % interval"), cells);
  }
}
