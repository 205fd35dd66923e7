package hurdline.chart.compare;

import hurdline.answer.TornadoRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Hatch;
import hurdline.chart.kit.IntervalBars;
import hurdline.chart.kit.IntervalData;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import hurdline.text.WorthWords;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;

/**
 * What an option is worth with one input after another at either end, the widest swing first; both
 * bars of an input begin at what it is worth as the file says, wherever its ends lie.
 */
final class TornadoChart {
  private static final int DRAWN = 15;

  private final String option;
  private final double worth;
  private final String currency;
  private final List<TornadoRow> rows;
  private final WorthWords words;
  private final Wording wording;

  TornadoChart(WorthWords words, String option, String currency, Wording wording) {
    this.words = words;
    this.option = option;
    this.currency = currency;
    this.wording = wording;
    rows = words.ranked(option);
    worth = rows.get(0).netPresentValue();
  }

  Chart figure() {
    String title = "What the worth of " + wording.titles().option(option) + " is sensitive to";
    String name = "tornado-" + option.replace('+', '-');
    int height = 110 + 34 * drawn().size();
    String svg = ChartStyle.svg(name, plot(), true, height, title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private List<TornadoRow> drawn() {
    return rows.subList(0, Math.min(DRAWN, rows.size()));
  }

  private CategoryPlot plot() {
    IntervalData data = new IntervalData();
    for (TornadoRow row : drawn()) {
      String label = words.input(row.input()) + ", " + words.ends(row);
      add(data, row.netPresentValueAtLow(), row.halfWidthAtLow(), "at the lower end", label);
      add(data, row.netPresentValueAtHigh(), row.halfWidthAtHigh(), "at the upper end", label);
    }
    BarRenderer bars = new IntervalBars();
    bars.setBase(worth);
    bars.setIncludeBaseInRange(true);
    bars.setItemMargin(0);
    bars.setDefaultLegendShape(ChartStyle.swatch());
    bars.setSeriesPaint(0, new Hatch(Palette.ORANGE, Palette.INK, Hatch.Kind.RISING));
    bars.setSeriesPaint(1, Palette.BLUE);
    NumberAxis axis =
        ChartStyle.numberAxis(
            "net present value, "
                + currency
                + ", with the 95 % interval of how far an end moves it",
            wording);
    axis.setAutoRangeIncludesZero(false);
    return ChartStyle.lying(new CategoryPlot(data, ChartStyle.categoryAxis(), axis, bars));
  }

  private static void add(IntervalData data, double value, double half, String row, String column) {
    data.add(value, value - half, value + half, row, column);
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    drawn()
        .forEach(
            row ->
                parts.add(
                    words.input(row.input())
                        + " "
                        + words.money(row.netPresentValueAtLow())
                        + " to "
                        + words.money(row.netPresentValueAtHigh())));
    return "Bars of the net present value of "
        + wording.titles().option(option)
        + ", "
        + currency
        + ", with one input at its lower and its upper end, from "
        + words.money(worth)
        + " as the file says: "
        + String.join(", ", parts)
        + ".";
  }

  private Chart.Grid table() {
    return new GridColumns<TornadoRow>(wording)
        .text("input", row -> words.input(row.input()))
        .text("key", row -> "`" + row.input() + "`")
        .text("from lower to upper end", words::ends)
        .text(
            currency + " at the lower",
            row -> words.atEnd(row.netPresentValueAtLow(), row.halfWidthAtLow()))
        .text(
            currency + " at the upper",
            row -> words.atEnd(row.netPresentValueAtHigh(), row.halfWidthAtHigh()))
        .text("swing", row -> words.money(row.swing()))
        .of(rows);
  }
}
