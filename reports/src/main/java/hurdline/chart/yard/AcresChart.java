package hurdline.chart.yard;

import hurdline.answer.AcresRow;
import hurdline.answer.Titles;
import hurdline.answer.YardAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import java.awt.Color;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.YIntervalSeries;

/** How surely seasons finish, and what is carried over, with more or fewer acres. */
final class AcresChart {
  private final YardAnswer answer;
  private final Wording wording;

  AcresChart(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  Chart figure() {
    String title =
        "Seasons that finish, and what is carried over, by area of the fields; dashed: wanted, and the answer in its interval";
    NumberAxis acres =
        ChartStyle.numberAxis(
            wording.unit("acre")
                + " of "
                + Titles.inText(wording.titles().crop(answer.asked().crop())),
            wording);
    acres.setAutoRangeIncludesZero(false);
    CombinedDomainXYPlot all = new CombinedDomainXYPlot(acres);
    all.setGap(14);
    all.setBackgroundPaint(Color.WHITE);
    all.add(chance());
    all.add(leftOver());
    return new Chart(
        "acres",
        title,
        alternative(),
        ChartStyle.svg("acres", all, false, 420, title, alternative()),
        table());
  }

  private XYPlot chance() {
    NumberAxis axis = ChartStyle.numberAxis("% of seasons finish", wording);
    axis.setRange(0, 100);
    YIntervalSeries series = new YIntervalSeries("chance");
    answer
        .acres()
        .forEach(r -> series.add(acres(r), 100 * r.chance(), 100 * r.low95(), 100 * r.high95()));
    XYPlot plot = plot(series, axis);
    plot.addRangeMarker(
        new ValueMarker(100 * answer.land().share(), Palette.VERMILLION, ChartStyle.DASHED));
    return plot;
  }

  private XYPlot leftOver() {
    YIntervalSeries series = new YIntervalSeries("carry-over");
    answer.acres().forEach(r -> series.add(acres(r), r.leftOver(), r.leftOver(), r.leftOver()));
    return plot(
        series, ChartStyle.numberAxis("mean " + answer.asked().unit() + " carried over", wording));
  }

  private XYPlot plot(YIntervalSeries series, NumberAxis axis) {
    XYPlot plot = ChartStyle.band(series, null, axis, true);
    Optional<AcresRow> low = answer.acresAt(answer.land().low95());
    Optional<AcresRow> high = answer.acresAt(answer.land().high95());
    if (low.isPresent() && high.isPresent()) {
      plot.addDomainMarker(
          new IntervalMarker(acres(low.get()), acres(high.get()), Palette.GRID), Layer.BACKGROUND);
    }
    answer
        .acresAt(answer.land().times())
        .ifPresent(
            row ->
                plot.addDomainMarker(new ValueMarker(acres(row), Palette.INK, ChartStyle.DASHED)));
    return plot;
  }

  private double acres(AcresRow row) {
    return wording.shown(row.acres(), "acre");
  }

  private String alternative() {
    AcresRow first = answer.acres().get(0);
    AcresRow last = answer.acres().get(answer.acres().size() - 1);
    String most =
        answer
            .acresAt(answer.land().times())
            .map(row -> "; marked as the answer, " + said(row))
            .orElse("");
    return "Two lines over the area of the fields: " + said(first) + "; " + said(last) + most + ".";
  }

  private String said(AcresRow row) {
    return "with "
        + wording.fixed(row.acres(), 0, "acre")
        + " "
        + wording.unit("acre")
        + " "
        + wording.fixed(row.chance(), 0, "share")
        + " % of seasons finish and "
        + wording.fixed(row.leftOver(), 0, answer.asked().unit())
        + " "
        + answer.asked().unit()
        + " are carried over on average";
  }

  private Chart.Grid table() {
    return new GridColumns<AcresRow>(wording)
        .number("", 0, "acre", AcresRow::acres)
        .text("times the file's", row -> wording.fixed(row.times(), 3, "times"))
        .text("finish in % of seasons", row -> wording.fixed(row.chance(), 0, "share"))
        .text(
            "95 % interval",
            row ->
                wording.fixed(row.low95(), 0, "share")
                    + " to "
                    + wording.fixed(row.high95(), 0, "share"))
        .number("carry-over, mean", 0, answer.asked().unit(), AcresRow::leftOver)
        .of(answer.acres());
  }
}
