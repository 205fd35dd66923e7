package hurdline.chart.choose;

import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChosenRow;
import hurdline.answer.FrontierRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.ChoiceWords;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.DeviationStepRenderer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** What each budget buys: mean with its interval and 5th percentile over what the plans cost. */
final class FrontierChart {
  private static final String NAME = "frontier";

  /** Where the last step ends, over what its plan costs. */
  private static final double BEYOND = 1.05;

  private final ChooseAnswer answer;
  private final Wording wording;
  private final ChoiceWords words;
  private final String unit;
  private final String label;
  private final List<FrontierRow> rows;

  FrontierChart(ChooseAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    words = new ChoiceWords(answer, wording);
    unit = answer.terms().unit();
    label = words.measure();
    rows =
        answer.frontier().stream()
            .filter(row -> row.plan() >= 0)
            .sorted(Comparator.comparingDouble(this::cost))
            .toList();
  }

  private double cost(FrontierRow row) {
    return answer.plans().get(row.plan()).cost();
  }

  private ChosenRow shown(FrontierRow row) {
    return answer.chosen(row.plan()).orElseThrow();
  }

  Chart figure() {
    String title = "The best under each budget: " + label + ", over what the plan costs";
    String svg = ChartStyle.svg(NAME, plot(), true, 360, title, alternative());
    return new Chart(NAME, title, alternative(), svg, table());
  }

  private XYPlot plot() {
    YIntervalSeries mean = new YIntervalSeries("mean with its 95 % interval");
    YIntervalSeries bad = new YIntervalSeries("5th percentile of the years");
    for (FrontierRow row : rows) {
      ChosenRow of = shown(row);
      add(mean, row, of.mean(), of.low95(), of.high95());
      add(bad, row, of.p05(), of.p05(), of.p05());
    }
    Stream.of(mean, bad)
        .filter(of -> of.getItemCount() > 0)
        .forEach(
            of -> {
              int last = of.getItemCount() - 1;
              double beyond = of.getX(last).doubleValue() * BEYOND;
              of.add(beyond, of.getYValue(last), of.getYLowValue(last), of.getYHighValue(last));
            });
    NumberAxis costs = ChartStyle.numberAxis(answer.header().currency() + " to buy", wording);
    costs.setAutoRangeStickyZero(false);
    NumberAxis up = ChartStyle.numberAxis(label + ", " + wording.unit(unit), wording);
    up.setAutoRangeIncludesZero(false);
    XYPlot plot = ChartStyle.band(mean, costs, up, true);
    ((YIntervalSeriesCollection) plot.getDataset()).addSeries(bad);
    DeviationRenderer lines = new Steps();
    lines.setAlpha(0.35f);
    lines.setSeriesPaint(0, Palette.BLUE);
    lines.setSeriesFillPaint(0, Palette.SKY);
    lines.setSeriesStroke(0, new BasicStroke(2));
    lines.setSeriesShape(0, new Ellipse2D.Double(-3, -3, 6, 6));
    lines.setSeriesPaint(1, Palette.VERMILLION);
    lines.setSeriesFillPaint(1, Palette.VERMILLION);
    lines.setSeriesStroke(1, new BasicStroke(1));
    lines.setSeriesShape(1, new Rectangle2D.Double(-3, -3, 6, 6));
    plot.setRenderer(lines);
    return plot;
  }

  /** A plan without a value is left out: the renderer stumbles over the step to it. */
  private void add(YIntervalSeries series, FrontierRow row, double at, double low, double high) {
    double from = Double.isNaN(low) ? at : low;
    double to = Double.isNaN(high) ? at : high;
    if (Double.isFinite(cost(row)) && Double.isFinite(at + from + to)) {
      series.add(
          cost(row), wording.shown(at, unit), wording.shown(from, unit), wording.shown(to, unit));
    }
  }

  /** A little more money buys nothing more, and the last plan stays the best beyond its cost. */
  private static final class Steps extends DeviationStepRenderer {
    private static final long serialVersionUID = 1;

    Steps() {
      super(true, true);
    }

    @Override
    public boolean getItemShapeVisible(int series, int item) {
      return item < getPlot().getDataset().getItemCount(series) - 1;
    }
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    rows.forEach(row -> parts.add(words.cost(row.plan()) + " " + mean(row)));
    return "A line of the "
        + label
        + " over what the best plans cost: "
        + String.join(", ", parts)
        + ".";
  }

  private String mean(FrontierRow row) {
    ChosenRow of = shown(row);
    return wording.number(of.mean(), of.low95(), of.high95(), unit);
  }

  private Chart.Grid table() {
    return new GridColumns<FrontierRow>(wording)
        .text("budget", row -> words.budget(row.budget()))
        .text("plan", row -> words.plan(row.plan()))
        .text("costs", row -> words.cost(row.plan()))
        .text("mean " + wording.unit(unit), this::mean)
        .text("5th percentile", row -> wording.roughly(shown(row).p05(), unit))
        .text(
            "none is more above it than",
            row -> Double.isNaN(row.gap()) ? "not known" : words.atMost(row.gap()))
        .text(
            "may be the best", row -> wording.count(row.left()) + " of " + wording.count(row.of()))
        .of(rows);
  }
}
