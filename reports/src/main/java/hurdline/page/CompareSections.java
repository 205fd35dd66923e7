package hurdline.page;

import hurdline.answer.CompareAnswer;
import hurdline.answer.Header;
import hurdline.answer.Selection;
import hurdline.answer.Titles;
import hurdline.chart.compare.CompareCharts;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.text.CompareHeadline;
import hurdline.text.CompareTable;
import hurdline.text.CompareWords;
import hurdline.text.DrawnCropWords;
import hurdline.text.InputWords;
import hurdline.text.MainMeasures;
import hurdline.text.MainTable;
import hurdline.text.RankedAlternatives;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;

/** The parts of a comparison's report: what differs, who holds the line, and whether it pays. */
final class CompareSections {
  private final CompareAnswer answer;
  private final Wording wording;
  private final CompareCharts figures;
  private final CompareWords words;

  CompareSections(CompareAnswer answer, Wording wording, CompareCharts figures) {
    this.answer = answer;
    this.wording = wording;
    this.figures = figures;
    this.words = new CompareWords(answer, wording);
  }

  List<Section> all() {
    List<Chart> gains = figures.gains();
    List<Section> all = new ArrayList<>();
    all.add(new Section("answer", "The answer", true, this::writeAnswer));
    all.add(
        new Section(
            "differences", "What differs", true, html -> html.figures(figures.differences())));
    all.add(Section.of("bottleneck", "Where the bottleneck moves", figures.holders()));
    all.add(
        new Section(
            "best", "Which is the best", answer.further().best().isAsked(), this::writeBest));
    all.add(
        new Section(
            "gain",
            "Effect of 10 % more of each thing",
            !gains.isEmpty(),
            html -> writeGains(html, gains)));
    all.add(new MillSection(answer, wording, figures).section());
    all.addAll(new WorthSections(answer, wording, figures).all());
    all.add(Assumptions.section(answer.header(), wording, answer.assumptions()));
    all.add(Cautions.section(answer, wording, answer.cautions()));
    return all;
  }

  private void writeAnswer(Html html) {
    html.answer(new CompareHeadline(answer, wording).sentences());
    words.warnings().forEach(html::paragraph);
    Header header = answer.header();
    if (header.stopped()) {
      html.paragraph(
          "The comparison was stopped: "
              + header.replications()
              + " of "
              + header.replicationsAsked()
              + " replications are in this answer, and of the further questions only what was complete.");
    }
    RankedAlternatives alternatives = new RankedAlternatives(answer, wording);
    if (alternatives.isWanted()) {
      html.table(
          "alternatives by difference from the plant as it stands",
          new Chart.Grid(alternatives.head(), alternatives.grid()));
    }
    MainTable main = CompareTable.of(answer, wording);
    html.wholeTable("the answer", main);
    html.paragraph(words.legend(main));
    for (CompareAnswer.Option option : answer.options()) {
      words
          .open(option.name())
          .ifPresent(
              open ->
                  html.paragraph(
                      "Not significant with "
                          + Titles.inText(wording.titles().option(option.name()))
                          + ": "
                          + open
                          + "."));
    }
    words.best().ifPresent(best -> html.paragraph("The " + best + "."));
    html.table("what is compared", options());
    new DrawnCropPart(DrawnCropWords.of(answer, wording), wording).write(html);
    new InputPart(new InputWords(answer.inputs(), answer.outline(), wording), wording).write(html);
  }

  private Chart.Grid options() {
    String currency = answer.header().currency();
    return new GridColumns<CompareAnswer.Option>(wording)
        .text("option", option -> wording.titles().option(option.name()))
        .text("", CompareAnswer.Option::says)
        .number(
            "cost", 0, currency, option -> option.isPurchase() ? option.cost() : Double.NaN, "none")
        .text("life", option -> option.isPurchase() ? words.years(option) : "")
        .number(
            "salvage value",
            0,
            currency,
            option -> option.isPurchase() ? option.salvage() : Double.NaN,
            "")
        .of(answer.options());
  }

  private void writeBest(Html html) {
    Selection best = answer.further().best();
    html.table(
        "which is the best",
        new GridColumns<Selection.Row>(wording)
            .text("", row -> wording.titles().option(row.option()))
            .text(
                "mean " + MainMeasures.label(best.measure(), answer.outline(), wording),
                row -> wording.rough(row.mean(), best.unit()))
            .text("replications", row -> wording.amount(row.replications(), "count"))
            .text(
                "",
                row ->
                    row.option().equals(best.option()) && best.decided()
                        ? "picked"
                        : row.left() ? "left" : "out")
            .of(best.rows()));
    html.paragraph(
        "One that is out was simulated no further; the means of those that were simulated longer rest on more"
            + " years than the other figures of this page.");
  }

  private void writeGains(Html html, List<Chart> gains) {
    words.gains().forEach(sentence -> html.paragraph(sentence + "."));
    html.paragraph(
        "Each thing has 10 % more alone, so effects do not add up: once one bottleneck is relieved, the"
            + " next limits. What the bottlenecks suggest is in the last column;"
            + " stops, changes and want of bales limit too and are not in it.");
    html.figures(gains);
  }
}
