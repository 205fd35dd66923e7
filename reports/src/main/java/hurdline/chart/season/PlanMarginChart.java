package hurdline.chart.season;

import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.IntervalBars;
import hurdline.chart.kit.IntervalData;
import hurdline.chart.kit.Palette;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.plot.CategoryPlot;

/** What each plan earns in all, and each of its lines before what all share. */
final class PlanMarginChart {
  private final SeasonAnswer answer;
  private final Wording wording;
  private final List<Part> parts = new ArrayList<>();

  private record Part(String label, String measure, Paint paint) {}

  PlanMarginChart(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    parts.add(new Part("margin of the plant", Measure.MONEY_MARGIN.of(), Palette.GREEN));
    PlanPaints.lines(answer)
        .forEach(
            line ->
                parts.add(
                    new Part(
                        wording.titles().line(line),
                        Measure.MONEY_LINE_MARGIN.of(line),
                        PlanPaints.ofLine(answer, line))));
  }

  Chart figure() {
    String title = "What each plan earns";
    int height = 110 + answer.plans().size() * (14 + 16 * parts.size());
    String svg = ChartStyle.svg("margins", plot(), true, height, title, alternative());
    return new Chart("margins", title, alternative(), svg, table());
  }

  private CategoryPlot plot() {
    IntervalData data = new IntervalData();
    for (Part part : parts) {
      for (SeasonAnswer.Plan plan : answer.plans()) {
        Optional<SummaryRow> row = answer.find(plan.name(), part.measure());
        double mean = row.map(SummaryRow::mean).orElse(0.0);
        data.add(
            mean,
            row.map(SummaryRow::low95).orElse(Double.NaN),
            row.map(SummaryRow::high95).orElse(Double.NaN),
            part.label(),
            wording.titles().plan(plan.name()));
      }
    }
    IntervalBars bars = ChartStyle.sideBySide(new IntervalBars(), parts.size());
    for (int series = 0; series < parts.size(); series++) {
      bars.setSeriesPaint(series, parts.get(series).paint());
    }
    String axis = answer.header().currency() + ", bar of the 95 % interval";
    CategoryPlot plot =
        ChartStyle.lying(
            new CategoryPlot(
                data, ChartStyle.categoryAxis(), ChartStyle.numberAxis(axis, wording), bars));
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  private String alternative() {
    List<String> told = new ArrayList<>();
    answer
        .plans()
        .forEach(
            plan ->
                answer
                    .find(plan.name(), Measure.MONEY_MARGIN.of())
                    .ifPresent(
                        row ->
                            told.add(
                                wording.titles().plan(plan.name())
                                    + " "
                                    + wording.withInterval(row))));
    return "Bars of the margin of each plan: " + String.join(", ", told) + ".";
  }

  private Chart.Grid table() {
    GridColumns<SeasonAnswer.Plan> columns =
        new GridColumns<SeasonAnswer.Plan>(wording)
            .text("plan", plan -> wording.titles().plan(plan.name()));
    parts.forEach(
        part ->
            columns.text(
                part.label() + " " + answer.header().currency(),
                plan -> answer.find(plan.name(), part.measure()).map(this::cell).orElse("")));
    return columns.of(answer.plans());
  }

  private String cell(SummaryRow row) {
    return wording.cell(row.mean(), row.low95(), row.high95(), row.unit());
  }
}
