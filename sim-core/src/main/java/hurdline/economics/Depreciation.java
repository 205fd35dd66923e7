package hurdline.economics;

/**
 * Which share of a cost each year writes off for tax; together they are the whole cost.
 *
 * <p>With a life of N years, straight line writes off 1/N a year. Declining balance writes off f/N
 * of what is left, and as soon as it is more, what is left over the years left, so that nothing
 * remains. With half a first year both begin with half of a year's share and end in year N + 1;
 * declining balance of f = 2 or 1.5 is then the general system of IRS Publication 946, table A-1.
 *
 * @see "IRS Publication 946, How To Depreciate Property, figuring the deduction without tables"
 */
public final class Depreciation {
  /** Less of a year than this is no year. */
  private static final double ROUNDING = 1e-9;

  private final double[] shares;

  private Depreciation(double[] shares) {
    this.shares = shares;
  }

  /** Nothing is written off. */
  public static Depreciation none() {
    return new Depreciation(new double[0]);
  }

  /**
   * @param years N, 1 or more
   * @param halfFirst whether the first year counts half
   */
  public static Depreciation straightLine(int years, boolean halfFirst) {
    return declining(years, 0, halfFirst);
  }

  /**
   * @param factor f, above 0 and at most N
   */
  public static Depreciation decliningBalance(int years, double factor, boolean halfFirst) {
    if (!(factor > 0 && factor <= years)) {
      throw new IllegalArgumentException(
          "factor is " + factor + "; expected above 0, at most the years, " + years);
    }
    return declining(years, factor, halfFirst);
  }

  private static Depreciation declining(int years, double factor, boolean halfFirst) {
    if (years < 1) {
      throw new IllegalArgumentException("years is " + years + "; expected 1 or more");
    }
    double[] shares = new double[halfFirst ? years + 1 : years];
    double book = 1;
    double yearsLeft = years;
    for (int k = 0; k < shares.length; k++) {
      double part = k == 0 && halfFirst ? 0.5 : Math.min(1, yearsLeft);
      double wholeYear = Math.max(book * factor / years, book / yearsLeft);
      shares[k] = yearsLeft - part > ROUNDING ? wholeYear * part : book;
      book -= shares[k];
      yearsLeft -= part;
    }
    return new Depreciation(shares);
  }

  /**
   * Share of the cost that is written off in a year.
   *
   * @param year counts from 1
   */
  public double share(int year) {
    return year <= shares.length ? shares[year - 1] : 0;
  }

  /** Share of the cost that is not yet written off after so many years. */
  public double shareLeftAfter(int year) {
    double left = 1;
    for (int k = 1; k <= year; k++) {
      left -= share(k);
    }
    return left;
  }
}
