package hurdline.page;

import hurdline.answer.Day;
import hurdline.answer.Trace;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.measure.State;
import hurdline.text.Wording;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** One replication seen close: the picture of the span, the hours in it, and its stops. */
final class DaySection {
  private static final int STOPS_SHOWN = 200;

  private final Trace trace;
  private final Day day;
  private final Wording wording;

  DaySection(Trace trace, Wording wording) {
    this.trace = trace;
    this.day = trace.day();
    this.wording = wording;
  }

  void write(Html html, List<Chart> figures) {
    html.paragraph(
        "One replication of many, number "
            + trace.replication()
            + ": what happened in it, not what is to be expected. Every event is in trace.csv.");
    if (figures.isEmpty()) {
      html.paragraph("The span is too long for a picture; two weeks at most can be read.");
    }
    html.figures(figures);
    html.table("hours in the span by state", hours());
    List<Day.Bar> stops = stops();
    if (stops.isEmpty()) {
      html.paragraph("No machine was in a stop.");
    } else {
      html.table("stops in the span", grid(stops));
    }
  }

  private Chart.Grid hours() {
    List<State> seen = new ArrayList<>();
    for (State state : State.values()) {
      if (day.bars().stream().anyMatch(bar -> bar.state() == state)) {
        seen.add(state);
      }
    }
    GridColumns<String> columns =
        new GridColumns<String>(wording).text("machine", wording.titles()::machine);
    for (State state : seen) {
      columns.number(state.word().replace('_', ' '), 2, "h", machine -> day.hours(machine, state));
    }
    return columns.of(day.machines());
  }

  /**
   * In order of time; one that began before the span or outlasts it counts as far as it lies in it.
   */
  private List<Day.Bar> stops() {
    return day.bars().stream()
        .filter(bar -> !bar.stop().isEmpty())
        .sorted((one, other) -> Double.compare(one.fromH(), other.fromH()))
        .limit(STOPS_SHOWN)
        .toList();
  }

  private Chart.Grid grid(List<Day.Bar> stops) {
    return new GridColumns<Day.Bar>(wording)
        .text("from", bar -> clock(bar.fromH()))
        .text("machine", bar -> wording.titles().machine(bar.machine()))
        .text("stop", bar -> wording.titles().stops(bar.machine(), bar.stop()))
        .number("", 1, "min", bar -> 60 * bar.lastsH())
        .of(stops);
  }

  private String clock(double hour) {
    LocalDateTime at = day.from().plusSeconds(Math.round(3600 * hour));
    return wording.date(at.toLocalDate()) + " " + at.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
  }
}
