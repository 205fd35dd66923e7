package hurdline.statistics;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Trials of {@link TwoStageSelection} on plans of known means, all below the best by just the band:
 * how often the best is named.
 *
 * @param spreads standard deviation of each plan's years, the best's first
 * @param band by which it leads
 * @param ruled number of plans of which the constant is taken
 */
public record TwoStageTrials(double[] spreads, double band, int ruled) {
  private static final int FIRST = 10;

  /** What came of the trials. */
  public record Found(int right, int trials) {
    /** No fewer than a procedure of this chance would show in 999 of 1,000 such tests. */
    public boolean isAtLeast(double chance) {
      return right >= BinomialDistribution.of(trials, chance).inverseCumulativeProbability(0.001);
    }
  }

  /** Spreads of 1 and 1.5 by turns. */
  public static TwoStageTrials slippage(int plans, double band) {
    double[] spreads = new double[plans];
    Arrays.setAll(spreads, plan -> 1 + 0.5 * (plan % 2));
    return new TwoStageTrials(spreads, band, plans);
  }

  TwoStageTrials by(int plans) {
    return new TwoStageTrials(spreads, band, plans);
  }

  public Found run(int trials, long seed) {
    UniformRandomProvider generator = RandomSource.XO_SHI_RO_256_PP.create(seed);
    ZigguratSampler normal = ZigguratSampler.NormalizedGaussian.of(generator);
    TwoStageSelection rule = new TwoStageSelection(ruled, FIRST, 0.95);
    int right = 0;
    for (int trial = 0; trial < trials; trial++) {
      int named = 0;
      double most = Double.NEGATIVE_INFINITY;
      for (int plan = 0; plan < spreads.length; plan++) {
        double mean = (plan == 0 ? band : 0) + mean(rule, spreads[plan], normal);
        named = mean > most ? plan : named;
        most = Math.max(most, mean);
      }
      right += named == 0 ? 1 : 0;
    }
    return new Found(right, trials);
  }

  /** The years of the second stage by their mean, which is normal too. */
  private double mean(TwoStageSelection rule, double spread, ZigguratSampler normal) {
    double[] first = new double[FIRST];
    Arrays.setAll(first, year -> spread * normal.sample());
    long years = rule.years(first, band);
    double more = years - FIRST;
    double second = more == 0 ? 0 : spread * normal.sample() * Math.sqrt(more);
    return (Arrays.stream(first).sum() + second) / years;
  }
}
