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

  /** Machines in the hours of a head or line that uses them. */
  final Duty duty;

  /** [machine] the line that uses it now, or did last. */
  final int[] line;

  Counters(Layout layout) {
    machines = layout.machines;
    workedKg = new double[machines];
    runningS = new double[machines];
    duty = new Duty(machines);
    line = new int[machines];
  }

  void reset(Layout layout) {
    Arrays.fill(workedKg, 0);
    Arrays.fill(runningS, 0);
    duty.reset();
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
}
