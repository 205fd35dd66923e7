package hurdline.simulation;

/**
 * {@link OneLine} in steps of one second: what a programmer may write first, kept as plain as it
 * would be.
 */
final class SecondSteps {
  private static final double KG_PER_T = 1000;
  private static final double S_PER_H = 3600;

  private SecondSteps() {}

  /** What the opener has worked by the end of the year, t. */
  static double simulatedT() {
    double feedsKg = OneLine.FEEDER_T_PER_H * KG_PER_T / S_PER_H;
    double opensKg = OneLine.OPENER_T_PER_H * KG_PER_T / S_PER_H;
    double holdsKg = OneLine.HOLDS_T * KG_PER_T;
    double everyKg = OneLine.WORKED_T * KG_PER_T;
    double binKg = 0;
    double sinceStopKg = 0;
    double stopLeftS = 0;
    double madeKg = 0;
    for (int second = 0; second < OneLine.HOURS * S_PER_H; second++) {
      if (stopLeftS > 0) {
        stopLeftS -= 1;
      } else {
        double fedKg = Math.min(feedsKg, holdsKg - binKg + opensKg);
        binKg += fedKg;
        sinceStopKg += fedKg;
        if (sinceStopKg >= everyKg) {
          sinceStopKg -= everyKg;
          stopLeftS = OneLine.STOP_S;
        }
      }
      double openedKg = Math.min(opensKg, binKg);
      binKg -= openedKg;
      madeKg += openedKg;
    }
    return madeKg / KG_PER_T;
  }
}
