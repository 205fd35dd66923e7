package hurdline.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which of several has the greatest mean, from pairs of replications that met the same chance: Kim
 * and Nelson's fully sequential procedure with an indifference zone.
 *
 * <p>With k alternatives, n₀ first replications of each, zone δ and confidence 1 − α: η = ½·((2α/(k
 * − 1))^(−2/(n₀ − 1)) − 1) and h² = 2η·(n₀ − 1). S²ᵢₗ is the variance of the n₀ first differences
 * of i and l. At r replications i stays only if its mean is at least that of each other l that is
 * left, less Wᵢₗ(r) = max(0, δ/(2r)·(h²·S²ᵢₗ/δ² − r)). One more replication of those left is taken
 * until there is one; at r = 1 + max ⌊h²·S²ᵢₗ/δ²⌋ every W is 0, so it ends.
 *
 * <p>If the best is better than each other by δ or more, it is selected with a chance of at least 1
 * − α; else one that is within δ of it is likely, without that being promised by this theorem. The
 * values of an alternative are independent normal ones from replication to replication;
 * alternatives may hang on each other, which is why α is split as α/(k − 1). η solves ½·(1 +
 * 2η)^(−(n₀ − 1)/2) = α/(k − 1), the case c = 1 of the article.
 *
 * @see "Kim and Nelson, A fully sequential procedure for indifference-zone selection in simulation,
 *     ACM Transactions on Modeling and Computer Simulation 11 (2001), 251-273; the formulas from
 *     memory"
 */
public final class SelectionOfBest {
  /** So that a bound that is a whole number stays one. */
  private static final double ROUNDING = 1e-9;

  private final double zone;
  private final double[] sums;
  private final double[][] enough;
  private final List<Integer> left = new ArrayList<>();
  private int taken;

  /**
   * The state after the first replications.
   *
   * @param first [alternative][replication], at least two of each; read only
   * @param zone δ, the least difference that is worth finding, above 0
   * @param confidence 1 − α, above 1/k and below 1
   */
  public SelectionOfBest(double[][] first, double zone, double confidence) {
    if (!(zone > 0)) {
      throw new IllegalArgumentException("zone is " + zone + "; expected above 0");
    }
    if (!(first.length >= 2)) {
      throw new IllegalArgumentException(
          "alternatives are " + first.length + "; expected at least 2");
    }
    if (!(confidence > 1.0 / first.length && confidence < 1)) {
      throw new IllegalArgumentException(
          "confidence is " + confidence + "; expected above 1/" + first.length + " and below 1");
    }
    this.zone = zone;
    taken = first[0].length;
    double h2 = h2(first.length, taken, confidence);
    sums = new double[first.length];
    enough = new double[first.length][first.length];
    for (int i = 0; i < first.length; i++) {
      left.add(i);
      sums[i] = Arrays.stream(first[i]).sum();
      for (int l = 0; l < i; l++) {
        enough[i][l] = h2 * varianceOfDifference(first[i], first[l]) / (zone * zone);
        enough[l][i] = enough[i][l];
      }
    }
    screen();
  }

  /**
   * h² of the procedure.
   *
   * @param alternatives k, at least 2
   * @param first n₀, at least 2
   */
  static double h2(int alternatives, int first, double confidence) {
    if (!(first >= 2)) {
      throw new IllegalArgumentException(
          "first replications are " + first + "; expected at least 2");
    }
    double wrong = 2 * (1 - confidence) / (alternatives - 1);
    double eta = (Math.pow(wrong, -2.0 / (first - 1)) - 1) / 2;
    return 2 * eta * (first - 1);
  }

  private static double varianceOfDifference(double[] a, double[] b) {
    return Moments.of(IntStream.range(0, a.length).mapToDouble(r -> a[r] - b[r]).toArray())
        .variance();
  }

  /** Alternatives that may still be the best, by their place. */
  public List<Integer> left() {
    return List.copyOf(left);
  }

  public boolean isDecided() {
    return left.size() == 1;
  }

  /** The selected one; of those left the one of the greatest mean where it is not decided. */
  public int best() {
    return left.stream().max(Comparator.comparingDouble(i -> sums[i])).orElseThrow();
  }

  /** Replications taken of those that are left. */
  public int taken() {
    return taken;
  }

  /** The most replications that it can take until it is decided. */
  public int most() {
    double most = 0;
    for (int i : left) {
      for (int l : left) {
        most = Math.max(most, enough[i][l]);
      }
    }
    return Math.max(taken, 1 + (int) Math.min(Math.floor(most + ROUNDING), Integer.MAX_VALUE - 1));
  }

  /**
   * One more replication of all that are left.
   *
   * @param values one for each alternative, whatever for those that are out; read only
   */
  public void take(double[] values) {
    taken++;
    left.forEach(i -> sums[i] += values[i]);
    screen();
  }

  private void screen() {
    List<Integer> old = List.copyOf(left);
    left.removeIf(i -> old.stream().anyMatch(l -> l != i && isBeaten(i, l)));
    if (old.size() > 1 && left.size() > 1 && taken > least(left)) {
      int one = best();
      left.removeIf(i -> i != one);
    }
  }

  /** At the end, where every W is 0, equal means may be left; the first is as good as any. */
  private double least(List<Integer> of) {
    return of.stream()
        .flatMapToDouble(i -> of.stream().mapToDouble(l -> Math.floor(enough[i][l] + ROUNDING)))
        .max()
        .orElse(0);
  }

  private boolean isBeaten(int i, int l) {
    double allowed = Math.max(0, zone / (2 * taken) * (enough[i][l] - taken));
    return sums[i] / taken < sums[l] / taken - allowed;
  }
}
