package hurdline.chart;

import hurdline.answer.GainRow;
import hurdline.answer.YardAnswer;
import hurdline.words.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.statistics.DefaultStatisticalCategoryDataset;

/** By how much the peak of the yard without limit differs with one thing changed, the lowest peak first. */
final class ShorterPeakChart {
  private final YardAnswer answer;
  private final List<GainRow> rows;
  private final Wording wording;

  ShorterPeakChart(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    rows = answer.gains().stream().sorted(Comparator.comparingDouble(GainRow::gain)).toList();
  }

  Figure figure() {
    String title = "What shortens the peak";
    String svg = Look.svg("shorter-peak", plot(), false, 80 + 24 * drawn().size(), title, alternative());
    return new Figure("shorter-peak", title, alternative(), svg, table());
  }

  /** What changes nothing at all is left to the table. */
  private List<GainRow> drawn() {
    List<GainRow> some =
        rows.stream().filter(row -> row.gain() != 0 || row.high95() > row.low95()).toList();
    return some.isEmpty() ? rows : some;
  }

  private CategoryPlot plot() {
    DefaultStatisticalCategoryDataset data = new DefaultStatisticalCategoryDataset();
    for (GainRow row : drawn()) {
      double half = (row.high95() - row.low95()) / 2;
      data.add(row.gain(), Double.isNaN(half) ? 0 : half, "peak", label(row));
    }
    NumberAxis axis =
        Look.numberAxis(
            answer.asked().unit() + " of peak, bar of the joint 95 % interval; pale: not told from none", wording);
    CategoryPlot plot =
        Look.lying(
            new CategoryPlot(
                data,
                Look.categoryAxis(),
                axis,
                new ToldBars(drawn().stream().map(GainRow::toldApart).toList())));
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  private static String label(GainRow row) {
    return row.what() + ": " + row.more();
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    drawn()
        .forEach(
            row -> parts.add(label(row) + " " + number(row) + (row.toldApart() ? "" : " (not told from none)")));
    return "Bars of the difference in the peak, "
        + answer.asked().unit()
        + ": "
        + String.join(", ", parts)
        + (drawn().size() < rows.size() ? "; the others change nothing" : "")
        + ".";
  }

  private String number(GainRow row) {
    return wording.number(row.gain(), row.low95(), row.high95(), row.unit());
  }

  private Figure.Grid table() {
    List<List<String>> cells = new ArrayList<>();
    for (GainRow row : rows) {
      cells.add(
          List.of(
              row.what(),
              row.more(),
              number(row),
              wording.interval(row.gain(), row.low95(), row.high95(), row.unit()),
              row.toldApart() ? "yes" : "no"));
    }
    return new Figure.Grid(
        List.of("", "changed", "peak, " + answer.asked().unit(), "joint 95 % interval", "told from none"), cells);
  }
}
