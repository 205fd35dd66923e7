package hurdline.statistics;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * Which input makes a difference vary: for each input alone the share of the variance that a linear
 * regression on its numbers takes away, 1 − (1 − R²)(n − 1)/(n − p − 1) with n values and p
 * numbers, not below 0. Inputs are drawn independently of each other, so shares add up to about
 * what all explain.
 *
 * @param share of each input
 * @param p of Fisher's test that the input explains nothing
 * @see "Song and Nelson, Quickly assessing contributions to input uncertainty, IIE Transactions 47
 *     (2015); with given draws in place of moments; from memory"
 */
public record VarianceShares(double[] share, double[] p) {
  private static final double SINGULAR = 1e-9;

  /**
   * @param differences one a replication, without NaN, read only
   * @param numbers of each input in each replication, [input][replication][number]
   */
  public static VarianceShares of(double[] differences, double[][][] numbers) {
    double[] share = new double[numbers.length];
    double[] p = new double[numbers.length];
    for (int input = 0; input < numbers.length; input++) {
      explain(differences, numbers[input], input, share, p);
    }
    return new VarianceShares(share, p);
  }

  private static void explain(double[] y, double[][] rows, int input, double[] share, double[] p) {
    int n = y.length;
    double all = Moments.of(y).variance() * (n - 1);
    double left = all;
    double[] rest = centred(y);
    double[][] known = new double[rows.length == 0 ? 0 : rows[0].length][];
    int taken = 0;
    for (int column = 0; column < known.length; column++) {
      int at = column;
      double[] x = centred(Arrays.stream(rows).mapToDouble(row -> row[at]).toArray());
      double before = dot(x, x);
      for (int k = 0; k < taken; k++) { // Gram and Schmidt
        subtract(x, known[k]);
      }
      double after = dot(x, x);
      if (before > 0 && after > SINGULAR * before) {
        known[taken++] = x;
        subtract(rest, x);
      }
    }
    left = dot(rest, rest);
    int freedom = n - taken - 1;
    if (taken == 0 || freedom < 1 || !(all > 0)) {
      share[input] = 0;
      p[input] = 1;
      return;
    }
    share[input] = Math.max(0, 1 - left / all * (n - 1) / freedom);
    double ratio = (all - left) / taken / (left / freedom);
    p[input] = left > 0 ? FDistribution.of(taken, freedom).survivalProbability(ratio) : 0;
  }

  private static double[] centred(double[] values) {
    double mean = Moments.of(values).mean();
    return Arrays.stream(values).map(value -> value - mean).toArray();
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** Takes the part along {@code of} away. */
  private static void subtract(double[] from, double[] of) {
    double by = dot(from, of) / dot(of, of);
    for (int i = 0; i < from.length; i++) {
      from[i] -= by * of[i];
    }
  }
}
