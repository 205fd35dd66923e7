package hurdline.page;

import hurdline.answer.Day;
import hurdline.answer.Trace;
import hurdline.chart.kit.Chart;
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
    List<List<String>> stops = stops();
    if (stops.isEmpty()) {
      html.paragraph("No machine was in a stop.");
    } else {
      html.table(
          "stops in the span", new Chart.Grid(List.of("from", "machine", "stop", "min"), stops));
    }
  }

  private Chart.Grid hours() {
    List<State> seen = new ArrayList<>();
    for (State state : State.values()) {
      if (day.bars().stream().anyMatch(bar -> bar.state() == state)) {
        seen.add(state);
      }
    }
    List<String> head = new ArrayList<>(List.of("machine"));
    seen.forEach(state -> head.add(state.word().replace('_', ' ') + " h"));
    List<List<String>> rows = new ArrayList<>();
    for (String machine : day.machines()) {
      List<String> row = new ArrayList<>(List.of(wording.titles().machine(machine)));
      seen.forEach(state -> row.add(wording.fixed(day.hours(machine, state), 2, "h")));
      rows.add(row);
    }
    return new Chart.Grid(head, rows);
  }

  /**
   * In order of time; one that began before the span or outlasts it counts as far as it lies in it.
   */
  private List<List<String>> stops() {
    return day.bars().stream()
        .filter(bar -> bar.state() == State.DOWN)
        .sorted((one, other) -> Double.compare(one.fromH(), other.fromH()))
        .limit(STOPS_SHOWN)
        .map(
            bar ->
                List.of(
                    clock(bar.fromH()),
                    wording.titles().machine(bar.machine()),
                    wording.titles().stops(bar.machine(), bar.stop()),
                    wording.fixed(60 * bar.lastsH(), 1, "min")))
        .toList();
  }

  private String clock(double hour) {
    LocalDateTime at = day.from().plusSeconds(Math.round(3600 * hour));
    return wording.date(at.toLocalDate()) + " " + at.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
  }
}
