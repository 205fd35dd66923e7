package hurdline.chart.choose;

import hurdline.answer.ChoiceEffect;
import hurdline.answer.ChooseAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.GridColumns;
import hurdline.chart.kit.IntervalData;
import hurdline.chart.kit.SignificanceBarRenderer;
import hurdline.text.ChoiceWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;

/** What another value of one choice does to the named plan, all other choices as they are. */
final class EffectChart {
  private static final String NAME = "effects";

  private final ChooseAnswer answer;
  private final Wording wording;
  private final ChoiceWords words;
  private final String unit;

  EffectChart(ChooseAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    words = new ChoiceWords(answer, wording);
    unit = answer.terms().unit();
  }

  Chart figure() {
    String title = "Effect of another value of one choice on the " + words.measure();
    String svg =
        ChartStyle.svg(
            NAME, plot(), false, 80 + 24 * answer.effects().size(), title, alternative());
    return new Chart(NAME, title, alternative(), svg, table());
  }

  private CategoryPlot plot() {
    IntervalData data = new IntervalData();
    List<Boolean> told = new ArrayList<>();
    for (ChoiceEffect effect : answer.effects()) {
      told.add(isSignificant(effect));
      data.add(
          wording.shown(effect.difference(), unit),
          wording.shown(effect.low95(), unit),
          wording.shown(effect.high95(), unit),
          "difference",
          label(effect));
    }
    NumberAxis axis =
        ChartStyle.numberAxis(
            wording.unit(unit)
                + " against the named plan, bar of the 95 % interval; pale: not significant",
            wording);
    CategoryPlot plot =
        ChartStyle.lying(
            new CategoryPlot(
                data, ChartStyle.categoryAxis(), axis, new SignificanceBarRenderer(told)));
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  private static boolean isSignificant(ChoiceEffect effect) {
    return effect.low95() > 0 || effect.high95() < 0;
  }

  private String label(ChoiceEffect effect) {
    return words.valued(effect.choice(), effect.value());
  }

  private String number(ChoiceEffect effect) {
    return wording.number(effect.difference(), effect.low95(), effect.high95(), unit);
  }

  private String alternative() {
    List<String> parts = new ArrayList<>();
    answer
        .effects()
        .forEach(
            effect ->
                parts.add(
                    label(effect)
                        + " "
                        + number(effect)
                        + (isSignificant(effect) ? "" : " (not significant)")));
    return "Bars of the difference in "
        + wording.unit(unit)
        + " from the named plan: "
        + String.join(", ", parts)
        + ".";
  }

  private Chart.Grid table() {
    return new GridColumns<ChoiceEffect>(wording)
        .text("choice", effect -> words.choice(effect.choice()))
        .text("value", effect -> words.value(effect.choice(), effect.value()))
        .text("difference " + wording.unit(unit), this::number)
        .text(
            "95 % interval",
            effect -> wording.interval(effect.difference(), effect.low95(), effect.high95(), unit))
        .text("significant", effect -> isSignificant(effect) ? "yes" : "no")
        .text(
            "cost to buy, difference",
            effect ->
                effect.cost() == 0
                    ? ""
                    : (effect.cost() > 0 ? "+" : "")
                        + wording.asGiven(effect.cost(), answer.header().currency()))
        .text(
            "limited longest by",
            effect -> answer.chosen(effect.plan()).map(words::limits).orElse(""))
        .of(answer.effects());
  }
}
