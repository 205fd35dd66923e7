package hurdline.chart.run;

import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.YardLevelRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;

/**
 * What lies in the yard or in a store through the calendar: mean, 5 to 95 % band, and the room
 * there.
 */
public final class LevelChart {
  private static final String TONNE = "t";

  private final Header header;
  private final String name;
  private final String title;
  private final Words words;
  private final List<Level> levels;
  private final double room;
  private final Wording wording;

  private record Level(LocalDate date, double mean, double p05, double p50, double p95) {}

  /**
   * @param marked before the amount of the room, at its line
   * @param said the same in the alternative
   * @param decimals of a level
   */
  private record Words(String where, String marked, String said, String unit, int decimals) {
    static Words yard(String unit) {
      return new Words("yard", "places hold ", "; all places that take it hold ", unit, 0);
    }

    static Words store() {
      return new Words("store", "room for ", "; there is room for ", TONNE, 1);
    }
  }

  private LevelChart(
      Header header,
      String name,
      String title,
      Words words,
      List<Level> levels,
      double room,
      Wording wording) {
    this.header = header;
    this.name = name;
    this.title = title;
    this.words = words;
    this.levels = levels;
    this.room = room;
    this.wording = wording;
  }

  /**
   * A yard.
   *
   * @param name the figure's
   * @param levels of one crop in one place or in all
   * @param room what the line marks; 0 for no line
   */
  public static LevelChart yard(
      Header header,
      String name,
      String title,
      List<YardLevelRow> levels,
      double room,
      Wording wording) {
    return new LevelChart(
        header,
        name,
        title,
        Words.yard(levels.isEmpty() ? "bales" : levels.get(0).unit()),
        levels.stream()
            .map(row -> new Level(row.date(), row.mean(), row.p05(), row.p50(), row.p95()))
            .toList(),
        room,
        wording);
  }

  static LevelChart yard(RunAnswer answer, Outline.Crop crop, Wording wording) {
    return yard(
        answer.header(),
        "yard-" + crop.name(),
        wording.titles().crop(crop.name()) + " in the yard",
        answer.levels().stream()
            .filter(row -> row.crop().equals(crop.name()) && row.isWholeYard())
            .toList(),
        answer.outline().capacityFor(crop.name()),
        wording);
  }

  static LevelChart store(RunAnswer answer, Outline.Store store, Wording wording) {
    return new LevelChart(
        answer.header(),
        "store-" + store.name(),
        "Finished goods in " + wording.titles().storeInText(store.name()),
        Words.store(),
        answer.stores().stream()
            .filter(row -> row.store().equals(store.name()))
            .map(row -> new Level(row.date(), row.mean(), row.p05(), row.p50(), row.p95()))
            .toList(),
        store.holds(),
        wording);
  }

  public Chart figure() {
    String svg = ChartStyle.svg(name, plot(), true, 300, title, alternative());
    return new Chart(name, title, alternative(), svg, table());
  }

  private XYPlot plot() {
    YIntervalSeries band = new YIntervalSeries("mean, with band from 5 to 95 % of replications");
    for (Level level : levels) {
      band.add(
          ChartStyle.millis(level.date()),
          shown(level.mean()),
          shown(level.p05()),
          shown(level.p95()));
    }
    NumberAxis axis =
        ChartStyle.numberAxis(wording.unit(words.unit()) + ", highest of the day", wording);
    XYPlot plot =
        ChartStyle.band(
            band, ChartStyle.dateAxis(header.from(), header.to(), wording), axis, false);
    if (room > 0) {
      double most = levels.stream().mapToDouble(Level::p95).max().orElse(0);
      axis.setRange(0, 1.1 * shown(Math.max(room, most)));
      plot.addRangeMarker(roomLine());
    }
    return plot;
  }

  private ValueMarker roomLine() {
    ValueMarker line = new ValueMarker(shown(room), Palette.VERMILLION, ChartStyle.DASHED);
    ChartStyle.label(line, words.marked() + wording.amount(room, words.unit()), 12);
    line.setLabelAnchor(RectangleAnchor.TOP_LEFT);
    line.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
    return line;
  }

  private double shown(double amount) {
    return wording.shown(amount, words.unit());
  }

  private String alternative() {
    String peak =
        levels.stream()
            .max(Comparator.comparingDouble(Level::mean))
            .map(
                most ->
                    "on average the most at "
                        + wording.date(most.date())
                        + ", "
                        + cell(most.mean())
                        + " "
                        + wording.unit(words.unit())
                        + " with a 5 to 95 % band from "
                        + cell(most.p05())
                        + " to "
                        + cell(most.p95()))
            .orElse("nothing is recorded");
    return "A line of the most that lies in the "
        + words.where()
        + " on each day: "
        + peak
        + (room > 0 ? words.said() + wording.amount(room, words.unit()) : "")
        + ".";
  }

  /** Month ends only; every date is in yard_levels.csv or store_levels.csv. */
  private Chart.Grid table() {
    String of = " " + wording.unit(words.unit());
    return new GridColumns<Level>(wording)
        .text("on", level -> wording.date(level.date()))
        .text("mean" + of, level -> cell(level.mean()))
        .text("5 %" + of, level -> cell(level.p05()))
        .text("50 %" + of, level -> cell(level.p50()))
        .text("95 %" + of, level -> cell(level.p95()))
        .of(levels.stream().filter(this::isLastOfMonth).toList());
  }

  private boolean isLastOfMonth(Level level) {
    return level.date().plusDays(1).getDayOfMonth() == 1 || level.date().equals(header.to());
  }

  private String cell(double amount) {
    return wording.fixed(amount, words.decimals(), words.unit());
  }
}
