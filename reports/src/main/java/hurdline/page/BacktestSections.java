package hurdline.page;

import hurdline.answer.BacktestAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.problem.LocatedProblem;
import hurdline.text.BacktestWords;
import hurdline.text.Wording;
import java.util.List;

/** The parts of a backtest's report: the verdict, each series week by week, and what to look at. */
final class BacktestSections {
  private final BacktestAnswer answer;
  private final Wording wording;
  private final List<Chart> charts;
  private final BacktestWords words;

  BacktestSections(BacktestAnswer answer, Wording wording, List<Chart> charts) {
    this.answer = answer;
    this.wording = wording;
    this.charts = charts;
    words = new BacktestWords(answer, wording);
  }

  List<Section> all() {
    return List.of(
        new Section("answer", "The answer", true, this::writeAnswer),
        Section.of("weeks", "Recorded and simulated", charts),
        new Section(
            "inputs",
            "Which input would have to move",
            !answer.moves().isEmpty(),
            this::writeMoves),
        Assumptions.section(answer.header(), wording, answer.assumptions()),
        Cautions.section(
            answer,
            wording,
            answer.cautions(),
            answer.warnings().stream().map(LocatedProblem::text).toList()));
  }

  private void writeAnswer(Html html) {
    html.answer(words.headline());
    List<List<String>> rows = words.table();
    List<List<String>> shown = rows.stream().map(row -> row.subList(0, row.size() - 1)).toList();
    html.table("the answer", new Chart.Grid(shown.get(0), shown.subList(1, shown.size())));
    html.paragraph(
        "The season was simulated with its shifts as they were worked, the stock that was first"
            + " counted and the loads as they came, chance for all else. A difference is"
            + " significant by the chance of a total as far off, each replication taking the"
            + " season's place in turn (beyond them all, Student's t), raised so that all figures"
            + " hold together (Holm). It matters beyond 3 % of bales fed, tonnes and electricity"
            + " and 10 % of stops and of bales in the yard (common practice, no source).");
    words.notes().forEach(html::paragraph);
  }

  private void writeMoves(Html html) {
    html.table(
        "inputs",
        new GridColumns<BacktestAnswer.Move>(wording)
            .text("input", words::input)
            .text("drawn around", move -> wording.roughly(move.was(), "count"))
            .text("the season's", move -> wording.roughly(move.becomes(), "count"))
            .text("off by so many errors", move -> wording.fixed(move.errors(), 1, "count"))
            .text("told of it", move -> wording.fixed(move.told(), 0, "share") + " %")
            .of(answer.moves()));
    html.paragraph(
        "By a linear update of each input by all totals together. Told is the share of an input's"
            + " variance that this season takes away; of one that it tells less than 10 %, it says"
            + " nothing.");
  }
}
