package hurdline.chart.compare;

import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.OutlierBars;
import hurdline.measure.Measure;
import hurdline.text.MillWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * A mill by month, base and options side by side: energy per tonne, and the plant's peak demand.
 *
 * <p>A month in which a mill ran nearly empty has a figure many times that of the others; its bar
 * is cut, and the title has its figure.
 */
final class MillCharts {
  private final MillWords words;
  private final Wording wording;
  private final List<String> plants;
  private final List<String> months;

  MillCharts(MillWords words, Wording wording) {
    this.words = words;
    this.wording = wording;
    plants = words.plants();
    months = words.months();
  }

  Chart perTonne(String mill) {
    double[][] values =
        values((plant, month) -> wording.shown(words.perTonne(plant, mill, month), "kWh/t"));
    double end =
        OutlierBars.axisEnd(Arrays.stream(values).flatMapToDouble(Arrays::stream).toArray());
    return figure(
        "milling-" + mill,
        "Electricity of "
            + wording.titles().machineInText(mill)
            + " for what it mills, by month"
            + cutBars(values, end),
        wording.unit("kWh/t"),
        values,
        end);
  }

  Chart peaks() {
    return figure(
        "peaks",
        "Highest quarter-hour of each month, mean over the replications",
        "kW",
        values((plant, month) -> words.inMonth(plant, month, Measure.ENERGY_PEAK.of())),
        Double.POSITIVE_INFINITY);
  }

  /** [plant][month] what a plant has in a month, as it is shown; NaN where there is none. */
  private double[][] values(ToDoubleBiFunction<String, String> monthly) {
    return plants.stream()
        .map(
            plant ->
                months.stream().mapToDouble(month -> monthly.applyAsDouble(plant, month)).toArray())
        .toArray(double[][]::new);
  }

  /** Names bars that go beyond the end of the axis, with their figures. */
  private String cutBars(double[][] values, double end) {
    List<String> cut = new ArrayList<>();
    for (int plant = 0; plant < values.length; plant++) {
      for (int month = 0; month < values[plant].length; month++) {
        if (values[plant][month] > end) {
          cut.add(plant(plant) + " " + named(month, values[plant]));
        }
      }
    }
    return cut.isEmpty() ? "" : " (bars cut: " + String.join(", ", cut) + ")";
  }

  /**
   * @param end of the axis; +∞ to let all bars have their height
   */
  private Chart figure(String name, String title, String unit, double[][] values, double end) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (int plant = 0; plant < values.length; plant++) {
      for (int month = 0; month < values[plant].length; month++) {
        double value = values[plant][month];
        data.addValue(Double.isNaN(value) ? null : value, plant(plant), months.get(month));
      }
    }
    BarRenderer bars = ChartStyle.sideBySide(new BarRenderer(), values.length);
    NumberAxis axis = ChartStyle.numberAxis(unit, wording);
    if (Double.isFinite(end)) {
      axis.setRange(0, end);
    }
    CategoryPlot plot = ChartStyle.months(data, bars, axis);
    String alternative = alternative(title, unit, values);
    return new Chart(
        name,
        title,
        alternative,
        ChartStyle.svg(name, plot, true, 260, title, alternative),
        table(unit, values));
  }

  private String alternative(String title, String unit, double[][] values) {
    List<String> parts = new ArrayList<>();
    for (int plant = 0; plant < values.length; plant++) {
      double[] its = values[plant];
      parts.add(
          IntStream.range(0, its.length)
              .mapToObj(month -> named(month, its))
              .collect(Collectors.joining(", ", plant(plant) + " ", "")));
    }
    return title + ", bars of " + unit + ": " + String.join("; ", parts) + ".";
  }

  private String plant(int plant) {
    return wording.titles().option(plants.get(plant));
  }

  private String named(int month, double[] values) {
    return months.get(month) + " " + number(values[month]);
  }

  private Chart.Grid table(String unit, double[][] values) {
    List<String> head = new ArrayList<>(List.of("month"));
    plants.forEach(plant -> head.add(wording.titles().option(plant) + " " + unit));
    List<List<String>> rows = new ArrayList<>();
    for (int month = 0; month < months.size(); month++) {
      List<String> row = new ArrayList<>(List.of(months.get(month)));
      for (double[] its : values) {
        row.add(number(its[month]));
      }
      rows.add(row);
    }
    return new Chart.Grid(head, rows);
  }

  private String number(double shown) {
    return Double.isNaN(shown) ? "none" : wording.roughly(shown, "");
  }
}
