package hurdline.chart.compare;

import hurdline.answer.BottleneckRow;
import hurdline.answer.CompareAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.IntervalBars;
import hurdline.chart.kit.IntervalData;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;

/** Where the holder of a line moves: its share of hours by cause, base and options side by side. */
final class BottleneckShiftChart {
  /** A cause that is nowhere above this is left to the table. */
  private static final double DRAWN_FROM = 0.02;

  private final String line;
  private final List<String> options;
  private final List<BottleneckRow> rows;
  private final List<String> causes;
  private final Wording wording;

  BottleneckShiftChart(CompareAnswer answer, String line, Wording wording) {
    this.line = line;
    this.wording = wording;
    options = answer.plants();
    rows = answer.holders().stream().filter(row -> row.line().equals(line)).toList();
    causes = rows.stream().map(BottleneckRow::cause).distinct().toList();
  }

  boolean isWanted() {
    return !rows.isEmpty();
  }

  Chart figure() {
    String title = "What limits " + wording.titles().lineInText(line) + ", side by side";
    String name = "bottlenecks-" + line;
    List<String> drawn = drawn();
    int height = 100 + (14 + 14 * options.size()) * drawn.size();
    String svg = ChartStyle.svg(name, plot(drawn), true, height, title, alternative(drawn));
    return new Chart(name, title, alternative(drawn), svg, table());
  }

  private List<String> drawn() {
    return causes.stream()
        .filter(
            cause ->
                rows.stream()
                    .anyMatch(row -> row.cause().equals(cause) && row.share() >= DRAWN_FROM))
        .toList();
  }

  private Optional<BottleneckRow> row(String option, String cause) {
    return rows.stream()
        .filter(row -> row.option().equals(option) && row.cause().equals(cause))
        .findFirst();
  }

  private CategoryPlot plot(List<String> drawn) {
    IntervalData data = new IntervalData();
    for (String option : options) {
      for (String cause : drawn) {
        double share = row(option, cause).map(BottleneckRow::share).orElse(0.0);
        double low = row(option, cause).map(BottleneckRow::shareLow95).orElse(Double.NaN);
        double high = row(option, cause).map(BottleneckRow::shareHigh95).orElse(Double.NaN);
        data.add(
            100 * share,
            100 * low,
            100 * high,
            wording.titles().option(option),
            wording.titles().causeLabel(cause));
      }
    }
    IntervalBars bars = ChartStyle.sideBySide(new IntervalBars(), options.size());
    NumberAxis axis =
        ChartStyle.numberAxis("% of scheduled hours, bar of the 95 % interval", wording);
    return ChartStyle.lying(new CategoryPlot(data, ChartStyle.categoryAxis(), axis, bars));
  }

  private String alternative(List<String> drawn) {
    List<String> parts = new ArrayList<>();
    for (String option : options) {
      List<String> shares = new ArrayList<>();
      drawn.forEach(
          cause ->
              row(option, cause)
                  .ifPresent(
                      row ->
                          shares.add(
                              wording.titles().causeLabel(cause) + " " + wording.share(row))));
      parts.add(
          wording.titles().option(option)
              + " "
              + (shares.isEmpty() ? "limited by none of these" : String.join(", ", shares)));
    }
    return "Bars of the share of scheduled hours by what limited "
        + wording.titles().lineInText(line)
        + ": "
        + String.join("; ", parts)
        + ".";
  }

  private Chart.Grid table() {
    GridColumns<String> columns =
        new GridColumns<String>(wording).text("limited by", wording.titles()::causeLabel);
    for (String option : options) {
      columns.text(
          wording.titles().option(option) + " %",
          cause -> row(option, cause).map(this::cell).orElse("0"));
    }
    return columns.of(causes);
  }

  private String cell(BottleneckRow row) {
    return wording.cell(row.share(), row.shareLow95(), row.shareHigh95(), "share");
  }
}
