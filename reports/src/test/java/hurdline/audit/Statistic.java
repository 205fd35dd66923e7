package hurdline.audit;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.special.Beta;

/**
 * The statistics that the tables name, worked out from their definitions and not with the program's
 * own code. Values that are not defined are left out before anything is counted.
 */
final class Statistic {
  private static final double LEVEL = 0.95;

  private static final Map<List<Integer>, Double> STUDENTS = new HashMap<>();

  private final double[] rising;

  private Statistic(double[] values) {
    rising = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
  }

  static Statistic of(double... values) {
    return new Statistic(values);
  }

  int count() {
    return rising.length;
  }

  double sum() {
    return Arrays.stream(rising).sum();
  }

  double mean() {
    return rising.length == 0 ? Double.NaN : sum() / rising.length;
  }

  /** s = √(Σ(x − m)² / (n − 1)). */
  double sd() {
    if (rising.length < 2) {
      return Double.NaN;
    }
    if (rising[0] == rising[rising.length - 1]) {
      return 0;
    }
    double mean = mean();
    double squares = Arrays.stream(rising).map(x -> (x - mean) * (x - mean)).sum();
    return Math.sqrt(squares / (rising.length - 1));
  }

  double variance() {
    return sd() * sd();
  }

  double min() {
    return rising[0];
  }

  double max() {
    return rising[rising.length - 1];
  }

  /**
   * Type 7 of Hyndman and Fan (1996): a straight line through the i-th value at (i − 1)/(n − 1).
   */
  double quantile(double share) {
    if (rising.length == 0) {
      return Double.NaN;
    }
    double place = share * (rising.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, rising.length - 1);
    return rising[below] + (place - below) * (rising[above] - rising[below]);
  }

  /** G₁ = n / ((n − 1)(n − 2)) Σ((x − m)/s)³; 0 where nothing varies. */
  double skewness() {
    double n = rising.length;
    double sd = sd();
    if (n < 3 || !(sd > 0)) {
      return 0;
    }
    double mean = mean();
    double cubes = Arrays.stream(rising).map(x -> Math.pow((x - mean) / sd, 3)).sum();
    return n / ((n - 1) * (n - 2)) * cubes;
  }

  /** Limits of a mean, and by which word the tables say whose they are. */
  record Limits(double low, double high, String kind) {
    double halfWidth() {
      return (high - low) / 2;
    }
  }

  /**
   * Whether the tables may say this of its limits: at a bound of the skewness, or where it is that
   * of rounding, either.
   */
  boolean isCalled(String word, double rounding) {
    double skewness = Math.abs(skewness());
    double bound = rising.length < 40 ? 2 : 1;
    boolean open = sd() <= rounding || Math.abs(skewness - bound) < 1e-6;
    boolean isNothing = sd() <= rounding && Math.abs(mean()) <= Math.max(rounding, 1e-9);
    return limits().kind().equals(word)
        || isNothing && word.equals("equal")
        || open && List.of("student", "skewed", "hall").contains(word);
  }

  /** At 95 %. */
  Limits limits() {
    return limits(1);
  }

  /**
   * Limits of the mean at 95 %, shared by so many comparisons (Bonferroni): Student's m ± t s/√n,
   * or with 40 values and a skewness beyond 1 Hall's (1992): with g(U) = U + γU²/3 + γ²U³/27 +
   * γ/(6n), U = (m − μ)/s, those μ for which g lies within ± t/√n.
   */
  Limits limits(int comparisons) {
    int n = rising.length;
    if (n < 2) {
      return new Limits(Double.NaN, Double.NaN, "");
    }
    double reach = student(n - 1, comparisons) / Math.sqrt(n);
    double skewness = skewness();
    if (n >= 40 && Math.abs(skewness) > 1) {
      return new Limits(
          mean() - sd() * hall(reach, skewness), mean() - sd() * hall(-reach, skewness), "hall");
    }
    String kind = n < 40 && Math.abs(skewness) > 2 ? "skewed" : "student";
    return new Limits(mean() - sd() * reach, mean() + sd() * reach, kind);
  }

  /** The U at which g comes to a value; g rises everywhere. */
  private double hall(double value, double skewness) {
    double low = -1e3;
    double high = 1e3;
    for (int step = 0; step < 120; step++) {
      double u = (low + high) / 2;
      double g =
          u
              + skewness * u * u / 3
              + skewness * skewness * u * u * u / 27
              + skewness / (6 * rising.length);
      if (g < value) {
        low = u;
      } else {
        high = u;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Quantile of Student's t that leaves so much outside on either side; each is asked for hundreds
   * of times.
   */
  static double student(int freedom, int comparisons) {
    return STUDENTS.computeIfAbsent(
        List.of(freedom, comparisons),
        of ->
            new TDistribution(null, freedom)
                .inverseCumulativeProbability(1 - (1 - LEVEL) / 2 / comparisons));
  }

  /**
   * Whether n is the least number of replications of this spread whose joint interval does not
   * reach from this mean to 0.
   */
  boolean isLeastToShow(int n, int comparisons) {
    return shows(n, comparisons) && (n == 2 || !shows(n - 1, comparisons));
  }

  boolean shows(int n, int comparisons) {
    return n >= 2 && student(n - 1, comparisons) * sd() / Math.sqrt(n) < Math.abs(mean());
  }

  /**
   * Lower limit of Clopper and Pearson's 95 % interval: the chance p with P(B ≥ k) = 0.025, B
   * binomial (n, p).
   */
  static double chanceLow(int happened, int of) {
    return happened == 0
        ? 0
        : bisect(p -> Beta.regularizedBeta(p, happened, of - happened + 1.0) >= (1 - LEVEL) / 2);
  }

  /** Upper limit: the chance p with P(B ≤ k) = 0.025. */
  static double chanceHigh(int happened, int of) {
    return happened == of
        ? 1
        : bisect(
            p -> Beta.regularizedBeta(p, happened + 1.0, of - happened) >= 1 - (1 - LEVEL) / 2);
  }

  /** P(B ≤ k) of a binomial count B. */
  static double chanceOfAtMost(int k, int of, double share) {
    return k < 0 ? 0 : k >= of ? 1 : 1 - Beta.regularizedBeta(share, k + 1.0, of - k);
  }

  /** Where a condition on a share begins to hold. */
  private static double bisect(DoublePredicate holds) {
    double low = 0;
    double high = 1;
    for (int step = 0; step < 60; step++) {
      double middle = (low + high) / 2;
      if (holds.test(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Lower 95 % limit of a quantile, an order statistic: the value of the greatest rank i with P(B ≤
   * i − 1) ≤ 0.025.
   */
  double quantileLow(double share) {
    return ranked(rankBelow(share));
  }

  /** Its upper limit, the same counted from the top. */
  double quantileHigh(double share) {
    return ranked(rising.length + 1 - rankBelow(1 - share));
  }

  private int rankBelow(double share) {
    int rank = 0;
    while (rank < rising.length && chanceOfAtMost(rank, rising.length, share) <= (1 - LEVEL) / 2) {
      rank++;
    }
    return rank;
  }

  /** How many values are less. */
  int below(double value) {
    return (int) Arrays.stream(rising).filter(x -> x < value).count();
  }

  /** How many values are greater. */
  int above(double value) {
    return (int) Arrays.stream(rising).filter(x -> x > value).count();
  }

  /** The value at this place in rising order, from 1; NaN beyond both ends. */
  double ranked(int rank) {
    return rank >= 1 && rank <= rising.length ? rising[rank - 1] : Double.NaN;
  }
}
