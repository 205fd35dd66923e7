package hurdline.statistics;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Difference of one measure between two plants that met the same chance, replication by
 * replication.
 *
 * <p>What both plants owe to the season cancels in each pair, so the spread that counts is that of
 * the differences, and far fewer replications tell two plants apart than if each had its own
 * chance.
 *
 * @param count of pairs in which both plants have a value
 * @param baseMean mean of the plant compared with
 * @param optionMean mean of the other
 * @param difference option less base, the mean of the pairs
 * @param interval which one {@code at95} and {@code joint} are
 * @param at95 interval for the difference at 95 %
 * @param joint the same at the level that lets all comparisons made together hold at 95 %
 * @param replicationsNeeded how many pairs of this spread it takes until the half-width of
 *     Student's joint interval falls below a difference of this size; more than there are unless it
 *     is significant, and no more than there are if it is, whichever interval said so; none if the
 *     difference is 0 or the spread unknown
 * @param varianceRemoved share of the variance of the difference that pairing takes away, compared
 *     with plants of independent chance: 1 − Var(option − base) / (Var(option) + Var(base)); below
 *     0 where pairing harms, NaN where nothing varies
 */
public record PairedDifference(
    int count,
    double baseMean,
    double optionMean,
    double difference,
    MeanInterval interval,
    Interval at95,
    Interval joint,
    OptionalInt replicationsNeeded,
    double varianceRemoved) {
  private static final double LEVEL = 0.95;

  /**
   * More replications than this nobody makes; a difference that needs more counts as needing so
   * many.
   */
  private static final int MOST_NEEDED = 1_000_000_000;

  /**
   * Share of a value, or of its unit where that is more, below which two that should be equal may
   * differ after some hundred thousand events: what is left of sums that come to nothing has no
   * size of its own.
   */
  private static final double ROUNDING = 1e-9;

  /** Nothing is called a difference whose interval covers 0: the joint one decides. */
  public boolean significant() {
    return joint.excludes0();
  }

  /**
   * @param base one value a replication, read only
   * @param option one value a replication, in the same order, read only
   * @param comparisons how many differences are looked at together, at least 1
   */
  public static PairedDifference of(double[] base, double[] option, int comparisons) {
    double[] all = differences(base, option);
    int[] both = IntStream.range(0, base.length).filter(i -> !Double.isNaN(all[i])).toArray();
    double[] ofBase = Arrays.stream(both).mapToDouble(i -> base[i]).toArray();
    double[] ofOption = Arrays.stream(both).mapToDouble(i -> option[i]).toArray();
    double[] differences = Arrays.stream(both).mapToDouble(i -> all[i]).toArray();
    double jointLevel = Intervals.jointLevel(LEVEL, comparisons);
    Moments baseAlone = Moments.of(ofBase);
    Moments optionAlone = Moments.of(ofOption);
    Moments paired = Moments.of(differences);
    Interval joint = Intervals.mean(differences, jointLevel);
    return new PairedDifference(
        both.length,
        baseAlone.mean(),
        optionAlone.mean(),
        paired.mean(),
        interval(paired, differences),
        Intervals.mean(differences, LEVEL),
        joint,
        needed(Math.abs(paired.mean()), paired.sd(), jointLevel, both.length, joint.excludes0()),
        removed(baseAlone.variance() + optionAlone.variance(), paired.variance()));
  }

  /**
   * Option less base, pair by pair; NaN where one of the two has no value.
   *
   * @param base one value a replication, read only
   * @param option one value a replication, in the same order, read only
   */
  public static double[] differences(double[] base, double[] option) {
    if (base.length != option.length) {
      throw new IllegalArgumentException(
          "option has " + option.length + " values; expected as many as base, " + base.length);
    }
    return IntStream.range(0, base.length).mapToDouble(i -> between(base[i], option[i])).toArray();
  }

  private static MeanInterval interval(Moments paired, double[] differences) {
    boolean isNone =
        differences.length > 1
            && Arrays.stream(differences).allMatch(difference -> difference == 0);
    return isNone ? MeanInterval.EQUAL : MeanInterval.of(paired, differences.length);
  }

  /**
   * What is only rounding is none: without chance every pair would have the same, and tell two
   * equal plants apart.
   */
  private static double between(double base, double option) {
    double difference = option - base;
    return Math.abs(difference)
            <= ROUNDING * Math.max(1, Math.max(Math.abs(base), Math.abs(option)))
        ? 0
        : difference;
  }

  private static double removed(double varianceApart, double variancePaired) {
    return varianceApart > 0 ? 1 - variancePaired / varianceApart : Double.NaN;
  }

  private static OptionalInt needed(
      double size, double sd, double level, int count, boolean significant) {
    if (!(size > 0) || Double.isNaN(sd)) {
      return OptionalInt.empty();
    }
    int needed = needed(size, sd, level);
    return OptionalInt.of(significant ? Math.min(needed, count) : Math.max(needed, count + 1));
  }

  private static int needed(double size, double sd, double level) {
    if (enough(2, size, sd, level)) {
      return 2;
    }
    int tooFew = 2;
    int plenty = 4;
    while (plenty < MOST_NEEDED && !enough(plenty, size, sd, level)) {
      tooFew = plenty;
      plenty = Math.min(2 * plenty, MOST_NEEDED);
    }
    return leastEnough(tooFew, plenty, size, sd, level);
  }

  private static int leastEnough(int tooFew, int plenty, double size, double sd, double level) {
    int below = tooFew;
    int least = plenty;
    while (least - below > 1) {
      int middle = below + (least - below) / 2;
      if (enough(middle, size, sd, level)) {
        least = middle;
      } else {
        below = middle;
      }
    }
    return least;
  }

  private static boolean enough(int count, double size, double sd, double level) {
    return Intervals.student(count - 1, level) * sd / Math.sqrt(count) < size;
  }
}
