package hurdline.account;

import hurdline.compiled.YardPlan;
import java.util.Arrays;

/**
 * What lies in places against the mass and the value that they may hold. A bale counts with the
 * mass that was last known, from when it comes to lie there until it leaves.
 */
public final class PlaceLimits {
  private static final double ROUNDING = 1e-9;

  private final YardPlan plan;
  private final double[] limit; // [2 * place], mass; the one after it, money
  private final double[] level;
  private final double[] peak;
  private final double[] overS;
  private final double[] sinceS; // as long as it has been as it is now
  private final double[] overBeforeS; // when it was last above its limit
  private final int[] times;

  PlaceLimits(YardPlan plan) {
    this.plan = plan;
    limit = new double[2 * plan.places()];
    for (int place = 0; place < plan.places(); place++) {
      limit[2 * place] = plan.limitKg(place) * (1 + ROUNDING);
      limit[2 * place + 1] = plan.limitValue(place) * (1 + ROUNDING);
    }
    level = new double[limit.length];
    peak = new double[limit.length];
    overS = new double[limit.length];
    sinceS = new double[limit.length];
    overBeforeS = new double[limit.length];
    times = new int[limit.length];
  }

  void reset() {
    Arrays.fill(level, 0);
    Arrays.fill(peak, 0);
    Arrays.fill(overS, 0);
    Arrays.fill(sinceS, 0);
    Arrays.fill(overBeforeS, Double.NEGATIVE_INFINITY);
    Arrays.fill(times, 0);
  }

  /**
   * @param kg more of the crop; below 0 for less
   */
  public void changes(int place, int crop, double kg, double nowS) {
    change(2 * place, kg, nowS);
    change(2 * place + 1, kg * plan.limitPricePerKg(crop), nowS);
  }

  /** What goes below its limit and above it again at one instant has not been below. */
  private void change(int at, double more, double nowS) {
    boolean wasOver = level[at] > limit[at];
    book(at, nowS);
    level[at] += more;
    peak[at] = Math.max(peak[at], level[at]);
    boolean isOver = level[at] > limit[at];
    if (isOver && !wasOver && overBeforeS[at] < nowS) {
      times[at]++;
    }
    if (wasOver) {
      overBeforeS[at] = nowS;
    }
  }

  private void book(int at, double nowS) {
    overS[at] += level[at] > limit[at] ? nowS - sinceS[at] : 0;
    sinceS[at] = nowS;
  }

  void finish(double endS) {
    for (int at = 0; at < level.length; at++) {
      book(at, endS);
    }
  }

  /** The most that lay there, kg. */
  public double peakKg(int place) {
    return peak[2 * place];
  }

  /** The most that it was worth. */
  public double peakValue(int place) {
    return peak[2 * place + 1];
  }

  public double overMassS(int place) {
    return overS[2 * place];
  }

  public double overValueS(int place) {
    return overS[2 * place + 1];
  }

  public int timesOverMass(int place) {
    return times[2 * place];
  }

  public int timesOverValue(int place) {
    return times[2 * place + 1];
  }
}
