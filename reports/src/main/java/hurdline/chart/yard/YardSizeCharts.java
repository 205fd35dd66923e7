package hurdline.chart.yard;

import hurdline.answer.YardAnswer;
import hurdline.answer.YardSizeRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.Palette;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;

/** What yards of several sizes come to: chance of overflow, what waits and wastes away, money. */
final class YardSizeCharts {
  private final YardAnswer answer;
  private final Wording wording;

  YardSizeCharts(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  private interface Band {
    double at(YardSizeRow row);
  }

  Chart overflow() {
    String title = "Chance that a yard of each size overflows";
    NumberAxis chance = ChartStyle.numberAxis("% of seasons", wording);
    chance.setRange(0, 100);
    XYPlot plot =
        plot(
            "share of seasons, with its 95 % interval",
            chance, r -> 100 * r.chance(), r -> 100 * r.low95(), r -> 100 * r.high95());
    plot.setDomainAxis(sizes());
    plot.addRangeMarker(
        marker(
            100 * answer.asked().overflow(),
            "allowed " + wording.asGiven(answer.asked().overflow(), "share"),
            true));
    plot.addDomainMarker(marker(answer.asked().holds(), "as the file has it", false));
    if (!Double.isNaN(answer.byRule().bales())) {
      plot.addDomainMarker(marker(answer.byRule().bales(), "smallest that will do", false));
    }
    String words = overflowWords();
    return new Chart(
        "overflow",
        title,
        words,
        ChartStyle.svg("overflow", plot, true, 320, title, words),
        overflowTable());
  }

  private String overflowWords() {
    YardSizeRow first = answer.capacity().get(0);
    return "A line of the share of seasons in which something finds no room: "
        + percent(first.chance())
        + " at "
        + size(first)
        + ", "
        + percent(last().chance())
        + " at "
        + size(last())
        + "; marked are the share that is allowed, the yard as the file has it"
        + (Double.isNaN(answer.byRule().bales())
            ? ""
            : " and the smallest size that will do, "
                + wording.amount(answer.byRule().bales(), unit()))
        + ".";
  }

  private GridColumns<YardSizeRow> columns() {
    return new GridColumns<YardSizeRow>(wording).number("yard of", 0, unit(), YardSizeRow::bales);
  }

  private Chart.Grid overflowTable() {
    return columns()
        .text("ground " + wording.unit("m2"), this::area)
        .text("overflows in % of seasons", row -> wording.fixed(row.chance(), 0, "share"))
        .text(
            "95 % interval",
            row ->
                wording.fixed(row.low95(), 0, "share")
                    + " to "
                    + wording.fixed(row.high95(), 0, "share"))
        .of(answer.capacity());
  }

  /**
   * Bales held at the field, dry matter lost and days waited, one above the other over one axis of
   * sizes.
   */
  Chart effects() {
    String title =
        "What a smaller yard holds back, and what wastes away; dashed: as the file has it";
    CombinedDomainXYPlot all = new CombinedDomainXYPlot(sizes());
    all.setGap(14);
    all.add(single(unit() + " at the fields", YardSizeRow::heldAtField));
    all.add(
        single(wording.unit("t") + " of dry matter lost", row -> wording.shown(row.lostT(), "t")));
    all.add(single("days waited for room", YardSizeRow::waitingD));
    all.setBackgroundPaint(Color.WHITE);
    String words = effectsWords();
    return new Chart(
        "effects",
        title,
        words,
        ChartStyle.svg("effects", all, false, 520, title, words),
        effectsTable());
  }

  private XYPlot single(String label, ToDoubleFunction<YardSizeRow> value) {
    NumberAxis axis = ChartStyle.numberAxis(label, wording);
    axis.setLabelFont(Fonts.of(11));
    XYPlot plot =
        plot(label, axis, value::applyAsDouble, value::applyAsDouble, value::applyAsDouble);
    plot.addDomainMarker(marker(answer.asked().holds(), "", false));
    return plot;
  }

  private String effectsWords() {
    YardSizeRow first = answer.capacity().get(0);
    return "Three lines over the size of the yard, means of the seasons: "
        + effects(first)
        + "; "
        + effects(last())
        + ".";
  }

  private String effects(YardSizeRow row) {
    return "at "
        + size(row)
        + " "
        + wording.fixed(row.heldAtField(), 0, unit())
        + " "
        + unit()
        + " lie at the fields at most, "
        + wording.rough(row.lostT(), "t")
        + " of dry matter are lost and trucks and loads wait "
        + wording.fixed(row.waitingD(), 1, "d")
        + " days";
  }

  private Chart.Grid effectsTable() {
    return columns()
        .number("most at the fields, mean", 0, unit(), YardSizeRow::heldAtField)
        .number("dry matter lost, mean", 1, "t", YardSizeRow::lostT)
        .number("waited for room, mean", 1, "d", YardSizeRow::waitingD)
        .of(answer.capacity());
  }

  Chart money() {
    String title = "What a yard of each size costs a year";
    String currency = answer.header().currency();
    NumberAxis axis = ChartStyle.numberAxis(currency + " a year", wording);
    axis.setAutoRangeIncludesZero(false);
    XYPlot plot =
        plot(
            "mean, with its 95 % interval",
            axis,
            row -> row.cost().perYear(),
            row -> row.cost().low95(),
            row -> row.cost().high95());
    plot.setDomainAxis(sizes());
    YardSizeRow cheapest = answer.cheapest().orElseThrow();
    plot.addDomainMarker(marker(cheapest.bales(), "cheapest", false));
    List<YardSizeRow> alike = answer.hardlyMatters();
    if (alike.size() > 1) {
      plot.addDomainMarker(
          new IntervalMarker(
              alike.get(0).bales(),
              alike.get(alike.size() - 1).bales(),
              Palette.YELLOW,
              new BasicStroke(0),
              null,
              null,
              0.35f),
          Layer.BACKGROUND);
    }
    String words =
        "A line of money a year over the size of the yard, least at "
            + size(cheapest)
            + "; shaded from "
            + size(alike.get(0))
            + " to "
            + size(alike.get(alike.size() - 1))
            + ", where the choice hardly matters.";
    return new Chart(
        "yard-money",
        title,
        words,
        ChartStyle.svg("yard-money", plot, true, 320, title, words),
        moneyTable());
  }

  private Chart.Grid moneyTable() {
    String currency = answer.header().currency();
    return columns()
        .text("ground " + currency, row -> roughly(row.cost().ground()))
        .text("waiting " + currency, row -> roughly(row.cost().waiting()))
        .text("margin below no limit " + currency, row -> roughly(row.cost().marginBelow()))
        .text(
            "in total " + currency + " a year (95 % interval)",
            row ->
                wording.cell(
                    row.cost().perYear(), row.cost().low95(), row.cost().high95(), currency))
        .text("above the cheapest (joint 95 % interval)", this::above)
        .text(
            "significant",
            row -> row.isCheapest() ? "" : row.cost().above().significant() ? "yes" : "no")
        .text(
            "in the margin: wages of receiving " + currency, row -> roughly(row.cost().receiving()))
        .of(answer.capacity());
  }

  private String roughly(double money) {
    return wording.roughly(money, answer.header().currency());
  }

  private String above(YardSizeRow row) {
    YardSizeRow.Cost.Above above = row.cost().above();
    return row.isCheapest()
        ? "the cheapest"
        : wording.cell(above.money(), above.low(), above.high(), answer.header().currency());
  }

  private XYPlot plot(String name, NumberAxis axis, Band value, Band low, Band high) {
    YIntervalSeries series = new YIntervalSeries(name);
    for (YardSizeRow row : answer.capacity()) {
      double at = value.at(row);
      series.add(row.bales(), at, orElse(low.at(row), at), orElse(high.at(row), at));
    }
    return ChartStyle.band(series, null, axis, true);
  }

  private NumberAxis sizes() {
    NumberAxis axis = ChartStyle.numberAxis("size of the yard, " + unit(), wording);
    axis.setAutoRangeIncludesZero(false);
    return axis;
  }

  private ValueMarker marker(double value, String label, boolean level) {
    ValueMarker line =
        new ValueMarker(value, level ? Palette.VERMILLION : Palette.INK, ChartStyle.DASHED);
    ChartStyle.label(line, label, 11);
    if (level) {
      line.setLabelAnchor(RectangleAnchor.TOP_LEFT);
      line.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
    } else {
      boolean left = value < (answer.capacity().get(0).bales() + last().bales()) / 2;
      line.setLabelAnchor(left ? RectangleAnchor.TOP_RIGHT : RectangleAnchor.TOP_LEFT);
      line.setLabelTextAnchor(left ? TextAnchor.TOP_LEFT : TextAnchor.TOP_RIGHT);
    }
    return line;
  }

  private YardSizeRow last() {
    return answer.capacity().get(answer.capacity().size() - 1);
  }

  private static double orElse(double limit, double value) {
    return Double.isNaN(limit) ? value : limit;
  }

  private String unit() {
    return answer.asked().unit();
  }

  private String size(YardSizeRow row) {
    return wording.fixed(row.bales(), 0, unit()) + " " + unit();
  }

  private String area(YardSizeRow row) {
    return Double.isNaN(row.areaM2()) ? "not given" : wording.roughly(row.areaM2(), "m2");
  }

  private String percent(double share) {
    return wording.fixed(share, 0, "share") + " %";
  }
}
