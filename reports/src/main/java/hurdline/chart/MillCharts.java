package hurdline.chart;

import hurdline.measure.Measure;
import hurdline.words.MillWords;
import hurdline.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * A mill by month, base and options side by side: energy per tonne, and the plant's peak demand.
 *
 * <p>A month in which a mill ran nearly empty has a figure many times that of the others; its bar is cut, and the title
 * has its figure.
 */
final class MillCharts {
  private final MillWords words;
  private final Wording wording;

  MillCharts(MillWords words, Wording wording) {
    this.words = words;
    this.wording = wording;
  }

  /** A month's mean of a plant; NaN where there is none. */
  private interface Monthly extends BiFunction<String, String, Double> {}

  Figure perTonne(String mill) {
    Monthly monthly = (plant, month) -> wording.shown(words.perTonne(plant, mill, month), "kWh/t");
    double end = TallBars.axisEnd(all(monthly));
    return figure(
        "milling-" + mill,
        "Electricity of " + mill + " for what it mills, by month" + cutBars(monthly, end),
        wording.unit("kWh/t"),
        monthly,
        end);
  }

  private double[] all(Monthly monthly) {
    return words.plants().stream()
        .flatMap(plant -> words.months().stream().map(month -> monthly.apply(plant, month)))
        .mapToDouble(Double::doubleValue)
        .toArray();
  }

  /** Names bars that go beyond the end of the axis, with their figures. */
  private String cutBars(Monthly monthly, double end) {
    String cut =
        words.plants().stream()
            .flatMap(
                plant ->
                    words.months().stream()
                        .filter(month -> monthly.apply(plant, month) > end)
                        .map(month -> plant + " " + month + " " + number(monthly.apply(plant, month))))
            .collect(Collectors.joining(", "));
    return cut.isEmpty() ? "" : " (bars cut: " + cut + ")";
  }

  Figure peaks() {
    return figure(
        "peaks",
        "Highest quarter-hour of each month, mean over the replications",
        "kW",
        (plant, month) -> words.inMonth(plant, month, Measure.ENERGY_PEAK.of()),
        Double.POSITIVE_INFINITY);
  }

  /** @param end of the axis; +∞ to let all bars have their height */
  private Figure figure(String name, String title, String unit, Monthly monthly, double end) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (String plant : words.plants()) {
      for (String month : words.months()) {
        double value = monthly.apply(plant, month);
        data.addValue(Double.isNaN(value) ? null : value, plant, month);
      }
    }
    BarRenderer bars = Look.sideBySide(new BarRenderer(), words.plants().size());
    NumberAxis axis = Look.numberAxis(unit, wording);
    if (Double.isFinite(end)) {
      axis.setRange(0, end);
    }
    CategoryPlot plot = Look.months(data, bars, axis);
    String alternative = alternative(title, unit, monthly);
    return new Figure(
        name,
        title,
        alternative,
        Look.svg(name, plot, true, 260, title, alternative),
        table(unit, monthly));
  }

  private String alternative(String title, String unit, Monthly monthly) {
    List<String> parts = new ArrayList<>();
    for (String plant : words.plants()) {
      List<String> values = new ArrayList<>();
      words.months().forEach(month -> values.add(month + " " + number(monthly.apply(plant, month))));
      parts.add(plant + " " + String.join(", ", values));
    }
    return title + ", bars of " + unit + ": " + String.join("; ", parts) + ".";
  }

  private Figure.Grid table(String unit, Monthly monthly) {
    List<String> head = new ArrayList<>(List.of("month"));
    words.plants().forEach(plant -> head.add(plant + " " + unit));
    List<List<String>> rows = new ArrayList<>();
    for (String month : words.months()) {
      List<String> row = new ArrayList<>(List.of(month));
      words.plants().forEach(plant -> row.add(number(monthly.apply(plant, month))));
      rows.add(row);
    }
    return new Figure.Grid(head, rows);
  }

  private String number(double shown) {
    return Double.isNaN(shown) ? "none" : wording.roughly(shown, "");
  }
}
