package hurdline.chart.run;

import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Hatch;
import hurdline.chart.kit.IntervalBars;
import hurdline.chart.kit.IntervalData;
import hurdline.chart.kit.Palette;
import hurdline.measure.MarginMeasures;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;

/**
 * Money over the calendar: what comes in to the right, what goes out to the left, and what is left.
 */
final class MoneyChart {
  private final RunAnswer answer;
  private final Wording wording;

  MoneyChart(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  private record Bar(String label, int sign, SummaryRow row) {
    double mean() {
      return sign * row.mean();
    }

    double low() {
      return sign > 0 ? row.low95() : -row.high95();
    }

    double high() {
      return sign > 0 ? row.high95() : -row.low95();
    }
  }

  Chart figure() {
    String title = "Money over the calendar";
    List<Bar> bars = bars();
    String alternative = alternative(bars);
    String svg =
        ChartStyle.svg("money", plot(bars), false, 70 + 26 * bars.size(), title, alternative);
    return new Chart("money", title, alternative, svg, table(bars));
  }

  private List<Bar> bars() {
    List<Bar> bars = new ArrayList<>();
    MarginMeasures.in().forEach(measure -> add(bars, measure, 1));
    MarginMeasures.out().forEach(measure -> add(bars, measure, -1));
    add(bars, Measure.MONEY_MARGIN, 1);
    return bars;
  }

  private void add(List<Bar> bars, Measure measure, int sign) {
    answer
        .find(measure.of())
        .ifPresent(
            row ->
                bars.add(
                    new Bar(
                        Titles.ofName(measure.of().substring(measure.of().indexOf('.') + 1)),
                        sign,
                        row)));
  }

  private CategoryPlot plot(List<Bar> bars) {
    IntervalData data = new IntervalData();
    bars.forEach(bar -> data.add(bar.mean(), bar.low(), bar.high(), "money", bar.label()));
    NumberAxis axis =
        ChartStyle.numberAxis(
            answer.header().currency() + ", costs to the left, bar of the 95 % interval", wording);
    CategoryPlot plot =
        ChartStyle.lying(new CategoryPlot(data, ChartStyle.categoryAxis(), axis, new Bars(bars)));
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  private static final class Bars extends IntervalBars {
    private static final long serialVersionUID = 1L;

    private final transient List<Bar> bars;

    Bars(List<Bar> bars) {
      this.bars = bars;
    }

    @Override
    public Paint getItemPaint(int series, int category) {
      if (category == bars.size() - 1) {
        return Palette.INK;
      }
      return bars.get(category).mean() >= 0
          ? Palette.BLUE
          : new Hatch(Palette.ORANGE, Palette.INK, Hatch.Kind.RISING);
    }
  }

  private String alternative(List<Bar> bars) {
    List<String> parts = new ArrayList<>();
    bars.forEach(bar -> parts.add(bar.label() + " " + wording.amount(bar.row())));
    return "Bars of money over the calendar: " + String.join(", ", parts) + ".";
  }

  private Chart.Grid table(List<Bar> bars) {
    return new GridColumns<Bar>(wording)
        .text("over the calendar", Bar::label)
        .text(answer.header().currency(), bar -> number(bar.row()))
        .text("95 % interval", bar -> interval(bar.row()))
        .text("", bar -> Measure.find(bar.row().measure()).orElseThrow().measure().sentence())
        .of(bars);
  }

  private String number(SummaryRow row) {
    return wording.number(row.mean(), row.low95(), row.high95(), row.unit());
  }

  private String interval(SummaryRow row) {
    return wording.interval(row.mean(), row.low95(), row.high95(), row.unit());
  }
}
