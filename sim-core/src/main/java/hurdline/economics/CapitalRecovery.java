package hurdline.economics;

/** The even payment at the end of each year that gives back a capital with interest. */
public final class CapitalRecovery {
  private CapitalRecovery() {}

  /**
   * Payment per unit of capital: i·(1 + i)ⁿ / ((1 + i)ⁿ − 1), and 1/n without interest.
   *
   * @param rate i, share a year, not below 0
   * @param years n, above 0
   * @see "Sullivan, Wicks and Koelling, Engineering Economy, interest factors (A/P, i %, N)"
   */
  public static double factor(double rate, double years) {
    if (!(rate >= 0)) {
      throw new IllegalArgumentException("rate is " + rate + "; expected not below 0");
    }
    if (!(years > 0)) {
      throw new IllegalArgumentException("years is " + years + "; expected above 0");
    }
    return rate == 0 ? 1 / years : rate / -Math.expm1(-years * Math.log1p(rate));
  }
}
