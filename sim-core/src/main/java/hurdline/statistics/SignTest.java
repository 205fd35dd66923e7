package hurdline.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/** Whether one of two things happens more often than the other in the same replications. */
public final class SignTest {
  private SignTest() {}

  /**
   * The two-sided exact sign test: if replications in which only one of two happened were as likely
   * to be the one's as the other's, the chance of a split at least as uneven as this.
   *
   * <p>min(1, 2·P(B ≤ min(a, b))), B binomial (a + b, 1/2); 1 where both always happened together.
   *
   * @param onlyFirst a, replications in which the first happened and the second did not
   * @param onlySecond b, the other way round
   * @see "Conover, Practical Nonparametric Statistics, 3rd ed. (1999), section 3.4; from memory"
   */
  public static double twoSided(int onlyFirst, int onlySecond) {
    if (!(onlyFirst >= 0 && onlySecond >= 0)) {
      throw new IllegalArgumentException(
          "counts are " + onlyFirst + " and " + onlySecond + "; expected 0 or more");
    }
    int uneven = onlyFirst + onlySecond;
    if (uneven == 0) {
      return 1;
    }
    double tail =
        BinomialDistribution.of(uneven, 0.5).cumulativeProbability(Math.min(onlyFirst, onlySecond));
    return Math.min(1, 2 * tail);
  }
}
