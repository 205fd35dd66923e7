package hurdline.chart;

import hurdline.answer.GainRow;
import hurdline.words.GainWords;
import hurdline.words.Wording;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.statistics.DefaultStatisticalCategoryDataset;

/** What a tenth more of each thing brings in one measure, the greatest gain first. */
public final class GainChart {
  private final String measure;
  private final List<GainRow> rows;
  private final GainWords words;
  private final Wording wording;

  public GainChart(GainWords words, String measure, Wording wording) {
    this.words = words;
    this.measure = measure;
    this.wording = wording;
    rows = words.ranked(measure);
  }

  public Figure figure() {
    String title = "What a tenth more of each thing brings: " + GainWords.label(measure);
    String name = "gain-" + measure;
    String svg = Look.svg(name, plot(), false, 70 + 24 * drawn().size(), title, alternative());
    return new Figure(name, title, alternative(), svg, table());
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
      double half = wording.shown((row.high95() - row.low95()) / 2, row.unit());
      data.add(
          wording.shown(row.gain(), row.unit()),
          Double.isNaN(half) ? 0 : half,
          "gain",
          row.what() + ": " + row.more());
    }
    NumberAxis axis =
        Look.numberAxis(
            wording.unit(rows.get(0).unit())
                + ", bar of the joint 95 % interval; pale: not told from none",
            wording);
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

  private String alternative() {
    List<String> parts = new ArrayList<>();
    drawn()
        .forEach(
        row ->
            parts.add(
                row.what()
                    + " "
                    + number(row)
                    + (row.toldApart() ? "" : " (not told from none)")));
    return "Bars of the gain in "
        + GainWords.label(measure)
        + ", "
        + wording.unit(rows.get(0).unit())
        + ", from a tenth more of each: "
        + String.join(", ", parts)
        + (drawn().size() < rows.size() ? "; the others bring none" : "")
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
              row.toldApart() ? "yes" : "no",
              words.held(row.what(), measure).map(held -> held.line() + " " + wording.share(held)).orElse("")));
    }
    return new Figure.Grid(
        List.of(
            "", "more", "gain " + wording.unit(rows.get(0).unit()), "joint 95 % interval",
            "told from none", "holds of hours by itself"),
        cells);
  }
}
