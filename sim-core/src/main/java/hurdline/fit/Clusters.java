package hurdline.fit;

import hurdline.random.RandomStream;
import java.util.Arrays;
import java.util.Optional;

/**
 * Whether short amounts follow short ones: Spearman's rank correlation of neighbors, set beside
 * that of the same amounts in shuffled orders.
 *
 * @param correlation from −1 to 1
 * @param p share of shuffles at least as far from 0
 */
record Clusters(double correlation, double p) {
  private static final int FEWEST = 20;
  private static final int SHUFFLES = 999;
  private static final int RESAMPLES = 499;
  private static final double SIGNIFICANT = 0.01;

  boolean isSignificant() {
    return p < SIGNIFICANT;
  }

  /** Nothing where there are fewer than 20 amounts or all are alike. */
  static Optional<Clusters> of(double[] amounts, RandomStream stream) {
    double[] ranks = ranks(amounts);
    double found = correlation(ranks);
    if (amounts.length < FEWEST || Double.isNaN(found)) {
      return Optional.empty();
    }
    int far = 0;
    for (int i = 0; i < SHUFFLES; i++) {
      shuffle(ranks, stream);
      far += Math.abs(correlation(ranks)) >= Math.abs(found) ? 1 : 0;
    }
    return Optional.of(new Clusters(found, (far + 1.0) / (SHUFFLES + 1.0)));
  }

  /**
   * Standard error of the mean over the mean, from blocks of n^(1/3) + 2 neighbors drawn with
   * replacement; still somewhat too small, since blocks are short.
   */
  static double blockErrorShare(double[] amounts, RandomStream stream) {
    int n = amounts.length;
    int length = Math.min(n, (int) Math.round(Math.cbrt(n)) + 2);
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < RESAMPLES; i++) {
      double log = Math.log(resampled(amounts, length, stream) / n);
      sum += log;
      squares += log * log;
    }
    return Math.sqrt(Math.max(0, squares / RESAMPLES - sum * sum / RESAMPLES / RESAMPLES));
  }

  /** The sum of as many amounts, block by block. */
  private static double resampled(double[] amounts, int length, RandomStream stream) {
    double total = 0;
    int start = 0;
    for (int taken = 0; taken < amounts.length; taken++) {
      start = taken % length == 0 ? (int) (stream.next() * (amounts.length - length + 1)) : start;
      total += amounts[start + taken % length];
    }
    return total;
  }

  private static double[] ranks(double[] amounts) {
    double[] rising = amounts.clone();
    Arrays.sort(rising);
    double[] ranks = new double[amounts.length];
    for (int i = 0; i < ranks.length; i++) {
      int first = Arrays.binarySearch(rising, amounts[i]);
      int last = first;
      while (first > 0 && rising[first - 1] == amounts[i]) {
        first--;
      }
      while (last < rising.length - 1 && rising[last + 1] == amounts[i]) {
        last++;
      }
      ranks[i] = (first + last) / 2.0;
    }
    return ranks;
  }

  private static double correlation(double[] x) {
    int n = x.length - 1;
    double a = 0;
    double b = 0;
    for (int i = 0; i < n; i++) {
      a += x[i] / n;
      b += x[i + 1] / n;
    }
    double ab = 0;
    double aa = 0;
    double bb = 0;
    for (int i = 0; i < n; i++) {
      ab += (x[i] - a) * (x[i + 1] - b);
      aa += (x[i] - a) * (x[i] - a);
      bb += (x[i + 1] - b) * (x[i + 1] - b);
    }
    return ab / Math.sqrt(aa * bb);
  }

  private static void shuffle(double[] x, RandomStream stream) {
    for (int i = x.length - 1; i > 0; i--) {
      int other = (int) (stream.next() * (i + 1));
      double held = x[i];
      x[i] = x[other];
      x[other] = held;
    }
  }
}
