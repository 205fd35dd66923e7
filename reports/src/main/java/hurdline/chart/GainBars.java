package hurdline.chart;

import hurdline.answer.GainRow;
import hurdline.words.IncreaseWords;
import hurdline.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;

/** Bars of what one thing after another brings, in the order given, pale where that is not told from none. */
final class GainBars {
  private final List<GainRow> rows;
  private final List<GainRow> drawn;
  private final Wording wording;

  GainBars(List<GainRow> rows, Wording wording) {
    this.rows = rows;
    this.wording = wording;
    List<GainRow> some =
        rows.stream().filter(row -> row.gain() != 0 || row.high95() > row.low95()).toList();
    drawn = some.isEmpty() ? rows : some;
  }

  String svg(String name, String axis, int margins, String title, String alternative) {
    return Look.svg(name, plot(axis), false, margins + 24 * drawn.size(), title, alternative);
  }

  private CategoryPlot plot(String axis) {
    IntervalData data = new IntervalData();
    for (GainRow row : drawn) {
      data.add(
          wording.shown(row.gain(), row.unit()),
          wording.shown(row.low95(), row.unit()),
          wording.shown(row.high95(), row.unit()),
          "gain",
          label(row));
    }
    NumberAxis amounts =
        Look.numberAxis(
            axis + ", bar of the joint 95 % interval; pale: not significant", wording);
    CategoryPlot plot =
        Look.lying(
            new CategoryPlot(
                data,
                Look.categoryAxis(),
                amounts,
                new ToldBars(drawn.stream().map(GainRow::toldApart).toList())));
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  /** {@code truck: one more}. */
  String label(GainRow row) {
    return what(row) + ": " + IncreaseWords.of(row.more(), wording);
  }

  String what(GainRow row) {
    return IncreaseWords.what(row, wording);
  }

  /** The bars in words. */
  String said(Function<GainRow, String> label) {
    List<String> parts = new ArrayList<>();
    drawn.forEach(
        row ->
            parts.add(
                label.apply(row)
                    + " "
                    + number(row)
                    + (row.toldApart() ? "" : " (not significant)")));
    return String.join(", ", parts);
  }

  /** What changes nothing at all is not drawn, but stands in the table. */
  boolean leavesOut() {
    return drawn.size() < rows.size();
  }

  /** A row of the table. */
  List<String> cells(GainRow row) {
    return List.of(
        what(row),
        IncreaseWords.of(row.more(), wording),
        number(row),
        wording.interval(row.gain(), row.low95(), row.high95(), row.unit()),
        row.toldApart() ? "yes" : "no");
  }

  private String number(GainRow row) {
    return wording.number(row.gain(), row.low95(), row.high95(), row.unit());
  }
}
