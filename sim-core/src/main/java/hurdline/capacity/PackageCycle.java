package hurdline.capacity;

import hurdline.random.Distribution;
import java.util.function.DoubleUnaryOperator;

/**
 * Mean time from one full package to the next at a filler or press that is never starved: with the
 * time f to fill one, the change C of mean c, s spouts and h hands for them,
 *
 * <pre>
 *   s = 1         f + c                            filling and change follow each other
 *   s = 2, h = 1  E max(f, C)                      one fills while the other is changed
 *   else          max(f, c / min(h, s), (f + c)/s)
 * </pre>
 *
 * <p>The first two are exact; the last is exact where all changes last the same, and else a little
 * short, since changes that differ let spouts wait for one another.
 */
final class PackageCycle {
  private static final int SHARES = 1_000;

  private PackageCycle() {}

  /**
   * @param fillS at the rate at hand, 0 where nothing limits it
   * @param spouts at least 1
   * @param hands that may change packages here; infinite where the change needs nobody
   */
  static double meanS(double fillS, Distribution changeS, int spouts, double hands) {
    double most = Math.min(hands, spouts);
    if (!(most > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double meanChangeS = Means.of(changeS);
    if (spouts == 1) {
      return fillS + meanChangeS;
    }
    if (spouts == 2 && most == 1) {
      return meanChangeS + earlyS(fillS, changeS);
    }
    return Math.max(fillS, Math.max(meanChangeS / most, (fillS + meanChangeS) / spouts));
  }

  /** E max(0, f − C), which no long change makes inexact; E max(f, C) is c more. */
  private static double earlyS(double fillS, Distribution changeS) {
    DoubleUnaryOperator curve = changeS.curve();
    double sum = 0;
    for (int i = 0; i < SHARES; i++) {
      double lastsS = Math.max(0, curve.applyAsDouble((i + 0.5) / SHARES));
      sum += Math.max(0, fillS - lastsS);
    }
    return sum / SHARES;
  }
}
