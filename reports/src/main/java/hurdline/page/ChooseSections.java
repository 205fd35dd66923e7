package hurdline.page;

import hurdline.answer.ChoiceRound;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChooseTerms;
import hurdline.answer.ChosenRow;
import hurdline.chart.choose.ChooseCharts;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.text.ChoiceWords;
import hurdline.text.ChooseHeadline;
import hurdline.text.ChooseTable;
import hurdline.text.ChooseWords;
import hurdline.text.Wording;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The parts of a report on very many plans: which is named, what budgets buy, what makes it best.
 */
final class ChooseSections {
  private static final int MOST_REASONS = 20;

  private final ChooseAnswer answer;
  private final Wording wording;
  private final ChooseCharts figures;
  private final ChoiceWords words;

  ChooseSections(ChooseAnswer answer, Wording wording, ChooseCharts figures) {
    this.answer = answer;
    this.wording = wording;
    this.figures = figures;
    words = new ChoiceWords(answer, wording);
  }

  List<Section> all() {
    return List.of(
        new Section("answer", "The answer", true, this::writeAnswer),
        new Section("left", ChooseTable.heading(answer), true, this::writeLeft),
        Section.of("frontier", "What each budget buys", figures.frontier()),
        Section.of("effects", "What makes the named plan the best", figures.effects()),
        new Section("rounds", "How it was found", true, this::writeRounds),
        Assumptions.section(
            answer.header(),
            wording,
            html -> html.table("what was open", open()),
            answer.assumptions()),
        Cautions.section(answer, wording, answer.cautions()));
  }

  private void writeAnswer(Html html) {
    html.answer(new ChooseHeadline(answer, wording).sentences());
    html.wholeTable("the answer", ChooseTable.of(answer, wording));
    ChooseWords said = new ChooseWords(answer, wording);
    html.paragraph(said.legend());
    html.list(said.sentences());
    List<String> reasons = reasons();
    if (!reasons.isEmpty()) {
      html.paragraph("Some of the plans that cannot be simulated:").list(reasons);
    }
  }

  private List<String> reasons() {
    return answer.plans().stream()
        .filter(plan -> plan.status() == ChoiceRow.Status.PROBLEM)
        .limit(MOST_REASONS)
        .map(plan -> words.plan(plan.plan()) + ": " + plan.reason())
        .toList();
  }

  private void writeLeft(Html html) {
    GridColumns<ChosenRow> columns = new GridColumns<>(wording);
    columns.text("plan", row -> words.among(row.plan()));
    columns.text("costs", row -> words.cost(row.plan()));
    String unit = answer.terms().unit();
    columns.text(
        "mean " + wording.unit(unit),
        row -> wording.cell(row.mean(), row.low95(), row.high95(), unit));
    columns.text("5th percentile", row -> wording.roughly(row.p05(), unit));
    columns.text(
        "none is more above it than",
        row -> Double.isNaN(row.gap()) ? "not known" : words.atMost(row.gap()));
    for (int at = 0; at < answer.terms().bounds().size(); at++) {
      int bound = at;
      columns.text(
          said(answer.terms().bounds().get(at)),
          row -> wording.fixed(row.met().get(bound), 0, "share") + " % of years");
    }
    columns.text("limited longest by", words::limits);
    html.table("plans that may be the best", columns.of(ChooseTable.left(answer)));
  }

  private String said(ChooseTerms.Bound bound) {
    return "`"
        + bound.measure()
        + "` "
        + (bound.atLeast() ? "at least " : "at most ")
        + wording.asGiven(bound.value(), bound.unit());
  }

  private void writeStages(Html html) {
    html.paragraph(
        wording.count(answer.terms().choosing())
            + " years of every plan, each on draws of its own, gave its spread, and the spread how many years it needs in all. Years of the"
            + " plans that are shown:");
    html.table(
        "years of two stages",
        new GridColumns<ChosenRow>(wording)
            .text("plan", row -> words.plan(row.plan()))
            .text("years", row -> wording.count(answer.plans().get(row.plan()).years()))
            .of(ChooseTable.left(answer)));
  }

  private void writeRounds(Html html) {
    if (answer.terms().independent()) {
      writeStages(html);
      return;
    }
    String unit = answer.terms().unit();
    html.paragraph(
        wording.count(answer.terms().choosing())
            + " years of every plan chose the first leader. Each round is on new years; the gap is what the best plan may be above that"
            + " round's leader.");
    html.table(
        "rounds",
        new GridColumns<ChoiceRound>(wording)
            .text("budget", row -> words.budget(row.budget()))
            .text("round", row -> wording.count(row.round() + 1))
            .text("new years", row -> wording.count(answer.terms().rounds().get(row.round())))
            .text("leader", row -> words.plan(row.leader()))
            .text(
                "gap " + wording.unit(unit),
                row -> Double.isNaN(row.gap()) ? "not known" : wording.roughly(row.gap(), unit))
            .text("plans left", row -> wording.count(row.left()))
            .of(answer.rounds()));
  }

  private Chart.Grid open() {
    return new GridColumns<Integer>(wording)
        .text("", words::choice)
        .text("in the file", choice -> "`" + answer.choices().get(choice).name() + "`")
        .text(
            "values",
            choice ->
                String.join(
                    ", ",
                    IntStream.range(0, answer.choices().get(choice).values().size())
                        .mapToObj(value -> words.value(choice, value))
                        .toList()))
        .of(IntStream.range(0, answer.choices().size()).boxed().toList());
  }
}
