package hurdline.statistics;

import org.apache.commons.statistics.descriptive.Quantile;

/**
 * Quantiles of a sample.
 *
 * <p>Of the nine usual definitions this is the seventh: with the n values in rising order, position
 * 1 + share·(n − 1), and a straight line between two neighbours. It goes through the least and the
 * greatest value and is what spreadsheets show.
 *
 * @see "Hyndman and Fan, Sample quantiles in statistical packages, American Statistician 50 (1996),
 *     definition 7"
 */
public final class Quantiles {
  private static final Quantile SEVENTH =
      Quantile.withDefaults().withCopy(true).with(Quantile.EstimationMethod.HF7);

  private Quantiles() {}

  /**
   * The quantile of one share.
   *
   * @param values in any order, read only; none gives NaN
   * @param share 0 to 1
   */
  public static double of(double[] values, double share) {
    return SEVENTH.evaluate(values, share);
  }

  /**
   * The quantiles of several shares.
   *
   * @param values in any order, read only; none gives NaN for each
   * @param shares 0 to 1 each, read only
   */
  public static double[] of(double[] values, double... shares) {
    return SEVENTH.evaluate(values, shares);
  }
}
