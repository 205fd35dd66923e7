package hurdline.economics;

/**
 * A loan paid back in even payments at the end of each year: interest on what is owed, the rest
 * repayment.
 *
 * <p>With principal P, rate i and n years the payment is P·(A/P, i, n), and after year k there is
 * owed P·((1 + i)ⁿ − (1 + i)ᵏ) / ((1 + i)ⁿ − 1), or P·(1 − k/n) without interest.
 *
 * @param principal P, not below 0
 * @param rate i, share a year, not below 0
 * @param years n, 1 or more
 * @see "Blank and Tarquin, Engineering Economy, 7th ed. 2012, table 1-1, plan 4"
 */
public record Loan(double principal, double rate, int years) {
  public Loan {
    if (!(principal >= 0)) {
      throw new IllegalArgumentException("principal is " + principal + "; expected not below 0");
    }
    if (!(rate >= 0)) {
      throw new IllegalArgumentException("rate is " + rate + "; expected not below 0");
    }
    if (years < 1) {
      throw new IllegalArgumentException("years is " + years + "; expected 1 or more");
    }
  }

  /** Paid at the end of each year. */
  public double payment() {
    return principal * CapitalRecovery.factor(rate, years);
  }

  /** Owed after so many years, once their payments are made. */
  public double owedAfter(int year) {
    if (year >= years) {
      return 0;
    }
    if (rate == 0) {
      return principal * (1 - (double) year / years);
    }
    double whole = Math.expm1(years * Math.log1p(rate));
    return principal * (whole - Math.expm1(year * Math.log1p(rate))) / whole;
  }

  /**
   * @param year counts from 1
   */
  public double interest(int year) {
    return owedAfter(year - 1) * rate;
  }

  /**
   * @param year counts from 1
   */
  public double repayment(int year) {
    return owedAfter(year - 1) - owedAfter(year);
  }
}
