package hurdline.chart.grid;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridCell;
import hurdline.answer.GridChange;
import hurdline.answer.GridKey;
import hurdline.answer.GridRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.CurveStyles;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.GridWords;
import hurdline.text.KeyWords;
import hurdline.text.LeadWords;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/**
 * How a measure answers to the one key of a grid: a curve for each plant with the interval at each
 * value, and where the best plant changes.
 */
final class ResponseChart {
  private final GridAnswer answer;
  private final String measure;
  private final Wording wording;
  private final KeyWords keys;
  private final GridKey key;
  private final String label;

  ResponseChart(GridAnswer answer, String measure, Wording wording) {
    this.answer = answer;
    this.measure = measure;
    this.wording = wording;
    keys = new KeyWords(answer, wording);
    key = answer.keys().get(0);
    label = new GridWords(answer, wording).label(measure);
  }

  Chart figure() {
    String title = label + " over " + keys.read(0);
    String name = "response-" + measure;
    String svg =
        ChartStyle.svg(name, plot(), answer.plants().size() > 1, 320, title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private String unit() {
    return answer.rows().stream()
        .filter(row -> row.measure().equals(measure))
        .map(GridRow::unit)
        .findFirst()
        .orElse("");
  }

  private XYPlot plot() {
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    XYErrorRenderer curves = new XYErrorRenderer();
    curves.setDrawXError(false);
    curves.setDefaultLinesVisible(true);
    curves.setErrorStroke(new BasicStroke(1.5f));
    for (int plant = 0; plant < answer.plants().size(); plant++) {
      data.addSeries(series(answer.plants().get(plant)));
      curves.setSeriesPaint(plant, CurveStyles.paint(plant));
      curves.setSeriesShape(plant, CurveStyles.shape(plant));
      curves.setSeriesStroke(plant, CurveStyles.stroke(plant));
      curves.setSeriesLinesVisible(plant, true);
      curves.setSeriesShapesVisible(plant, true);
    }
    NumberAxis up = ChartStyle.numberAxis(label + ", " + wording.unit(unit()), wording);
    up.setAutoRangeIncludesZero(false);
    XYPlot plot = ChartStyle.dressed(new XYPlot(data, values(), up, curves));
    markers().forEach(marker -> plot.addDomainMarker(marker, Layer.BACKGROUND));
    return plot;
  }

  /** The values stand at even distances, so their places serve as well as the values. */
  private SymbolAxis values() {
    String[] ticks = new String[key.values().size()];
    for (int value = 0; value < ticks.length; value++) {
      ticks[value] = keys.tick(0, value);
    }
    SymbolAxis axis = new SymbolAxis(keys.axis(0), ticks);
    axis.setGridBandsVisible(false);
    axis.setRange(-0.5, ticks.length - 0.5);
    ChartStyle.dress(axis);
    return axis;
  }

  private YIntervalSeries series(String plant) {
    YIntervalSeries series = new YIntervalSeries(keys.plantTitle(plant));
    for (int cell = 0; cell < answer.cells().size(); cell++) {
      int at = cell;
      answer
          .row(cell, plant, measure)
          .filter(row -> !Double.isNaN(row.mean()))
          .ifPresent(
              row ->
                  series.add(
                      at,
                      wording.shown(row.mean(), row.unit()),
                      wording.shown(orMean(row.low95(), row), row.unit()),
                      wording.shown(orMean(row.high95(), row), row.unit())));
    }
    return series;
  }

  private static double orMean(double end, GridRow row) {
    return Double.isNaN(end) ? row.mean() : end;
  }

  private List<GridChange> changes() {
    return answer.changes().stream().filter(one -> one.measure().equals(measure)).toList();
  }

  private List<Marker> markers() {
    List<Marker> markers = new ArrayList<>();
    for (GridChange change : changes()) {
      double low = change.lastBefore() < 0 ? -0.5 : change.lastBefore();
      double high = change.firstAfter() < 0 ? key.values().size() - 0.5 : change.firstAfter();
      markers.add(new IntervalMarker(low, high, Palette.GRID));
      markers.add(
          line(place(change.at()), Palette.INK, 6, "from here on " + keys.plant(change.after())));
    }
    asItStands().ifPresent(cell -> markers.add(line(cell, Color.GRAY, 2, "as it stands")));
    return markers;
  }

  private Optional<Integer> asItStands() {
    return answer.cells().stream()
        .filter(GridCell::asItStands)
        .findFirst()
        .map(answer.cells()::indexOf);
  }

  /** Where among the values a value lies. */
  private double place(double number) {
    List<GridKey.Value> values = key.values();
    double first = values.get(0).number();
    double last = values.get(values.size() - 1).number();
    return last > first ? (values.size() - 1) * (number - first) / (last - first) : 0;
  }

  private ValueMarker line(double at, Color color, float dash, String says) {
    int values = key.values().size();
    ValueMarker line =
        new ValueMarker(
            at,
            color,
            new BasicStroke(
                1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {dash, 3}, 0));
    ChartStyle.label(line, says, 11);
    // Towards the middle, so that no label runs over the edge.
    boolean left = at > (values - 1) / 2.0;
    boolean top = dash > 3;
    line.setLabelAnchor(
        top
            ? left ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT
            : left ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.BOTTOM_RIGHT);
    line.setLabelTextAnchor(
        top
            ? left ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT
            : left ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT);
    return line;
  }

  private String alternative() {
    StringBuilder text =
        new StringBuilder("Curves of ")
            .append(label)
            .append(" over ")
            .append(keys.read(0))
            .append(": ");
    for (String plant : answer.plants()) {
      List<String> points = new ArrayList<>();
      for (int cell = 0; cell < answer.cells().size(); cell++) {
        points.add(keys.cell(cell) + " " + mean(cell, plant));
      }
      text.append(keys.plant(plant)).append(": ").append(String.join(", ", points)).append("; ");
    }
    text.append("in ").append(wording.unit(unit())).append('.');
    LeadWords leads = new LeadWords(answer, wording);
    changes()
        .forEach(
            change ->
                text.append(" From ")
                    .append(keys.plant(change.before()))
                    .append(" to ")
                    .append(keys.plant(change.after()))
                    .append(' ')
                    .append(leads.where(change))
                    .append('.'));
    return text.toString();
  }

  private String mean(int cell, String plant) {
    return answer
        .row(cell, plant, measure)
        .map(row -> wording.number(row.mean(), row.low95(), row.high95(), row.unit()))
        .orElse("left out");
  }

  private Chart.Grid table() {
    GridColumns<Integer> columns = new GridColumns<Integer>(wording).text(keys.read(0), keys::cell);
    for (String plant : answer.plants()) {
      String of = answer.plants().size() > 1 ? keys.plantTitle(plant) + ", " : "";
      columns
          .text(of + "mean " + wording.unit(unit()), cell -> mean(cell, plant))
          .text(of + "95 % interval", cell -> interval(cell, plant));
    }
    return columns.of(IntStream.range(0, answer.cells().size()).boxed().toList());
  }

  private String interval(int cell, String plant) {
    return answer
        .row(cell, plant, measure)
        .map(one -> wording.interval(one.mean(), one.low95(), one.high95(), one.unit()))
        .orElse("");
  }
}
