package hurdline.page;

import hurdline.answer.Capacity;
import hurdline.answer.CheckAnswer;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.run.CheckCharts;
import hurdline.problem.LocatedProblem;
import hurdline.text.CapacityWords;
import hurdline.text.CheckHeadline;
import hurdline.text.CheckWords;
import hurdline.text.OrderWords;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The parts of the page about rated and expected capacity. */
final class CheckSections {
  private final CheckAnswer answer;
  private final Wording wording;

  CheckSections(CheckAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  List<Section> all() {
    List<String> warnings =
        Stream.concat(
                answer.warnings().stream().map(LocatedProblem::text),
                new OrderWords(answer.capacity(), wording).warnings().stream())
            .toList();
    return List.of(
        new Section("capacity", "Rated and expected capacity", true, this::writeLines),
        new Section("flows", "Flows at expected capacity", !flows().isEmpty(), this::writeFlows),
        new Section("warnings", "Warnings", !warnings.isEmpty(), html -> html.list(warnings)),
        Cautions.section(answer, wording, List.of(), List.of()));
  }

  private void writeLines(Html html) {
    html.answer(new CheckHeadline(answer, wording).sentences());
    html.paragraph("Each crop at its mean. " + String.join(" ", CheckWords.legend()));
    for (Capacity.Line line : answer.capacity().lines()) {
      CapacityWords words = new CapacityWords(line, wording);
      List<String> said =
          new ArrayList<>(List.of("rated " + words.rated(), "expected " + words.expected()));
      words.next().ifPresent(said::add);
      html.paragraph(
          wording.titles().line(line.line())
              + " on "
              + Titles.inText(wording.titles().crop(line.crop()))
              + ":");
      html.list(said);
      html.table(wording.titles().line(line.line()), grid(line));
    }
    if (!answer.capacity().orders().isEmpty()) {
      html.paragraph("Orders:");
      html.list(new OrderWords(answer.capacity(), wording).all());
    }
  }

  private void writeFlows(Html html) {
    html.figures(flows());
  }

  private List<Chart> flows() {
    return CheckCharts.flows(answer, wording);
  }

  private Chart.Grid grid(Capacity.Line line) {
    String rate = " " + wording.unit("t/h");
    List<List<String>> rows = new ArrayList<>();
    for (Capacity.Machine machine : line.machines()) {
      rows.add(
          List.of(
              wording.titles().machine(machine.machine()),
              machine.kind(),
              wording.fixed(machine.loadTPerT(), 3, ""),
              orNone(machine.limitTPerH(), 2, "t/h"),
              orNone(machine.ratedTPerH(), 2, "t/h"),
              orNone(machine.expectedTPerH(), 2, "t/h"),
              orNone(machine.headroom(), 0, "share")));
    }
    for (Capacity.Resource resource : line.resources()) {
      rows.add(
          List.of(
              wording.titles().resource(resource.resource()),
              "resource",
              "",
              "",
              "",
              orNone(resource.expectedTPerH(), 2, "t/h"),
              orNone(resource.headroom(), 0, "share")));
    }
    return new Chart.Grid(
        List.of(
            "machine",
            "kind",
            "load per fed",
            "limit" + rate,
            "rated" + rate,
            "expected" + rate,
            "headroom %"),
        rows);
  }

  private String orNone(double value, int decimals, String unit) {
    return Double.isNaN(value) ? "none" : wording.fixed(value, decimals, unit);
  }
}
