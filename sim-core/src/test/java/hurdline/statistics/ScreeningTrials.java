package hurdline.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Trials of {@link LeaderScreening} on plans whose true means are known: how often the statement of
 * any round is false, that is, the best is out or further above the leader than the gap.
 *
 * @param means true means, the greatest of them the best's
 * @param spreads standard deviation of each plan's own part of a year
 * @param common standard deviation of the part that all plans share
 * @param shape turns a standard normal value into an own part of mean 0 and deviation 1
 * @param zone the gap at which a trial ends
 */
record ScreeningTrials(
    double[] means,
    double[] spreads,
    double common,
    DoubleUnaryOperator shape,
    ScreeningYears terms,
    double zone) {
  /** Of a year's own part, where the rest is its row's. */
  private static final double OF_CHANCE = 0.3;

  /** What came of the trials. */
  record Found(int falseStatements, int trials, double yearsEach) {
    /**
     * No more than a procedure that fails with this chance would show in 999 of 1,000 such tests.
     */
    boolean isWithin(double chance) {
      return falseStatements
          <= BinomialDistribution.of(trials, chance).inverseCumulativeProbability(0.999);
    }
  }

  /** All plans have one mean, save that the first is better by so much. */
  static ScreeningTrials slippage(int plans, double lead, double common, ScreeningYears terms) {
    double[] means = new double[plans];
    double[] spreads = new double[plans];
    Arrays.fill(spreads, 1);
    means[0] = lead;
    return new ScreeningTrials(means, spreads, common, z -> z, terms, 0.3);
  }

  /** Each plan is worse than the one before by so much. */
  static ScreeningTrials steps(int plans, double step, double common, ScreeningYears terms) {
    ScreeningTrials alike = slippage(plans, 0, common, terms);
    for (int i = 0; i < plans; i++) {
      alike.means[i] = -i * step;
    }
    return alike;
  }

  /** The best has another spread than the rest. */
  ScreeningTrials bestSpread(double factor) {
    spreads[0] *= factor;
    return this;
  }

  ScreeningTrials endingAt(double other) {
    return new ScreeningTrials(means, spreads, common, shape, terms, other);
  }

  ScreeningTrials shaped(DoubleUnaryOperator other) {
    return new ScreeningTrials(means, spreads, common, other, terms, zone);
  }

  /** Runs them on years each of which is new. */
  Found run(int trials, long seed) {
    return run(trials, seed, false, 0);
  }

  /**
   * Runs them on years that take the rows of a table of draws in turn, so that each plan's own part
   * is its row's but for three tenths of chance: a fault as soon as a row comes again.
   */
  Found runOnRows(int rows, int trials, long seed) {
    return run(trials, seed, false, rows);
  }

  /** Runs them with the first round's years being those that chose the leader: a fault. */
  Found runReusing(int trials, long seed) {
    return run(trials, seed, true, 0);
  }

  private Found run(int trials, long seed, boolean reuse, int rows) {
    UniformRandomProvider generator = RandomSource.XO_SHI_RO_256_PP.create(seed);
    ZigguratSampler normal = ZigguratSampler.NormalizedGaussian.of(generator);
    int wrong = 0;
    long taken = 0;
    for (int trial = 0; trial < trials; trial++) {
      LeaderScreening screening = new LeaderScreening(candidates(), 0.05, terms);
      double[][] years = new double[means.length][terms.before(terms.rounds().size())];
      double[][] table = new double[means.length][rows];
      for (double[] of : table) {
        Arrays.setAll(of, row -> normal.sample());
      }
      draw(years, table, screening.left(), 0, terms.choosing(), normal);
      boolean isFalse = false;
      while (!screening.isOver() && screening.known().map(k -> k.gap() > zone).orElse(true)) {
        int round = screening.rounds().size();
        int from = terms.before(round);
        int to = terms.before(round + 1);
        if (reuse && round == 0) {
          for (double[] of : years) {
            System.arraycopy(of, 0, of, from, to - from);
          }
        } else {
          draw(years, table, screening.left(), from, to, normal);
        }
        taken += (long) screening.left().size() * (to - from);
        isFalse |= isFalse(screening.judge(years), screening);
      }
      wrong += isFalse ? 1 : 0;
    }
    return new Found(wrong, trials, terms.choosing() + (double) taken / trials / means.length);
  }

  private boolean isFalse(LeaderScreening.Round round, LeaderScreening screening) {
    int best = 0;
    for (int i = 1; i < means.length; i++) {
      best = means[i] > means[best] ? i : best;
    }
    return !screening.left().contains(best) || means[best] - means[round.leader()] > round.gap();
  }

  private List<LeaderScreening.Candidate> candidates() {
    List<LeaderScreening.Candidate> all = new ArrayList<>();
    for (int i = 0; i < means.length; i++) {
      all.add(new LeaderScreening.Candidate(i, 0, false));
    }
    return all;
  }

  private void draw(
      double[][] years,
      double[][] table,
      List<Integer> left,
      int from,
      int to,
      ZigguratSampler normal) {
    for (int year = from; year < to; year++) {
      double shared = common * normal.sample();
      for (int i : left) {
        double own = shape.applyAsDouble(normal.sample());
        double drawn =
            table[i].length == 0 ? own : table[i][year % table[i].length] + OF_CHANCE * own;
        years[i][year] = means[i] + shared + spreads[i] * drawn;
      }
    }
  }
}
