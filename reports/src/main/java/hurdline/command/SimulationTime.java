package hurdline.command;

import java.util.Locale;

/** How long simulating a calendar takes, by the first few. */
final class SimulationTime {
  private static final int LEAST_TRIALS = 2;
  private static final double MOST_TRIALS_S = 10;

  /** Share of the time told that may be spent on telling it. */
  private static final double SPENT = 0.02;

  private static final double NANO = 1e-9;

  /**
   * What a call takes besides calendars on a warm program: to start, to warm up and to draw its
   * page. Of a comparison of 1,020 calendars of 9 ms, two at a time, that was half of 8 s.
   */
  private static final double BESIDES_S = 3;

  private SimulationTime() {}

  /** How long a call takes of which this is the time for its calendars; in words. */
  static String ofCall(double calendarsS) {
    return inWords(BESIDES_S + calendarsS);
  }

  /**
   * The fastest trial counts, for the first ones wait for the program to warm up: an example's year
   * is three times as fast after 5 seconds as after one. So the longer the work, the longer it is
   * tried.
   *
   * @param count trials that the work is worth, one after another
   */
  static double secondsEach(Runnable trialRun, double count) {
    double fastest = Double.POSITIVE_INFINITY;
    double all = 0;
    for (int trial = 0;
        trial < LEAST_TRIALS || all < Math.min(MOST_TRIALS_S, SPENT * count * fastest);
        trial++) {
      long before = System.nanoTime();
      trialRun.run();
      double seconds = (System.nanoTime() - before) * NANO;
      fastest = Math.min(fastest, seconds);
      all += seconds;
    }
    return fastest;
  }

  /** {@code 40 s}, {@code 2 min 30 s}: time gone, so that lines half a minute apart differ. */
  static String gone(double seconds) {
    long all = Math.round(seconds);
    return all < 60 ? all + " s" : all / 60 + " min" + (all % 60 == 0 ? "" : " " + all % 60 + " s");
  }

  /** {@code 40 s}, {@code 3 min}, {@code 2.5 h}. */
  static String inWords(double seconds) {
    if (seconds < 90) {
      return Math.max(1, Math.round(seconds)) + " s";
    }
    if (seconds < 90 * 60) {
      return Math.round(seconds / 60) + " min";
    }
    return String.format(Locale.ROOT, "%.1f h", seconds / 3600);
  }
}
