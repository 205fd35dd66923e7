package hurdline.chart.compare;

import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Header;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
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
    return new SignificanceBarRenderer(drawn.stream().map(line -> line.row().toldApart()).toList());
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
    return number + " %" + (line.row().toldApart() ? "" : " (no significant difference)");
  }

  private Chart.Grid table() {
    List<List<String>> rows = new ArrayList<>();
    for (Line line : lines) {
      DifferenceRow row = line.row();
      rows.add(
          List.of(
              line.label() + PairWords.ofReplications(row, header),
              wording.unit(row.unit()),
              wording.number(row.baseMean(), row.lowJoint(), row.highJoint(), row.unit()),
              wording.number(row.optionMean(), row.lowJoint(), row.highJoint(), row.unit()),
              wording.number(row.difference(), row.lowJoint(), row.highJoint(), row.unit()),
              wording.interval(row.difference(), row.low95(), row.high95(), row.unit()),
              wording.interval(row.difference(), row.lowJoint(), row.highJoint(), row.unit()),
              row.toldApart() ? "yes" : "no",
              row.replicationsNeeded() > 0 ? wording.amount(row.replicationsNeeded(), "count") : "",
              Double.isNaN(row.varianceRemoved())
                  ? ""
                  : wording.fixed(row.varianceRemoved(), 0, "share")));
    }
    return new Chart.Grid(
        List.of(
            "",
            "unit",
            wording.titles().option("base"),
            wording.titles().option(option),
            "difference",
            "95 % interval",
            "joint 95 % interval",
            "significantly different",
            "significantly different from n",
            "variance paired away %"),
        rows);
  }
}
