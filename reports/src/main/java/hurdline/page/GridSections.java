package hurdline.page;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridCell;
import hurdline.answer.GridKey;
import hurdline.chart.Figure;
import hurdline.chart.GridFigures;
import hurdline.words.GridWords;
import hurdline.words.KeyWords;
import hurdline.words.Wording;
import java.util.ArrayList;
import java.util.List;

/** The parts of a grid's report: where the best lies, and how each measure answers. */
final class GridSections {
  private final GridAnswer answer;
  private final Wording wording;
  private final GridFigures figures;

  GridSections(GridAnswer answer, Wording wording, GridFigures figures) {
    this.answer = answer;
    this.wording = wording;
    this.figures = figures;
  }

  List<Section> all() {
    List<Figure> leads = figures.leads();
    List<Figure> goals = figures.goals();
    List<Figure> others = figures.others();
    return List.of(
        new Section("answer", "The answer", true, this::writeAnswer),
        new Section(
            "best",
            "Which " + answer.called() + " is best where",
            !leads.isEmpty(),
            html -> leads.forEach(html::figure)),
        new Section(
            "responses",
            "How margin and throughput answer",
            !goals.isEmpty(),
            html -> writeResponses(html, goals)),
        new Section(
            "besides",
            "What is left over, and the yard",
            !others.isEmpty(),
            html -> others.forEach(html::figure)),
        new Section("assumes", "What these figures assume", true, this::writeAssumptions),
        new Section("cautions", "Cautions", true, this::writeCautions));
  }

  private void writeAnswer(Html html) {
    html.raw("<div class=\"answer\">\n");
    new GridWords(answer, wording).sentences().forEach(html::paragraph);
    html.raw("</div>\n");
    html.paragraph(
        answer.header().replications() > 1
            ? "In brackets stand 95 % intervals of means. Values are called told apart by intervals of"
                + " their differences on the same chance, which hold for all pairs together."
            : "One replication only: no interval can be given.");
    List<String> problems = problems();
    if (!problems.isEmpty()) {
      html.paragraph("Problems of the plants that are left out:").list(problems);
    }
  }

  private List<String> problems() {
    KeyWords keys = new KeyWords(answer);
    List<String> lines = new ArrayList<>();
    for (int cell = 0; cell < answer.cells().size(); cell++) {
      for (GridCell.LeftOut out : answer.cells().get(cell).leftOut()) {
        lines.add(keys.cell(cell) + ", " + out.plant() + ": " + out.problem());
      }
    }
    return lines;
  }

  private void writeResponses(Html html, List<Figure> goals) {
    if (!answer.changes().isEmpty()) {
      html.paragraph(
          "Where the best "
              + answer.called()
              + " changes, a dashed line marks where the curves cross; the grey band ends where the"
              + " two are told apart.");
    }
    goals.forEach(html::figure);
  }

  private void writeAssumptions(Html html) {
    html.table("settings", Settings.grid(answer.header(), wording));
    html.table("what is varied", keys());
    RunSections.writeNotes(html, answer.assumptions());
    html.paragraph(
        "The table beside this page, grid.csv, has every measure in every cell, in metric units, a t"
            + " being 1000 kg, with all digits.");
  }

  private Figure.Grid keys() {
    List<List<String>> rows = new ArrayList<>();
    for (GridKey key : answer.keys()) {
      rows.add(
          List.of(key.path(), key.said(), String.join(", ", key.values().stream().map(GridKey.Value::text).toList())));
    }
    return new Figure.Grid(List.of("key", "asked for", "values"), rows);
  }

  private void writeCautions(Html html) {
    RunSections.writeNotes(html, answer.cautions());
    if (!answer.warnings().isEmpty()) {
      html.paragraph("The plant file gives warnings:").list(answer.warnings());
    }
    RunSections.writeNotes(html, Cautions.standing());
  }
}
