package hurdline.page;

import hurdline.answer.PaperAnswer;
import hurdline.chart.Figure;
import hurdline.words.Wording;
import java.util.ArrayList;
import java.util.List;

/** The parts of the page about capacity on paper. */
final class PaperSections {
  private final PaperAnswer answer;
  private final Wording wording;

  PaperSections(PaperAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  List<Section> all() {
    return List.of(
        new Section("capacity", "Capacity on paper", true, this::writeLines),
        new Section(
            "warnings",
            "Warnings",
            !answer.warnings().isEmpty(),
            html -> html.list(answer.warnings())),
        Cautions.section(List.of(), List.of()));
  }

  private void writeLines(Html html) {
    html.paragraph(
        "Each crop at its mean, no stop, no wait and no weather: what a line can do at best. A run"
            + " says what it will do.");
    for (PaperAnswer.Line line : answer.lines()) {
      html.paragraph(
          line.line()
              + " on "
              + line.crop()
              + " is held by "
              + line.holder()
              + " at "
              + wording.amount(line.capacityTPerH(), "t/h")
              + " fed, "
              + wording.amount(line.capacityT(), "t")
              + " in "
              + wording.amount(line.scheduledHours(), "h")
              + " scheduled.");
      html.table(line.line(), grid(line));
    }
  }

  private Figure.Grid grid(PaperAnswer.Line line) {
    String rate = " " + wording.unit("t/h");
    List<List<String>> rows = new ArrayList<>();
    for (PaperAnswer.Machine machine : line.machines()) {
      rows.add(
          List.of(
              machine.machine(),
              machine.kind(),
              wording.fixed(machine.loadTPerT(), 3, ""),
              orNone(machine.limitTPerH(), 2, "t/h"),
              orNone(machine.fedTPerH(), 2, "t/h"),
              orNone(machine.headroom(), 0, "share")));
    }
    return new Figure.Grid(
        List.of(
            "machine", "kind", "load per fed", "limit" + rate, "full at fed" + rate, "headroom %"),
        rows);
  }

  private String orNone(double value, int decimals, String unit) {
    return Double.isNaN(value) ? "none" : wording.fixed(value, decimals, unit);
  }
}
