package hurdline.chart.run;

import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.StoreLevelRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;

/** What lies in a store through the calendar: mean, 5 to 95 % band, and what the store holds. */
final class StoreLevelChart {
  private static final String TONNE = "t";

  private final Header header;
  private final Outline.Store store;
  private final List<StoreLevelRow> levels;
  private final Wording wording;

  StoreLevelChart(RunAnswer answer, Outline.Store store, Wording wording) {
    header = answer.header();
    this.store = store;
    levels = answer.stores().stream().filter(row -> row.store().equals(store.name())).toList();
    this.wording = wording;
  }

  Chart figure() {
    String name = "store-" + store.name();
    String title = "Finished goods in " + wording.titles().storeInText(store.name());
    String svg = ChartStyle.svg(name, plot(), true, 300, title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private XYPlot plot() {
    YIntervalSeries level = new YIntervalSeries("mean, with band from 5 to 95 % of replications");
    for (StoreLevelRow row : levels) {
      level.add(
          ChartStyle.millis(row.date()), shown(row.mean()), shown(row.p05()), shown(row.p95()));
    }
    NumberAxis axis = ChartStyle.numberAxis(wording.unit(TONNE) + ", highest of the day", wording);
    XYPlot plot =
        ChartStyle.band(
            level, ChartStyle.dateAxis(header.from(), header.to(), wording), axis, false);
    axis.setRange(0, 1.1 * shown(store.holds()));
    ValueMarker line = new ValueMarker(shown(store.holds()), Palette.VERMILLION, ChartStyle.DASHED);
    ChartStyle.label(line, "room for " + wording.amount(store.holds(), TONNE), 12);
    line.setLabelAnchor(RectangleAnchor.TOP_LEFT);
    line.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
    plot.addRangeMarker(line);
    return plot;
  }

  private double shown(double tonnes) {
    return wording.shown(tonnes, TONNE);
  }

  private String alternative() {
    String peak =
        levels.stream()
            .max(Comparator.comparingDouble(StoreLevelRow::mean))
            .map(
                most ->
                    "on average the most at "
                        + wording.date(most.date())
                        + ", "
                        + wording.amount(most.mean(), TONNE)
                        + " with a 5 to 95 % band from "
                        + wording.amount(most.p05(), TONNE)
                        + " to "
                        + wording.amount(most.p95(), TONNE))
            .orElse("nothing is recorded");
    return "A line of the most that lies in the store on each day: "
        + peak
        + "; there is room for "
        + wording.amount(store.holds(), TONNE)
        + ".";
  }

  /** Month ends only; every date is in store_levels.csv. */
  private Chart.Grid table() {
    String of = " " + wording.unit(TONNE);
    return new GridColumns<StoreLevelRow>(wording)
        .text("on", row -> wording.date(row.date()))
        .text("mean" + of, row -> cell(row.mean()))
        .text("5 %" + of, row -> cell(row.p05()))
        .text("50 %" + of, row -> cell(row.p50()))
        .text("95 %" + of, row -> cell(row.p95()))
        .of(levels.stream().filter(this::isLastOfMonth).toList());
  }

  private boolean isLastOfMonth(StoreLevelRow row) {
    return row.date().plusDays(1).getDayOfMonth() == 1 || row.date().equals(header.to());
  }

  private String cell(double tonnes) {
    return wording.fixed(tonnes, 1, TONNE);
  }
}
