package hurdline.capacity;

import hurdline.compiled.ScreenPlan;

/** How often a mill with shares of several screens changes its screen, by the rule of its plan. */
final class ScreenTurns {
  private static final int STAYS = 2_000;

  private ScreenTurns() {}

  /**
   * Changes of screen per kilogram milled, from stay to stay of a mill that never waits.
   *
   * @param kgPerS by screen, infinite where nothing limits it
   */
  static double perKg(ScreenPlan plan, double[] kgPerS) {
    double[] milledKg = new double[kgPerS.length];
    int screen = plan.furthestBehind(milledKg);
    int changes = 0;
    double allKg = 0;
    for (int stay = 0; stay < STAYS; stay++) {
      double kg = kgPerS[screen] * plan.stayS();
      if (!(kg < Double.POSITIVE_INFINITY)) {
        return 0;
      }
      milledKg[screen] += kg;
      allKg += kg;
      int next = plan.furthestBehind(milledKg);
      changes += next == screen ? 0 : 1;
      screen = next;
    }
    return allKg > 0 ? changes / allKg : 0;
  }
}
