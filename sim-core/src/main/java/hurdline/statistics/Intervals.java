package hurdline.statistics;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Intervals from independent values, one a replication. A level is the confidence of both limits
 * together, above 0 and below 1, shared evenly between the two sides.
 */
public final class Intervals {
  private static final double USUAL_LEVEL = 0.95;

  private Intervals() {}

  /** {@link #mean(double[], double)} at 95 %. */
  public static Interval mean95(double[] values) {
    return mean(values, USUAL_LEVEL);
  }

  /**
   * Interval for the mean: Student's, or Hall's where the values are skewed and enough; {@link
   * MeanInterval} says which. None for fewer than two.
   *
   * @param values read only
   */
  public static Interval mean(double[] values, double level) {
    checkLevel(level);
    if (values.length < 2) {
      return Interval.NONE;
    }
    Moments moments = Moments.of(values);
    return MeanInterval.of(moments, values.length) == MeanInterval.HALL
        ? hall(moments, values.length, level)
        : student(moments, values.length, level);
  }

  /**
   * Student's: m ± t·s/√n, t the quantile 1 − (1 − level)/2 of n − 1 degrees of freedom. Exact for
   * normal values, good for the mean of some ten or more of any usual kind.
   *
   * @see "Student, The probable error of a mean, Biometrika 6 (1908)"
   */
  static Interval student(Moments moments, int count, double level) {
    double error = moments.sd() / Math.sqrt(count);
    return Interval.around(moments.mean(), student(count - 1, level) * error);
  }

  /**
   * Hall's for the mean of skewed values, with Student's t in place of the normal quantile: with U
   * = (m − μ)/s and the skewness γ of the sample, g(U) = U + γ·U²/3 + γ²·U³/27 + γ/(6n) is free of
   * skewness to the order 1/n, and from −t/√n ≤ g(U) ≤ t/√n follows m − s·h(t/√n) ≤ μ ≤ m −
   * s·h(−t/√n), where h(y) = (3/γ)·(∛(1 + γ·(y − γ/(6n))) − 1) undoes g.
   *
   * <p>At 95 % it is at most some 2.5 times as wide as Student's.
   *
   * @param moments with a skewness that is not 0
   * @see "Hall, On the removal of skewness by transformation, J. R. Statist. Soc. B 54 (1992)
   *     221-228; from memory"
   */
  static Interval hall(Moments moments, int count, double level) {
    double reach = student(count - 1, level) / Math.sqrt(count);
    return new Interval(
        moments.mean() - moments.sd() * untransformed(reach, moments.skewness(), count),
        moments.mean() - moments.sd() * untransformed(-reach, moments.skewness(), count));
  }

  /** h(y) of Hall's transformation; see {@link #hall}. */
  static double untransformed(double y, double skewness, int count) {
    return 3 / skewness * (Math.cbrt(1 + skewness * (y - skewness / (6 * count))) - 1);
  }

  /** {@link #quantile(double[], double, double)} at 95 %. */
  public static Interval quantile95(double[] values, double share) {
    return quantile(values, share, USUAL_LEVEL);
  }

  /**
   * Interval for the quantile of a share, between two of the values themselves; it asks nothing of
   * how they are distributed.
   *
   * <p>With B binomial (n, share), the lower limit is the greatest value x₍ᵢ₎, in rising order, for
   * which P(B &lt; i) is at most (1 − level)/2, and the upper the least x₍ⱼ₎ for which P(B ≥ j) is.
   * Where there is no such value there is no limit: at 95 % the upper one for the quantile of 95 %
   * begins with 72 values, for there must be shareⁿ ≤ 0.025.
   *
   * @param values in any order, read only
   * @param share above 0 and below 1
   * @see "Conover, Practical Nonparametric Statistics, 3rd ed. (1999), section 3.2; from memory"
   */
  public static Interval quantile(double[] values, double share, double level) {
    checkLevel(level);
    checkShare(share);
    double[] rising = values.clone();
    Arrays.sort(rising);
    double tail = (1 - level) / 2;
    int low = greatestRank(rising.length, share, tail);
    int high = rising.length + 1 - greatestRank(rising.length, 1 - share, tail);
    return new Interval(
        low >= 1 ? rising[low - 1] : Double.NaN,
        high <= rising.length ? rising[high - 1] : Double.NaN);
  }

  /** The greatest i with P(B &lt; i) ≤ tail, B binomial (n, share); 0 if there is none above. */
  private static int greatestRank(int n, double share, double tail) {
    BinomialDistribution below = BinomialDistribution.of(n, share);
    int rank = 0;
    while (rank < n && below.cumulativeProbability(rank) <= tail) {
      rank++;
    }
    return rank;
  }

  /** {@link #chance(int, int, double)} at 95 %. */
  public static Interval chance95(int happened, int of) {
    return chance(happened, of, USUAL_LEVEL);
  }

  /**
   * Clopper and Pearson's interval for the chance of what happened in so many replications: its
   * confidence is never below the level, however rare the thing. It has both limits even where it
   * never or always happened.
   *
   * <p>From the quantile (1 − level)/2 of beta (k, n − k + 1) to the quantile 1 − (1 − level)/2 of
   * beta (k + 1, n − k).
   *
   * @param happened k, 0 to n
   * @param of n; with 0 there is no interval
   * @see "Clopper and Pearson, The use of confidence or fiducial limits, Biometrika 26 (1934)"
   */
  public static Interval chance(int happened, int of, double level) {
    checkLevel(level);
    if (!(0 <= happened && happened <= of)) {
      throw new IllegalArgumentException("happened is " + happened + "; expected 0 to " + of);
    }
    if (of == 0) {
      return Interval.NONE;
    }
    double tail = (1 - level) / 2;
    double low =
        happened == 0
            ? 0
            : BetaDistribution.of(happened, of - happened + 1.0).inverseCumulativeProbability(tail);
    double high =
        happened == of
            ? 1
            : BetaDistribution.of(happened + 1.0, of - happened).inverseSurvivalProbability(tail);
    return new Interval(low, high);
  }

  /**
   * Level that each of several intervals needs for all together to hold with the wanted one: 1 − (1
   * − level)/count. Valid however they depend on each other, and therefore not tight.
   *
   * @param count of intervals looked at together, at least 1
   * @see "Bonferroni's inequality"
   */
  public static double jointLevel(double level, int count) {
    checkLevel(level);
    if (!(count >= 1)) {
      throw new IllegalArgumentException("count is " + count + "; expected at least 1");
    }
    return 1 - (1 - level) / count;
  }

  /** t that both sides of Student's distribution leave outside with 1 − level together. */
  static double student(int freedom, double level) {
    return TDistribution.of(freedom).inverseSurvivalProbability((1 - level) / 2);
  }

  static void checkLevel(double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("level is " + level + "; expected above 0 and below 1");
    }
  }

  static void checkShare(double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("share is " + share + "; expected above 0 and below 1");
    }
  }
}
