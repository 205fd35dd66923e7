package hurdline.study.run;

import hurdline.answer.Day;
import hurdline.answer.Outline;
import hurdline.compiled.CompiledLines;
import hurdline.measure.EventKind;
import hurdline.measure.State;
import hurdline.study.replicate.TraceWindow;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Keeps what a picture of a span needs, from before the span on, since that is where it begins. */
final class DayRecorder {
  private static final double HOUR_S = 3600;
  private static final double T_PER_H = 3.6;
  private static final double TONNE_KG = 1000;

  private final CompiledLines layout;
  private final Outline outline;
  private final LocalDateTime from;
  private final LocalDateTime to;
  private final double fromS;
  private final double lengthH;
  private final List<String> heads;
  private final List<Outline.Crop> crops;
  private final SampledCurve[] rates;
  private final SampledCurve[] bins;
  private final SampledCurve[] gate;
  private final SampledCurve[] yard;
  private final double[] waiting;
  private final List<List<Day.Bar>> bars = new ArrayList<>();
  private final int[] state;
  private final double[] sinceH;
  private final Map<String, Integer> stopNumber = new HashMap<>(); // by the word of its cause
  private final boolean[] stopped; // [stop]
  private final String[] stopThen;

  /**
   * @param crops in the order in which the yard numbers them
   * @param start of the horizon
   * @param span no part of it outside of the horizon
   */
  DayRecorder(
      CompiledLines layout,
      Outline outline,
      List<String> heads,
      List<Outline.Crop> crops,
      LocalDateTime start,
      TraceWindow span) {
    this.layout = layout;
    this.outline = outline;
    this.heads = heads;
    this.crops = crops;
    from = span.from();
    to = span.to();
    fromS = java.time.Duration.between(start, from).toMillis() / 1000.0;
    lengthH = java.time.Duration.between(from, to).toMillis() / 1000.0 / HOUR_S;
    rates = curves(heads.size(), false);
    bins = curves(layout.bins, true);
    gate = curves(crops.size(), false);
    yard = curves(crops.size(), false);
    waiting = new double[crops.size()];
    state = new int[layout.machines];
    sinceH = new double[layout.machines];
    stopThen = new String[layout.machines];
    stopped = new boolean[layout.stops.count()];
    for (int k = 0; k < stopped.length; k++) {
      stopNumber.put(layout.causes.name(layout.causes.stop[k]), k);
    }
    Arrays.fill(state, -1);
    for (int m = 0; m < layout.machines; m++) {
      bars.add(new ArrayList<>());
    }
  }

  private SampledCurve[] curves(int count, boolean slopes) {
    SampledCurve[] all = new SampledCurve[count];
    Arrays.setAll(all, at -> new SampledCurve(lengthH, slopes));
    return all;
  }

  private double hour(double clockS) {
    return (clockS - fromS) / HOUR_S;
  }

  void note(String where, EventKind what) {
    switch (what) {
      case STOPS -> stopped[stopNumber.get(where)] = true;
      case IS_UP_AGAIN -> stopped[stopNumber.get(where)] = false;
      case AT_THE_GATE -> waits(where, 1);
      case UNLOADED, TURNED_AWAY, REJECTED -> waits(where, -1);
      default -> {
        // Whatever else happens shows in rates, levels and states.
      }
    }
  }

  /** Names of the stops that a machine is in. */
  private String stopsOf(int m) {
    return Arrays.stream(layout.stops.of(m))
        .filter(k -> stopped[k])
        .mapToObj(k -> layout.stops.stop(k).name())
        .collect(Collectors.joining("+"));
  }

  private void waits(String crop, int more) {
    for (int c = 0; c < crops.size(); c++) {
      if (crops.get(c).name().equals(crop)) {
        waiting[c] += more;
      }
    }
  }

  void flows(double clockS, double[] rateKgPerS, double[] levelKg) {
    double hour = hour(clockS);
    for (int h = 0; h < rates.length; h++) {
      rates[h].is(hour, rateKgPerS[h] * T_PER_H);
    }
    for (int b = 0; b < bins.length; b++) {
      bins[b].is(hour, levelKg[b] / TONNE_KG);
    }
  }

  void standing(double clockS, int[] now, int[] inYard) {
    double hour = hour(clockS);
    for (int c = 0; c < yard.length; c++) {
      yard[c].is(hour, inYard[c]);
      gate[c].is(hour, waiting[c]);
    }
    for (int m = 0; m < state.length; m++) {
      String stop = isStopped(now[m]) ? stopsOf(m) : "";
      if (now[m] != state[m] || !stop.equals(stopThen[m])) {
        endBar(m, hour);
        state[m] = now[m];
        stopThen[m] = stop;
        sinceH[m] = hour;
      }
    }
  }

  private static boolean isStopped(int state) {
    return state == State.DOWN.ordinal() || state == State.PLANNED.ordinal();
  }

  private void endBar(int m, double hour) {
    double begins = Math.max(0, sinceH[m]);
    double ends = Math.min(lengthH, hour);
    if (state[m] >= 0 && ends > begins) {
      bars.get(m)
          .add(
              new Day.Bar(
                  layout.machine[m].name(), State.values()[state[m]], stopThen[m], begins, ends));
    }
  }

  /** Machines in the order of the lines that they stand in. */
  private List<Day.Bar> inOrder() {
    List<Day.Bar> all = new ArrayList<>();
    Set<String> done = new TreeSet<>();
    for (Outline.Line line : outline.lines()) {
      for (String machine : line.machines()) {
        if (done.add(machine)) {
          all.addAll(bars.get(layout.naming.machines.index(machine)));
        }
      }
    }
    return all;
  }

  /** What the span came to; nothing may be told after that. */
  Day day() {
    for (int m = 0; m < state.length; m++) {
      endBar(m, lengthH);
      state[m] = -1;
    }
    List<Day.Curve> curves = new ArrayList<>();
    for (int h = 0; h < rates.length; h++) {
      curves.add(rates[h].curve(Day.Of.RATE, heads.get(h), "t/h"));
    }
    for (int b = 0; b < bins.length; b++) {
      curves.add(bins[b].curve(Day.Of.BIN, layout.naming.bins.name(b), "t"));
    }
    for (int c = 0; c < crops.size(); c++) {
      curves.add(gate[c].curve(Day.Of.GATE, crops.get(c).name(), "count"));
      curves.add(yard[c].curve(Day.Of.YARD, crops.get(c).name(), crops.get(c).unit()));
    }
    return new Day(from, to, inOrder(), curves);
  }
}
