package hurdline.chart.season;

import hurdline.answer.MonthRow;
import hurdline.answer.SeasonAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** One measure month by month, the plans side by side. */
final class PlanMonthChart {
  private final SeasonAnswer answer;
  private final String name;
  private final String title;
  private final String unit;
  private final List<MonthRow> rows;
  private final Wording wording;

  PlanMonthChart(SeasonAnswer answer, String name, String title, Measure measure, Wording wording) {
    this.answer = answer;
    this.name = name;
    this.title = title;
    this.wording = wording;
    unit = measure.unit().word();
    rows = answer.months().stream().filter(row -> row.measure().equals(measure.of())).toList();
  }

  Chart figure() {
    String alternative = alternative();
    return new Chart(
        name,
        title,
        alternative,
        ChartStyle.svg(name, plot(), true, 270, title, alternative),
        table());
  }

  private CategoryPlot plot() {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    rows.forEach(
        row -> data.addValue(row.mean(), wording.titles().plan(row.option()), month(row.month())));
    BarRenderer bars = ChartStyle.sideBySide(new BarRenderer(), answer.plans().size());
    bars.setMaximumBarWidth(0.05);
    CategoryPlot plot = ChartStyle.months(data, bars, ChartStyle.numberAxis(unit, wording));
    plot.getDomainAxis().setCategoryMargin(0.25);
    return plot;
  }

  private String month(String month) {
    return wording.month(YearMonth.parse(month));
  }

  private List<String> months() {
    return rows.stream().map(MonthRow::month).distinct().toList();
  }

  private String alternative() {
    List<String> told = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      List<String> each = new ArrayList<>();
      rows.stream()
          .filter(row -> row.option().equals(plan.name()))
          .forEach(row -> each.add(month(row.month()) + " " + wording.fixed(row.mean(), 0, unit)));
      told.add(wording.titles().plan(plan.name()) + " " + String.join(", ", each));
    }
    return title + ", bars of " + unit + " for each plan: " + String.join("; ", told) + ".";
  }

  private Chart.Grid table() {
    GridColumns<String> columns = new GridColumns<String>(wording).text("month", this::month);
    for (SeasonAnswer.Plan plan : answer.plans()) {
      columns.text(
          wording.titles().plan(plan.name()) + " " + unit + " (5th to 95th percentile)",
          month -> row(plan, month).map(this::cell).orElse(""));
    }
    return columns.of(months());
  }

  private Optional<MonthRow> row(SeasonAnswer.Plan plan, String month) {
    return rows.stream()
        .filter(row -> row.option().equals(plan.name()) && row.month().equals(month))
        .findFirst();
  }

  private String cell(MonthRow row) {
    String mean = wording.fixed(row.mean(), 0, unit);
    String low = wording.fixed(row.p05(), 0, unit);
    String high = wording.fixed(row.p95(), 0, unit);
    return low.equals(high) ? mean : mean + " (" + low + " to " + high + ")";
  }
}
