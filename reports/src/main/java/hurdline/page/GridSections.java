package hurdline.page;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridCell;
import hurdline.chart.grid.GridCharts;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.text.GridHeadline;
import hurdline.text.GridTable;
import hurdline.text.GridWords;
import hurdline.text.KeyWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The parts of a grid's report: where the best lies, and how each measure answers. */
final class GridSections {
  private final GridAnswer answer;
  private final Wording wording;
  private final GridCharts figures;

  GridSections(GridAnswer answer, Wording wording, GridCharts figures) {
    this.answer = answer;
    this.wording = wording;
    this.figures = figures;
  }

  List<Section> all() {
    List<Chart> goals = figures.goals();
    return List.of(
        new Section("answer", "The answer", true, this::writeAnswer),
        Section.of("best", "Which " + answer.called() + " is best where", figures.leads()),
        new Section(
            "responses",
            "How margin and throughput answer",
            !goals.isEmpty(),
            html -> writeResponses(html, goals)),
        Section.of("others", "Carry-over and the yard", figures.others()),
        Assumptions.section(
            answer.header(),
            wording,
            html -> html.table("what is varied", keys()),
            answer.assumptions(),
            "The table beside this page, grid.csv, has every measure in every cell, in metric units, a t"
                + " being 1000 kg, with all digits."),
        Cautions.section(answer, wording, answer.cautions()));
  }

  private void writeAnswer(Html html) {
    GridWords words = new GridWords(answer, wording);
    html.answer(new GridHeadline(answer, wording).sentences());
    html.wholeTable("the answer", GridTable.of(answer, wording));
    html.paragraph(
        words.legend()
            + (answer.header().replications() > 1
                ? " Values differ significantly by intervals of their differences on the same random draws, which hold for all pairs"
                    + " together."
                : ""));
    html.list(words.sentences());
    List<String> problems = problems();
    if (!problems.isEmpty()) {
      html.paragraph("Problems of the plants that are left out:").list(problems);
    }
  }

  private List<String> problems() {
    KeyWords keys = new KeyWords(answer, wording);
    List<String> lines = new ArrayList<>();
    for (int cell = 0; cell < answer.cells().size(); cell++) {
      for (GridCell.LeftOut out : answer.cells().get(cell).leftOut()) {
        lines.add(
            keys.cell(cell) + ", " + keys.plantTitle(out.plant()) + ": " + out.problem().text());
      }
    }
    return lines;
  }

  private void writeResponses(Html html, List<Chart> goals) {
    if (!answer.changes().isEmpty()) {
      html.paragraph(
          "Where the best "
              + answer.called()
              + " changes, a dashed line marks where the curves cross; the gray band ends where the"
              + " difference becomes significant.");
    }
    html.figures(goals);
  }

  private Chart.Grid keys() {
    KeyWords words = new KeyWords(answer, wording);
    return new GridColumns<Integer>(wording)
        .text("", words::read)
        .text("key", key -> "`" + answer.keys().get(key).path() + "`")
        .text("asked for", key -> "`" + answer.keys().get(key).said() + "`")
        .text("values", key -> String.join(", ", words.values(key)))
        .of(IntStream.range(0, answer.keys().size()).boxed().toList());
  }
}
