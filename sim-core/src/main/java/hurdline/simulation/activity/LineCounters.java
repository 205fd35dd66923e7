package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.StopNumbers;
import hurdline.flow.Network;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What the lines to which a stop belongs have done with its machine since the first day, where it
 * does not belong to all: the totals of {@link Counters}, of these lines alone. Such stops come due
 * against these totals, which stand still while other lines have the machine.
 */
final class LineCounters {
  /** Whether a line has a machine now, off shift too. */
  interface Holders {
    boolean has(int line, int machine);
  }

  private final ReplicationState present;
  private final CompiledLines layout;
  private final StopNumbers stops;
  private final int[] partial; // stops that belong to some lines
  private final boolean[] isPartial;
  private final double[] workedKg; // by stop, at the instant since which the inflow has held
  private final double[] runningS;
  private final double[] inflowKgPerS;
  private final double[] sinceS;
  private final OpenHours crewed; // by stop, the hours of its lines
  private final OpenHours held; // by stop, while one of its lines has the machine
  private final int[] holder; // by stop, the line of its own that has the machine, or had it last

  LineCounters(ReplicationState present) {
    this.present = present;
    layout = present.layout;
    stops = layout.stops;
    int n = stops.count();
    partial = IntStream.range(0, n).filter(k -> !stops.stop(k).count().isOfAll()).toArray();
    isPartial = new boolean[n];
    for (int k : partial) {
      isPartial[k] = true;
    }
    workedKg = new double[n];
    runningS = new double[n];
    inflowKgPerS = new double[n];
    sinceS = new double[n];
    crewed = new OpenHours(n);
    held = new OpenHours(n);
    holder = new int[n];
  }

  void reset() {
    Arrays.fill(workedKg, 0);
    Arrays.fill(runningS, 0);
    Arrays.fill(inflowKgPerS, 0);
    Arrays.fill(sinceS, 0);
    crewed.reset();
    held.reset();
    for (int k : partial) {
      holder[k] =
          IntStream.range(0, layout.lines).filter(l -> stops.lines(k)[l]).findFirst().orElse(0);
    }
  }

  boolean counts(int stop) {
    return isPartial[stop];
  }

  /** Hours of lines have begun or ended, or lines have taken machines or given them up. */
  void linesChanged(Holders holders) {
    for (int k : partial) {
      crewed.set(k, isCrewed(k), present.nowS);
      held.set(k, isHeld(k, holders), present.nowS);
    }
  }

  private boolean isCrewed(int k) {
    int m = stops.machine(k);
    for (int h : layout.headsOf[m]) {
      if (stops.lines(k)[layout.headLine[h]] && present.network.asked.on[h]) {
        return true;
      }
    }
    for (int l : layout.linesAlongside[m]) {
      if (stops.lines(k)[l] && present.lineHours.is(l)) {
        return true;
      }
    }
    return false;
  }

  private boolean isHeld(int k, Holders holders) {
    for (int l = 0; l < layout.lines; l++) {
      if (stops.lines(k)[l] && holders.has(l, stops.machine(k))) {
        holder[k] = l;
        return true;
      }
    }
    return false;
  }

  /** Rates at a stop's machine may have changed: what its lines bring in holds from now on. */
  void flows(int k) {
    double kgPerS = inflowKgPerS(k);
    if (kgPerS != inflowKgPerS[k]) {
      workedKg[k] = workedKg(k);
      runningS[k] = runningS(k);
      inflowKgPerS[k] = kgPerS;
      sinceS[k] = present.nowS;
    }
  }

  private double inflowKgPerS(int k) {
    int m = stops.machine(k);
    Network network = present.network;
    double sum = 0;
    for (int h : layout.headsOf[m]) {
      double rate = network.rateKgPerS(h);
      if (rate > 0 && stops.lines(k)[layout.headLine[h]]) {
        sum += rate * network.load(h, layout.nodeOf[h][m]);
      }
    }
    return sum;
  }

  private double workedKg(int k) {
    return workedKg[k] + inflowKgPerS[k] * (present.nowS - sinceS[k]);
  }

  private double runningS(int k) {
    return inflowKgPerS[k] > 0 ? runningS[k] + (present.nowS - sinceS[k]) : runningS[k];
  }

  /** What has been counted up to now: kg where mass is counted, else seconds. */
  double total(int k) {
    return switch (stops.stop(k).counted()) {
      case CALENDAR -> held.seconds(k, present.nowS);
      case CREWED -> crewed.seconds(k, present.nowS);
      case RUNNING -> runningS(k);
      case MASS -> workedKg(k);
    };
  }

  /** What is counted in a second at the present rates. */
  double pace(int k) {
    return switch (stops.stop(k).counted()) {
      case CALENDAR -> held.is(k) ? 1 : 0;
      case CREWED -> crewed.is(k) ? 1 : 0;
      case RUNNING -> inflowKgPerS[k] > 0 ? 1 : 0;
      case MASS -> inflowKgPerS[k];
    };
  }

  /** The line that brings a stop about: the one at work if it is one of its own. */
  int line(int k) {
    int atWork = present.counters.line[stops.machine(k)];
    return stops.lines(k)[atWork] ? atWork : holder[k];
  }
}
