package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import java.util.Arrays;

/**
 * What each machine has done since the first day: mass taken in, running and crewed time. Stops,
 * packages and stays come due against these running totals, so that nothing drifts however often a
 * rate changes. A total moves on only when its own machine's inflow changes, not at every event.
 */
final class Counters {
  private final int machines;
  private final double[] workedKg; // at the instant since which the inflow has held
  private final double[] runningS;
  private final double[] inflowKgPerS;
  private final double[] sinceS;

  /** Machines in the hours of a head or line that uses them. */
  final OpenHours duty;

  /** [machine] the line that uses it now, or did last. */
  final int[] line;

  Counters(CompiledLines layout) {
    machines = layout.machines;
    workedKg = new double[machines];
    runningS = new double[machines];
    inflowKgPerS = new double[machines];
    sinceS = new double[machines];
    duty = new OpenHours(machines);
    line = new int[machines];
  }

  void reset(CompiledLines layout) {
    Arrays.fill(workedKg, 0);
    Arrays.fill(runningS, 0);
    Arrays.fill(inflowKgPerS, 0);
    Arrays.fill(sinceS, 0);
    duty.reset();
    for (int m = 0; m < machines; m++) {
      int[] heads = layout.headsOf[m];
      int[] beside = layout.linesAlongside[m];
      line[m] = heads.length > 0 ? layout.headLine[heads[0]] : beside.length > 0 ? beside[0] : 0;
    }
  }

  /** A machine takes in at this rate from now on. */
  void flows(int m, double kgPerS, double nowS) {
    if (inflowKgPerS[m] != kgPerS) {
      workedKg[m] = workedKg(m, nowS);
      runningS[m] = runningS(m, nowS);
      inflowKgPerS[m] = kgPerS;
      sinceS[m] = nowS;
    }
  }

  double workedKg(int m, double nowS) {
    return workedKg[m] + inflowKgPerS[m] * (nowS - sinceS[m]);
  }

  double runningS(int m, double nowS) {
    return inflowKgPerS[m] > 0 ? runningS[m] + (nowS - sinceS[m]) : runningS[m];
  }
}
