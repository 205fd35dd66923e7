package hurdline.simulation.activity;

import java.util.Arrays;

/** Which of several things are in their hours, and for how long each has been, in all. */
final class OpenHours {
  private final boolean[] on;
  private final double[] endedS;
  private final double[] sinceS;

  OpenHours(int things) {
    on = new boolean[things];
    endedS = new double[things];
    sinceS = new double[things];
  }

  void reset() {
    Arrays.fill(on, false);
    Arrays.fill(endedS, 0);
  }

  boolean is(int thing) {
    return on[thing];
  }

  /**
   * @return whether that is news
   */
  boolean set(int thing, boolean now, double nowS) {
    if (on[thing] == now) {
      return false;
    }
    if (on[thing]) {
      endedS[thing] += nowS - sinceS[thing];
    }
    on[thing] = now;
    sinceS[thing] = nowS;
    return true;
  }

  /** Seconds of its hours up to now. */
  double seconds(int thing, double nowS) {
    return endedS[thing] + (on[thing] ? nowS - sinceS[thing] : 0);
  }
}
