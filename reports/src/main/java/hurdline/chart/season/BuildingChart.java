package hurdline.chart.season;

import hurdline.answer.SeasonAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.measure.Measure;
import hurdline.measure.Use;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** What the building is used for: a stacked bar for each plan, as long as the calendar. */
final class BuildingChart {
  private static final List<Use> NOT_WORKED = List.of(Use.CHANGEOVER, Use.UNCREWED, Use.UNUSED);

  private final SeasonAnswer answer;
  private final Wording wording;
  private final List<Part> parts = new ArrayList<>();

  private record Part(String label, String measure, Paint paint) {}

  BuildingChart(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    for (String line : PlanPaints.lines(answer)) {
      Paint paint = PlanPaints.ofLine(answer, line);
      parts.add(
          new Part(wording.titles().line(line) + " alone", Measure.BUILDING_ALONE.of(line), paint));
    }
    add(Use.CONCURRENT, "two lines at once", Palette.INK);
    add(Use.CHANGEOVER, "changeover", PlanPaints.changeover());
    add(Use.UNCREWED, "uncrewed", Color.LIGHT_GRAY);
    add(Use.UNUSED, "unused", Color.WHITE);
  }

  private void add(Use use, String label, Paint paint) {
    String measure = Measure.BUILDING_HOURS.of(use.word());
    boolean any = answer.plans().stream().anyMatch(plan -> answer.mean(plan.name(), measure) > 0);
    if (any || NOT_WORKED.contains(use)) {
      parts.add(new Part(label, measure, paint));
    }
  }

  Chart figure() {
    String title = "What the building is used for";
    int height = 110 + 34 * answer.plans().size();
    String svg = ChartStyle.svg("building", plot(), true, height, title, alternative());
    return new Chart("building", title, alternative(), svg, table());
  }

  private double hours(String plan, Part part) {
    double hours = answer.mean(plan, part.measure());
    return Double.isNaN(hours) ? 0 : hours;
  }

  private CategoryPlot plot() {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (Part part : parts) {
      for (SeasonAnswer.Plan plan : answer.plans()) {
        data.addValue(hours(plan.name(), part), part.label(), wording.titles().plan(plan.name()));
      }
    }
    StackedBarRenderer bars = ChartStyle.flat(new StackedBarRenderer());
    bars.setDrawBarOutline(true);
    bars.setDefaultLegendShape(ChartStyle.swatch());
    for (int series = 0; series < parts.size(); series++) {
      bars.setSeriesPaint(series, parts.get(series).paint());
      bars.setSeriesOutlinePaint(series, Palette.INK);
      bars.setSeriesOutlineStroke(series, new BasicStroke(0.5f));
    }
    return ChartStyle.lying(
        new CategoryPlot(
            data,
            ChartStyle.categoryAxis(),
            ChartStyle.numberAxis("hours of the calendar", wording),
            bars));
  }

  private String alternative() {
    List<String> plans = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      List<String> told = new ArrayList<>();
      parts.forEach(
          part ->
              told.add(
                  part.label() + " " + wording.fixed(hours(plan.name(), part), 0, "h") + " h"));
      plans.add(wording.titles().plan(plan.name()) + ": " + String.join(", ", told));
    }
    return "Stacked bars of the hours of the building by use: " + String.join("; ", plans) + ".";
  }

  private Chart.Grid table() {
    GridColumns<SeasonAnswer.Plan> columns =
        new GridColumns<SeasonAnswer.Plan>(wording)
            .text("plan", plan -> wording.titles().plan(plan.name()));
    parts.forEach(part -> columns.number(part.label(), 0, "h", plan -> hours(plan.name(), part)));
    return columns.of(answer.plans());
  }
}
