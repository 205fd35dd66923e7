package hurdline.chart.run;

import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.Titles;
import hurdline.answer.WeekRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StackedXYBarRenderer;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.data.time.SimpleTimePeriod;
import org.jfree.data.time.TimeTableXYDataset;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** What goes in and what comes out, week by week. */
final class WeekCharts {
  private static final int HEIGHT = 280;

  private final RunAnswer answer;
  private final Wording wording;

  WeekCharts(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** Mass fed by week, with the 5 to 95 % span over the replications. */
  Chart fed(Outline.Crop crop) {
    List<WeekRow> weeks = of(Measure.MASS_FED.of(crop.name()));
    String title = wording.titles().crop(crop.name()) + " fed by week";
    TimeTableXYDataset means =
        new TimeTableXYDataset(java.util.TimeZone.getTimeZone("UTC"), java.util.Locale.ROOT);
    YIntervalSeries spans = new YIntervalSeries("span");
    for (WeekRow week : weeks) {
      means.add(
          period(week.from()),
          wording.shown(week.mean(), "t"),
          "mean, with its span from 5 to 95 % of replications",
          false);
      double middle = ChartStyle.millis(week.from()) + 3.5 * 86_400_000.0;
      if (week.p95() > 0) {
        spans.add(
            middle,
            wording.shown(week.p50(), "t"),
            wording.shown(week.p05(), "t"),
            wording.shown(week.p95(), "t"));
      }
    }
    XYBarRenderer bars = bars(new XYBarRenderer());
    bars.setSeriesPaint(0, Palette.SKY);
    XYPlot plot = plot(means, bars);
    YIntervalSeriesCollection span = new YIntervalSeriesCollection();
    span.addSeries(spans);
    plot.setDataset(1, span);
    plot.setRenderer(1, whiskers());
    plot.setDatasetRenderingOrder(org.jfree.chart.plot.DatasetRenderingOrder.FORWARD);
    String alternative =
        "Bars of "
            + wording.unit("t")
            + " of "
            + Titles.inText(wording.titles().crop(crop.name()))
            + " fed in each week with their 5 to 95 % span; "
            + most(weeks)
            + ".";
    String svg = ChartStyle.svg("fed-" + crop.name(), plot, true, HEIGHT, title, alternative);
    return new Chart("fed-" + crop.name(), title, alternative, svg, fedTable(weeks));
  }

  /** Mass of each product of a line by week, stacked. */
  Chart products(Outline.Line line) {
    TimeTableXYDataset data =
        new TimeTableXYDataset(java.util.TimeZone.getTimeZone("UTC"), java.util.Locale.ROOT);
    List<String> made =
        line.products().stream()
            .filter(product -> !of(Measure.PRODUCT_MASS.of(product)).isEmpty())
            .toList();
    for (String product : made) {
      of(Measure.PRODUCT_MASS.of(product)).stream()
          .filter(week -> week.mean() > 0)
          .forEach(
              week ->
                  data.add(
                      period(week.from()),
                      wording.shown(week.mean(), "t"),
                      wording.titles().product(product),
                      false));
    }
    XYBarRenderer bars = bars(new StackedXYBarRenderer());
    for (int series = 0; series < made.size(); series++) {
      bars.setSeriesPaint(series, Palette.series(series));
    }
    String title = "Products of " + wording.titles().lineInText(line.name()) + " by week";
    String alternative =
        "Stacked bars of mean "
            + wording.unit("t")
            + " made in each week: "
            + made.stream().map(wording.titles()::productInText).collect(Collectors.joining(", "))
            + ".";
    String svg =
        ChartStyle.svg(
            "products-" + line.name(), plot(data, bars), true, HEIGHT + 20, title, alternative);
    return new Chart("products-" + line.name(), title, alternative, svg, productTable(made));
  }

  private List<WeekRow> of(String measure) {
    return answer.weeks().stream().filter(week -> week.measure().equals(measure)).toList();
  }

  private static SimpleTimePeriod period(LocalDate from) {
    return new SimpleTimePeriod(ChartStyle.millis(from), ChartStyle.millis(from.plusDays(7)));
  }

  private XYPlot plot(TimeTableXYDataset data, XYBarRenderer bars) {
    return ChartStyle.dressed(
        new XYPlot(
            data,
            ChartStyle.dateAxis(answer.header().from(), answer.header().to(), wording),
            ChartStyle.numberAxis(wording.unit("t") + " a week", wording),
            bars));
  }

  private static XYBarRenderer bars(XYBarRenderer bars) {
    bars.setBarPainter(new StandardXYBarPainter());
    bars.setShadowVisible(false);
    bars.setMargin(0.15);
    bars.setDrawBarOutline(true);
    bars.setLegendBar(ChartStyle.swatch());
    bars.setDefaultOutlinePaint(Color.WHITE);
    bars.setDefaultOutlineStroke(new BasicStroke(0.5f));
    return bars;
  }

  private static XYErrorRenderer whiskers() {
    XYErrorRenderer spans = new XYErrorRenderer();
    spans.setDrawXError(false);
    spans.setSeriesPaint(0, Palette.INK);
    spans.setErrorPaint(Palette.INK);
    spans.setCapLength(3);
    spans.setSeriesVisibleInLegend(0, false);
    spans.setSeriesShapesVisible(0, false);
    return spans;
  }

  private String most(List<WeekRow> weeks) {
    WeekRow best = null;
    for (WeekRow week : weeks) {
      best = best == null || week.mean() > best.mean() ? week : best;
    }
    return best == null
        ? "no week is recorded"
        : "the most, "
            + wording.amount(best.mean(), "t")
            + ", in the week from "
            + wording.date(best.from());
  }

  /** Weeks in which nothing moved are left out; weeks.csv has them all. */
  private Chart.Grid fedTable(List<WeekRow> weeks) {
    String unit = wording.unit("t");
    return new GridColumns<WeekRow>(wording)
        .text("week", week -> Integer.toString(week.week()))
        .text("from", week -> wording.date(week.from()))
        .text("mean " + unit, week -> tonnes(week.mean()))
        .text("5 % " + unit, week -> tonnes(week.p05()))
        .text("50 % " + unit, week -> tonnes(week.p50()))
        .text("95 % " + unit, week -> tonnes(week.p95()))
        .of(weeks.stream().filter(week -> week.mean() > 0).toList());
  }

  private Chart.Grid productTable(List<String> products) {
    Map<Integer, LocalDate> weeks = new LinkedHashMap<>();
    Map<String, Map<Integer, Double>> made = new LinkedHashMap<>();
    for (String product : products) {
      Map<Integer, Double> its = new HashMap<>();
      made.put(product, its);
      for (WeekRow week : of(Measure.PRODUCT_MASS.of(product))) {
        weeks.putIfAbsent(week.week(), week.from());
        its.put(week.week(), week.mean());
      }
    }
    GridColumns<Integer> columns =
        new GridColumns<Integer>(wording)
            .text("week", week -> Integer.toString(week))
            .text("from", week -> wording.date(weeks.get(week)));
    for (String product : products) {
      columns.text(
          wording.titles().product(product) + " " + wording.unit("t"),
          week -> tonnes(made.get(product).getOrDefault(week, 0.0)));
    }
    String nothing = tonnes(0);
    return columns.of(
        weeks.keySet().stream()
            .filter(
                week ->
                    made.values().stream()
                        .anyMatch(of -> !tonnes(of.getOrDefault(week, 0.0)).equals(nothing)))
            .toList());
  }

  private String tonnes(double value) {
    return wording.fixed(value, 1, "t");
  }
}
