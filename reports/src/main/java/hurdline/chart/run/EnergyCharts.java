package hurdline.chart.run;

import hurdline.answer.MonthRow;
import hurdline.answer.RunAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** Electricity by month: energy, and the highest quarter-hour that the demand charge goes by. */
final class EnergyCharts {
  private final RunAnswer answer;
  private final Wording wording;

  EnergyCharts(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  Chart energy() {
    return figure("energy", "Electricity by month", Measure.ENERGY_TOTAL, "kWh");
  }

  Chart peak() {
    return figure("peak", "Highest quarter-hour of each month", Measure.ENERGY_PEAK, "kW");
  }

  private Chart figure(String name, String title, Measure measure, String unit) {
    List<MonthRow> months =
        answer.months().stream().filter(row -> row.measure().equals(measure.of())).toList();
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    months.forEach(row -> data.addValue(row.mean(), "mean", month(row)));
    BarRenderer bars = ChartStyle.flat(new BarRenderer());
    bars.setSeriesPaint(0, Palette.BLUE);
    bars.setMaximumBarWidth(0.1);
    CategoryPlot plot = ChartStyle.months(data, bars, ChartStyle.numberAxis(unit, wording));
    String alternative = alternative(title, months, unit);
    return new Chart(
        name,
        title,
        alternative,
        ChartStyle.svg(name, plot, false, 230, title, alternative),
        table(months, unit));
  }

  private String alternative(String title, List<MonthRow> months, String unit) {
    List<String> parts = new ArrayList<>();
    months.forEach(row -> parts.add(month(row) + " " + wording.fixed(row.mean(), 0, unit)));
    return title + ", bars of " + unit + ": " + String.join(", ", parts) + ".";
  }

  private Chart.Grid table(List<MonthRow> months, String unit) {
    return new GridColumns<MonthRow>(wording)
        .text("month", this::month)
        .number("mean", 0, unit, MonthRow::mean)
        .number("5 %", 0, unit, MonthRow::p05)
        .number("50 %", 0, unit, MonthRow::p50)
        .number("95 %", 0, unit, MonthRow::p95)
        .of(months);
  }

  private String month(MonthRow row) {
    return wording.month(YearMonth.parse(row.month()));
  }
}
