package hurdline.chart.compare;

import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Header;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.IntervalData;
import hurdline.chart.kit.SignificanceBarRenderer;
import hurdline.text.MainMeasures;
import hurdline.text.PairWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;

/**
 * How far an option lies from the base in the main measures, as shares of the base so that one axis
 * serves all; the table under it has the amounts.
 */
final class DifferenceChart {
  private final Header header;
  private final String option;
  private final List<Line> lines = new ArrayList<>();
  private final Wording wording;

  private record Line(String label, DifferenceRow row) {
    boolean isDrawn() {
      return row.baseMean() != 0 && !Double.isNaN(row.difference());
    }

    double share() {
      return row.difference() / Math.abs(row.baseMean());
    }

    double low() {
      return row.lowJoint() / Math.abs(row.baseMean());
    }

    double high() {
      return row.highJoint() / Math.abs(row.baseMean());
    }
  }

  DifferenceChart(CompareAnswer answer, String option, Wording wording) {
    header = answer.header();
    this.option = option;
    this.wording = wording;
    for (MainMeasures main : MainMeasures.of(answer.outline(), wording)) {
      answer
          .difference(option, main.measure())
          .ifPresent(row -> lines.add(new Line(main.label(), row)));
    }
  }

  boolean isWanted() {
    return lines.stream().anyMatch(Line::isDrawn);
  }

  Chart figure() {
    String title = wording.titles().option(option) + " against the plant as it stands";
    String name = "difference-" + option.replace('+', '-');
    List<Line> drawn = lines.stream().filter(Line::isDrawn).toList();
    String svg =
        ChartStyle.svg(name, plot(drawn), false, 70 + 26 * drawn.size(), title, alternative(drawn));
    return new Chart(name, title, alternative(drawn), svg, table());
  }

  private CategoryPlot plot(List<Line> drawn) {
    IntervalData data = new IntervalData();
    drawn.forEach(
        line ->
            data.add(
                100 * line.share(),
                100 * line.low(),
                100 * line.high(),
                "difference",
                line.label()));
    NumberAxis axis =
        ChartStyle.numberAxis(
            "% of the plant as it stands, bar of the joint 95 % interval; pale: no significant difference",
            wording);
    CategoryPlot plot =
        ChartStyle.lying(new CategoryPlot(data, ChartStyle.categoryAxis(), axis, bars(drawn)));
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  private static SignificanceBarRenderer bars(List<Line> drawn) {
    return new SignificanceBarRenderer(
        drawn.stream().map(line -> line.row().significant()).toList());
  }

  private String alternative(List<Line> drawn) {
    List<String> parts = new ArrayList<>();
    drawn.forEach(line -> parts.add(line.label() + " " + share(line)));
    return "Bars of the difference of "
        + wording.titles().option(option)
        + " from the plant as it stands, in % of it: "
        + String.join(", ", parts)
        + ".";
  }

  private String share(Line line) {
    String number = wording.number(line.share(), line.low(), line.high(), "share");
    return number + " %" + (line.row().significant() ? "" : " (no significant difference)");
  }

  private Chart.Grid table() {
    return new GridColumns<Line>(wording)
        .text("", line -> line.label() + PairWords.ofReplications(line.row(), header))
        .text("unit", line -> wording.unit(line.row().unit()))
        .text(wording.titles().option("base"), line -> number(line, line.row().baseMean()))
        .text(wording.titles().option(option), line -> number(line, line.row().optionMean()))
        .text("difference", line -> number(line, line.row().difference()))
        .text(
            "95 % interval", line -> interval(line.row(), line.row().low95(), line.row().high95()))
        .text(
            "joint 95 % interval",
            line -> interval(line.row(), line.row().lowJoint(), line.row().highJoint()))
        .yes("significantly different", line -> line.row().significant())
        .text("significantly different from n", line -> needed(line.row()))
        .number("variance paired away", 0, "share", line -> line.row().varianceRemoved(), "")
        .of(lines);
  }

  private String number(Line line, double value) {
    DifferenceRow row = line.row();
    return wording.number(value, row.lowJoint(), row.highJoint(), row.unit());
  }

  private String interval(DifferenceRow row, double low, double high) {
    return wording.interval(row.difference(), low, high, row.unit());
  }

  private String needed(DifferenceRow row) {
    return row.replicationsNeeded() > 0 ? wording.amount(row.replicationsNeeded(), "count") : "";
  }
}
