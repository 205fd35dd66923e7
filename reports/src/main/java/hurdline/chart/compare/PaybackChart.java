package hurdline.chart.compare;

import hurdline.answer.CompareAnswer;
import hurdline.answer.ServiceLifeRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** In what share of an option's lives it has paid back by a time. */
final class PaybackChart {
  private static final double[] MARKS = {0.05, 0.25, 0.5, 0.75, 0.95};

  private final CompareAnswer.Option option;
  private final List<ServiceLifeRow> lives;
  private final Wording wording;

  PaybackChart(CompareAnswer answer, CompareAnswer.Option option, Wording wording) {
    this.option = option;
    this.wording = wording;
    lives = answer.lives().stream().filter(row -> row.option().equals(option.name())).toList();
  }

  /** Nothing is drawn where there is nothing to pay back. */
  boolean isWanted() {
    return !lives.isEmpty() && option.cost() > 0;
  }

  Chart figure() {
    String title = "When " + wording.titles().option(option.name()) + " has paid back";
    String name = "payback-" + option.name().replace('+', '-');
    String svg = ChartStyle.svg(name, plot(), true, 300, title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private XYPlot plot() {
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(steps("simple", ServiceLifeRow::simplePayback));
    data.addSeries(steps("discounted", ServiceLifeRow::discountedPayback));
    XYStepRenderer lines = new XYStepRenderer();
    lines.setSeriesPaint(0, Palette.BLUE);
    lines.setSeriesStroke(0, new BasicStroke(2.5f));
    lines.setSeriesPaint(1, Palette.VERMILLION);
    lines.setSeriesStroke(
        1,
        new BasicStroke(
            2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 4}, 0));
    NumberAxis years = ChartStyle.numberAxis("years since it was paid", wording);
    years.setRange(0, shownTo());
    NumberAxis share =
        ChartStyle.numberAxis("% of " + lives.size() + " lives have paid back", wording);
    share.setRange(0, 103);
    return ChartStyle.dressed(new XYPlot(data, years, share, lines));
  }

  /** The whole life, or where all have paid back long before its end, as far as that. */
  private double shownTo() {
    double last =
        Math.max(last(ServiceLifeRow::simplePayback), last(ServiceLifeRow::discountedPayback));
    boolean all = lives.stream().noneMatch(row -> Double.isNaN(row.discountedPayback()));
    return all ? Math.min(option.lifeYr(), 1.5 * last) : option.lifeYr();
  }

  private double last(ToDoubleFunction<ServiceLifeRow> time) {
    double[] paid = rising(time);
    return paid.length == 0 ? option.lifeYr() : Math.max(paid[paid.length - 1], 0.1);
  }

  private double[] rising(ToDoubleFunction<ServiceLifeRow> time) {
    double[] paid = lives.stream().mapToDouble(time).filter(t -> !Double.isNaN(t)).toArray();
    Arrays.sort(paid);
    return paid;
  }

  private XYSeries steps(String kind, ToDoubleFunction<ServiceLifeRow> time) {
    XYSeries series = new XYSeries(kind);
    double[] paid = rising(time);
    series.add(0, 0);
    for (int k = 0; k < paid.length; k++) {
      series.add(paid[k], 100.0 * (k + 1) / lives.size());
    }
    series.add(Math.max(option.lifeYr(), last(time)), 100.0 * paid.length / lives.size());
    return series;
  }

  private String alternative() {
    return "Steps of the share of lives in which "
        + wording.titles().option(option.name())
        + " has paid back by a time: "
        + said("simple", ServiceLifeRow::simplePayback)
        + "; "
        + said("discounted", ServiceLifeRow::discountedPayback)
        + ".";
  }

  private String said(String kind, ToDoubleFunction<ServiceLifeRow> time) {
    double[] paid = rising(time);
    if (paid.length == 0) {
      return kind + " never";
    }
    return kind
        + " in "
        + paid.length
        + " of "
        + lives.size()
        + " lives, from "
        + wording.fixed(paid[0], 1, "yr")
        + " to "
        + wording.fixed(paid[paid.length - 1], 1, "yr")
        + " years";
  }

  private Chart.Grid table() {
    return new GridColumns<Double>(wording)
        .text("", mark -> wording.fixed(mark, 0, "share") + " % of lives by")
        .text("simple, years", mark -> time(mark, ServiceLifeRow::simplePayback))
        .text("discounted, years", mark -> time(mark, ServiceLifeRow::discountedPayback))
        .of(Arrays.stream(MARKS).boxed().toList());
  }

  /**
   * The quantile of {@code payback.csv}: a straight line between neighbors; a life that never pays
   * back comes after all others.
   */
  private String time(double share, ToDoubleFunction<ServiceLifeRow> time) {
    double[] paid = rising(time);
    double place = share * (lives.size() - 1);
    int below = (int) Math.floor(place);
    int above = (int) Math.ceil(place);
    return above < paid.length
        ? wording.fixed(paid[below] + (place - below) * (paid[above] - paid[below]), 2, "yr")
        : "not in its life";
  }
}
