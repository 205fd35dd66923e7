package hurdline.chart.kit;

import hurdline.answer.GainRow;
import hurdline.text.IncreaseWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;

/**
 * Bars of what one thing after another brings, in the order given, pale where that is not told from
 * none.
 */
public final class GainBars {
  private final List<GainRow> rows;
  private final List<GainRow> drawn;
  private final Wording wording;

  public GainBars(List<GainRow> rows, Wording wording) {
    this.rows = rows;
    this.wording = wording;
    List<GainRow> some =
        rows.stream().filter(row -> row.gain() != 0 || row.high95() > row.low95()).toList();
    drawn = some.isEmpty() ? rows : some;
  }

  public String svg(String name, String axis, int margins, String title, String alternative) {
    return ChartStyle.svg(name, plot(axis), false, margins + 24 * drawn.size(), title, alternative);
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
        ChartStyle.numberAxis(
            axis + ", bar of the joint 95 % interval; pale: not significant", wording);
    CategoryPlot plot =
        ChartStyle.lying(
            new CategoryPlot(
                data,
                ChartStyle.categoryAxis(),
                amounts,
                new SignificanceBarRenderer(drawn.stream().map(GainRow::significant).toList())));
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  /** {@code truck: one more}. */
  public String label(GainRow row) {
    return what(row) + ": " + IncreaseWords.of(row.more(), wording);
  }

  public String what(GainRow row) {
    return IncreaseWords.what(row, wording);
  }

  /** The bars in words. */
  public String said(Function<GainRow, String> label) {
    List<String> parts = new ArrayList<>();
    drawn.forEach(
        row ->
            parts.add(
                label.apply(row)
                    + " "
                    + number(row)
                    + (row.significant() ? "" : " (not significant)")));
    return String.join(", ", parts);
  }

  /** What changes nothing at all is not drawn, but stands in the table. */
  public boolean leavesOut() {
    return drawn.size() < rows.size();
  }

  /** A row of the table. */
  public List<String> cells(GainRow row) {
    return List.of(
        what(row),
        IncreaseWords.of(row.more(), wording),
        number(row),
        wording.interval(row.gain(), row.low95(), row.high95(), row.unit()),
        row.significant() ? "yes" : "no");
  }

  private String number(GainRow row) {
    return wording.number(row.gain(), row.low95(), row.high95(), row.unit());
  }
}
