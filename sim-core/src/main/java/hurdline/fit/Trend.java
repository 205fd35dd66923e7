package hurdline.fit;

import hurdline.fit.Observations.Seen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Whether stops come more often or more seldom as time goes on: Lewis and Robinson's test,
 * Laplace's statistic to the last stop divided by the relative spread of the amounts. Laplace's own
 * supposes exponential amounts and calls 8 to 17 % of steady logs a trend at 5 % where the amounts
 * vary more.
 *
 * <p>U = (T̄ − Tₙ/2) / (Tₙ·√(1/(12(n − 1)))) with T the running totals of n amounts, T̄ the mean of
 * the first n − 1; the statistic is U over the amounts' sd/mean.
 *
 * @param statistic above 0 where stops come more often later
 * @param p two-sided
 * @see "Lawless, Statistical Models and Methods for Lifetime Data, on Lewis and Robinson 1974; from
 *     memory"
 */
record Trend(double statistic, double p) {
  private static final int FEWEST = 20;
  private static final int EITHER_SIDE = 8;
  private static final double FIXED = 0.1;
  private static final double SIGNIFICANT = 0.05;

  boolean isSignificant() {
    return p < SIGNIFICANT;
  }

  /** Nothing where there are fewer than 20 amounts, or they hardly differ. */
  static Optional<Trend> of(double[] amounts) {
    int n = amounts.length;
    double total = 0;
    double totals = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      total += amounts[i];
      squares += amounts[i] * amounts[i];
      totals += i < n - 1 ? total : 0;
    }
    double mean = total / n;
    double spread = Math.sqrt(Math.max(0, squares - n * mean * mean) / (n - 1)) / mean;
    if (n < FEWEST || !(spread >= FIXED)) {
      return Optional.empty();
    }
    double laplace = (totals / (n - 1) - total / 2) / (total * Math.sqrt(1 / (12.0 * (n - 1))));
    double statistic = laplace / spread;
    return Optional.of(
        new Trend(
            statistic, 2 * NormalDistribution.of(0, 1).survivalProbability(Math.abs(statistic))));
  }

  /**
   * The first amount after the likeliest change of the law, at least eight on either side; nothing
   * where there is none.
   */
  static OptionalInt change(double[] amounts) {
    int best = -1;
    double most = 0;
    Optional<LawFit> whole = fit(amounts, 0, amounts.length);
    for (int at = EITHER_SIDE; at <= amounts.length - EITHER_SIDE && whole.isPresent(); at++) {
      Optional<LawFit> before = fit(amounts, 0, at);
      Optional<LawFit> after = fit(amounts, at, amounts.length);
      if (before.isPresent() && after.isPresent()) {
        double ratio =
            before.get().logLikelihood()
                + after.get().logLikelihood()
                - whole.get().logLikelihood();
        if (ratio > most) {
          most = ratio;
          best = at;
        }
      }
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
  }

  private static Optional<LawFit> fit(double[] amounts, int from, int to) {
    List<Seen> seen = new ArrayList<>();
    for (int i = from; i < to; i++) {
      seen.add(Seen.whole(amounts[i], 0));
    }
    return MaximumLikelihood.fit(Law.EXPONENTIAL, Observations.of(seen), 0);
  }
}
