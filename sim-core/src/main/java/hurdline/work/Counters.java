package hurdline.work;

import hurdline.flow.Network;
import hurdline.line.Layout;
import java.util.Arrays;

/**
 * What each machine has done since the first day: mass taken in, running and crewed time. Stops,
 * packages and stays come due against these running totals, so that nothing drifts however often a
 * rate changes.
 */
final class Counters {
  private final int machines;
  final double[] workedKg;
  final double[] runningS;
  private final double[] crewedS;
  private final double[] onDutySinceS;

  /** [machine] whether a head or line that uses it is in its hours. */
  final boolean[] onDuty;

  /** [machine] the line that uses it now, or did last. */
  final int[] line;

  Counters(Layout layout) {
    machines = layout.machines;
    workedKg = new double[machines];
    runningS = new double[machines];
    crewedS = new double[machines];
    onDutySinceS = new double[machines];
    onDuty = new boolean[machines];
    line = new int[machines];
  }

  void reset(Layout layout) {
    Arrays.fill(workedKg, 0);
    Arrays.fill(runningS, 0);
    Arrays.fill(crewedS, 0);
    Arrays.fill(onDuty, false);
    for (int m = 0; m < machines; m++) {
      int[] heads = layout.headsOf[m];
      int[] beside = layout.linesAlongside[m];
      line[m] = heads.length > 0 ? layout.headLine[heads[0]] : beside.length > 0 ? beside[0] : 0;
    }
  }

  void advance(double dtS, Network network) {
    double[] inflow = network.inflowKgPerS;
    for (int m = 0; m < machines; m++) {
      if (inflow[m] > 0) {
        workedKg[m] += inflow[m] * dtS;
        runningS[m] += dtS;
      }
    }
  }

  /** A machine's hours begin or end. */
  void duty(int machine, boolean on, double nowS) {
    if (onDuty[machine]) {
      crewedS[machine] += nowS - onDutySinceS[machine];
    }
    onDuty[machine] = on;
    onDutySinceS[machine] = nowS;
  }

  /** Crewed time of a machine up to now. */
  double crewedS(int machine, double nowS) {
    return crewedS[machine] + (onDuty[machine] ? nowS - onDutySinceS[machine] : 0);
  }
}
