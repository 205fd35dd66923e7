package hurdline.statistics;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * How a season lies among simulated ones, period by period. The chance of each score is exact,
 * whatever hangs together from week to week: every replication takes the season's place among the
 * others in turn, and p = (1 + #{Sᵣ ≥ S})/(R + 1).
 *
 * @param total sum over the periods
 * @param mean of the replications' sums
 * @param sd of the replications' sums
 * @param totalP chance of a sum as far off
 * @param totalTail the same; where the season lies beyond all replications, which only says that it
 *     is below 1/(R + 1), Student's of (total − mean)/(sd·√(1 + 1/R)) if that is less
 * @param crps mean over the periods of |x − y| less half the mean distance of two replications, in
 *     the series' unit
 * @param crpsP chance of one as large
 * @param rankDistance greatest distance of the ranks' distribution from a uniform one
 * @param rankP chance of one as large
 * @param outside90 share of periods outside the band from 5 to 95 %
 * @param outsideP chance of one as large
 * @see "Hersbach, Decomposition of the continuous ranked probability score, Weather and Forecasting
 *     15 (2000); from memory. Permutation tests: Barnard 1963, from memory"
 */
public record SeasonScore(
    double total,
    double mean,
    double sd,
    double totalP,
    double totalTail,
    double crps,
    double crpsP,
    double rankDistance,
    double rankP,
    double outside90,
    double outsideP) {
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  /** No tail is known farther out. */
  private static final double LEAST = 1e-6;

  /**
   * @param season one value a period, read only
   * @param simulated [replication][period], at least 19, read only
   */
  public static SeasonScore of(double[] season, double[][] simulated) {
    int n = simulated.length;
    double[][] all = new double[n + 1][];
    all[0] = season;
    System.arraycopy(simulated, 0, all, 1, n);
    double[] totals = Arrays.stream(all).mapToDouble(row -> Arrays.stream(row).sum()).toArray();
    Moments others = Moments.of(Arrays.copyOfRange(totals, 1, n + 1));
    double[][] columns = new double[season.length][];
    for (int period = 0; period < season.length; period++) {
      int at = period;
      columns[period] = Arrays.stream(all).mapToDouble(row -> row[at]).toArray();
    }
    double[] far = scores(n + 1, r -> far(totals, r));
    double[] crps = scores(n + 1, r -> crps(columns, r));
    double[] ranks = scores(n + 1, r -> rankDistance(columns, r));
    double[] outside = scores(n + 1, r -> outside(columns, r));
    return new SeasonScore(
        totals[0],
        others.mean(),
        others.sd(),
        chance(far),
        tail(chance(far), totals[0] - others.mean(), others.sd(), n),
        crps[0],
        chance(crps),
        ranks[0],
        chance(ranks),
        outside[0],
        chance(outside));
  }

  private static double[] scores(int count, IntToDoubleFunction of) {
    return IntStream.range(0, count).mapToDouble(of).toArray();
  }

  private static double tail(double chance, double off, double sd, int n) {
    if (chance > 1.5 / (n + 1)) {
      return chance;
    }
    double t = Math.abs(off) / (Math.max(sd, 1e-12) * Math.sqrt(1 + 1.0 / n));
    return Math.min(chance, Math.max(LEAST, 2 * TDistribution.of(n - 1).survivalProbability(t)));
  }

  /** How often a score is as large as the season's, which is the first; rounding is none. */
  private static double chance(double[] scores) {
    double least = scores[0] - 1e-9 * Math.max(1, Math.abs(scores[0]));
    return (double) Arrays.stream(scores).filter(score -> score >= least).count() / scores.length;
  }

  /** How far one lies from the mean of the others, in their standard deviation. */
  private static double far(double[] totals, int one) {
    double[] others = without(totals, one);
    Moments of = Moments.of(others);
    double off = Math.abs(totals[one] - of.mean());
    return off == 0 ? 0 : off / Math.max(of.sd(), 1e-12);
  }

  private static double[] without(double[] values, int one) {
    double[] others = new double[values.length - 1];
    System.arraycopy(values, 0, others, 0, one);
    System.arraycopy(values, one + 1, others, one, others.length - one);
    return others;
  }

  private static double crps(double[][] columns, int one) {
    double sum = 0;
    for (double[] column : columns) {
      double[] others = without(column, one);
      Arrays.sort(others);
      double near = 0;
      double spread = 0;
      int n = others.length;
      for (int i = 0; i < n; i++) {
        near += Math.abs(others[i] - column[one]);
        spread += (2.0 * i + 1 - n) * others[i];
      }
      sum += near / n - spread / (n * (n - 1.0));
    }
    return sum / columns.length;
  }

  private static double rankDistance(double[][] columns, int one) {
    double[] ranks = new double[columns.length];
    for (int period = 0; period < columns.length; period++) {
      double[] column = columns[period];
      double below = 0;
      for (int r = 0; r < column.length; r++) {
        if (r != one) {
          below += column[r] < column[one] ? 1 : column[r] == column[one] ? 0.5 : 0;
        }
      }
      ranks[period] = (below + 0.5) / column.length;
    }
    Arrays.sort(ranks);
    double distance = 0;
    for (int i = 0; i < ranks.length; i++) {
      distance =
          Math.max(
              distance,
              Math.max((i + 1.0) / ranks.length - ranks[i], ranks[i] - (double) i / ranks.length));
    }
    return distance;
  }

  private static double outside(double[][] columns, int one) {
    int outside = 0;
    for (double[] column : columns) {
      double[] band = Quantiles.of(without(column, one), LOW, HIGH);
      outside += column[one] < band[0] || column[one] > band[1] ? 1 : 0;
    }
    return (double) outside / columns.length;
  }

  /**
   * Chances raised so that all together hold: Holm's step-down.
   *
   * @see "Holm, A simple sequentially rejective multiple test procedure, Scand. J. Statist. 6
   *     (1979)"
   */
  public static double[] together(double[] p) {
    Integer[] order = IntStream.range(0, p.length).boxed().toArray(Integer[]::new);
    Arrays.sort(order, (a, b) -> Double.compare(p[a], p[b]));
    double[] raised = new double[p.length];
    double most = 0;
    for (int at = 0; at < order.length; at++) {
      most = Math.max(most, Math.min(1, p[order[at]] * (p.length - at)));
      raised[order[at]] = most;
    }
    return raised;
  }
}
