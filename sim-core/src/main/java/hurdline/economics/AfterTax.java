package hurdline.economics;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * What is left of a purchase after its loan and tax, year by year of its life.
 *
 * <p>Taxed in year k is the income of that year less interest and depreciation, Tₖ = t·(Rₖ − Iₖ −
 * Dₖ), due at its end; below 0 it lowers the tax on other income. In the last year of the life,
 * which may be cut short, the salvage value is income, all that is not yet written off is, and the
 * rest of the loan is paid back.
 *
 * @param loans on the purchase; none where nothing is borrowed
 * @param depreciation of its cost; none where nothing is written off
 * @param taxRate t, share of taxed income
 * @see "Sullivan, Wicks and Koelling, Engineering Economy, ch. 7, after-tax cash flows, from
 *     memory"
 */
public record AfterTax(Loans loans, Depreciation depreciation, double taxRate) {
  private static final double INSTANT_YR = 1e-9;

  /**
   * A year of the life.
   *
   * @param endYr its end, counted from the purchase
   * @param income in it, salvage not counted
   * @param tax below 0 where other income is taxed less
   */
  public record Year(
      double endYr,
      double income,
      double salvage,
      double interest,
      double repayment,
      double depreciation,
      double tax) {
    /** Income and salvage less what the lender and the tax office get. */
    public double left() {
      return income + salvage - interest - repayment - tax;
    }
  }

  /**
   * The years of a life.
   *
   * @param income payments over the life but for cost and salvage
   */
  public List<Year> years(double cost, double salvage, double lifeYr, Cash income) {
    boolean writesOff = depreciation.share(1) > 0;
    List<Year> years = new ArrayList<>();
    int last = (int) Math.ceil(lifeYr - INSTANT_YR);
    for (int k = 1; k <= last; k++) {
      boolean ends = k == last;
      double endYr = ends ? lifeYr : k;
      double interest = loans.interest(k) * (endYr - (k - 1));
      double repayment = ends ? loans.owedAfter(k - 1) : loans.repayment(k);
      double writtenOff =
          !writesOff
              ? 0
              : cost * (ends ? depreciation.shareLeftAfter(k - 1) : depreciation.share(k));
      double earned = within(income, k - 1, ends ? Double.POSITIVE_INFINITY : k);
      double worth = ends ? salvage : 0;
      double tax = taxRate * (earned + worth - interest - writtenOff);
      years.add(new Year(endYr, earned, worth, interest, repayment, writtenOff, tax));
    }
    return years;
  }

  /** Payments after a year's end up to another's. */
  private static double within(Cash income, double fromYr, double toYr) {
    double sum = 0;
    for (int at = 0; at < income.atYr().length; at++) {
      double atYr = income.atYr()[at];
      boolean first = fromYr == 0 && atYr <= INSTANT_YR;
      if ((first || atYr > fromYr + INSTANT_YR) && atYr <= toYr + INSTANT_YR) {
        sum += income.amounts()[at];
      }
    }
    return sum;
  }

  /**
   * Payments of the owner: the cost less the loan, income at its dates, all else at the ends of
   * years.
   */
  public Cash cash(double cost, double salvage, double lifeYr, Cash income) {
    NavigableMap<Double, Double> cash = new TreeMap<>();
    pay(cash, 0, loans.principal() - cost);
    for (int at = 0; at < income.atYr().length; at++) {
      pay(cash, income.atYr()[at], income.amounts()[at]);
    }
    for (Year year : years(cost, salvage, lifeYr, income)) {
      pay(cash, year.endYr(), year.left() - year.income());
    }
    return new Cash(
        cash.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
        cash.values().stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static void pay(NavigableMap<Double, Double> cash, double atYr, double amount) {
    Double near = cash.ceilingKey(atYr - INSTANT_YR);
    cash.merge(near != null && near < atYr + INSTANT_YR ? near : atYr, amount, Double::sum);
  }
}
