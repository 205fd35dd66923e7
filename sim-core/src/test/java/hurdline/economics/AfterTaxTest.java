package hurdline.economics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Loans, depreciation and tax beside printed tables and by hand. */
class AfterTaxTest {

  /** Blank and Tarquin, Engineering Economy, 7th ed., table 1-1: 5,000 at 8 % over 5 years. */
  @Test
  void aLoanInEvenPaymentsIsThatOfThePrintedPlan() {
    Loan loan = new Loan(5_000, 0.08, 5);
    assertThat(loan.payment()).isCloseTo(1_252.28, within(0.005));
    assertThat(loan.interest(1)).as("first row as printed").isCloseTo(400, within(0.005));
    double owed = 5_000;
    for (int k = 1; k <= 5; k++) {
      assertThat(loan.interest(k)).isCloseTo(owed * 0.08, within(1e-9));
      owed -= loan.payment() - owed * 0.08;
      assertThat(loan.owedAfter(k)).isCloseTo(owed, within(1e-9));
      assertThat(loan.interest(k) + loan.repayment(k)).isCloseTo(loan.payment(), within(1e-9));
    }
    assertThat(owed).isCloseTo(0, within(1e-9));
    assertThat(loan.interest(6) + loan.repayment(6)).isZero();
  }

  /** The lender's payments have the loan's rate as their internal rate, by another way: Brent's. */
  @Test
  void theRateOfTheLendersPaymentsIsTheLoans() {
    Loan loan = new Loan(840_000, 0.0725, 12);
    double rate =
        new BrentSolver(1e-14)
            .solve(
                200,
                i ->
                    IntStream.rangeClosed(1, 12)
                            .mapToDouble(k -> loan.payment() * Math.pow(1 + i, -k))
                            .sum()
                        - 840_000,
                1e-6,
                1);
    assertThat(rate).isCloseTo(0.0725, within(1e-10));
  }

  @Test
  void aLoanWithoutInterestIsPaidBackEvenly() {
    Loan loan = new Loan(900, 0, 3);
    assertThat(loan.payment()).isEqualTo(300);
    assertThat(loan.owedAfter(2)).isCloseTo(300, within(1e-9));
    assertThat(loan.interest(1)).isZero();
  }

  /**
   * Per cent of the cost by year: IRS tables of the general system with half a first year, as
   * printed in a tax textbook (Cengage, table 7.2, 200 % to 10 years, 150 % from 15 on), to the
   * last digit but for its rounding of neighbors.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 2, 33.33 44.45 14.81 7.41",
    "5, 2, 20.00 32.00 19.20 11.52 11.52 5.76",
    "7, 2, 14.29 24.49 17.49 12.49 8.93 8.92 8.93 4.46",
    "10, 2, 10.00 18.00 14.40 11.52 9.22 7.37 6.55 6.55 6.56 6.55 3.28",
    "15, 1.5, 5.00 9.50 8.55 7.70 6.93 6.23 5.90 5.90 5.91 5.90 5.91 5.90 5.91 5.90 5.91 2.95"
  })
  void decliningBalanceIsThatOfTheTaxTables(int years, double factor, String printed) {
    Depreciation depreciation = Depreciation.decliningBalance(years, factor, true);
    String[] rows = printed.split(" ");
    for (int k = 1; k <= rows.length; k++) {
      assertThat(100 * depreciation.share(k))
          .as("%s years, year %s", years, k)
          .isCloseTo(Double.parseDouble(rows[k - 1]), within(0.0101));
    }
    assertThat(depreciation.shareLeftAfter(rows.length)).isCloseTo(0, within(1e-12));
  }

  /** The same book, table 7.3. */
  @Test
  void straightLineWithHalfAFirstYearIsThatOfTheTaxTables() {
    Depreciation seven = Depreciation.straightLine(7, true);
    assertThat(100 * seven.share(1)).isCloseTo(7.14, within(0.005));
    assertThat(100 * seven.share(2)).isCloseTo(14.29, within(0.005));
    assertThat(100 * seven.share(8)).isCloseTo(7.14, within(0.005));
    assertThat(seven.share(9)).isZero();
    assertThat(Depreciation.straightLine(4, false).share(4)).isCloseTo(0.25, within(1e-12));
    assertThat(Depreciation.straightLine(4, false).share(5)).isZero();
  }

  /**
   * By hand: 1,000, half of it borrowed at 10 % over two years in payments of 288.095; written off
   * over two years; it earns 700 and 600 and is sold for 100.
   */
  @Test
  void aSmallPurchaseGoesAsItDoesByHand() {
    AfterTax terms = new AfterTax(loans(500, 0.1, 2), Depreciation.straightLine(2, false), 0.25);
    Cash income = Cash.yearly(0, 700, 600);
    List<AfterTax.Year> years = terms.years(1_000, 100, 2, income);
    assertThat(years).hasSize(2);
    assertThat(years.get(0).tax()).isCloseTo(0.25 * (700 - 50 - 500), within(1e-9));
    double secondInterest = (550 - 288.0952381) * 0.1;
    assertThat(years.get(1).interest()).isCloseTo(secondInterest, within(1e-6));
    assertThat(years.get(1).tax())
        .isCloseTo(0.25 * (600 + 100 - secondInterest - 500), within(1e-6));
    Cash left = terms.cash(1_000, 100, 2, income);
    assertThat(left.amounts()[0]).isEqualTo(-500);
    assertThat(left.amounts()[1]).isCloseTo(700 - 288.0952381 - 37.5, within(1e-6));
    assertThat(left.amounts()[2]).isCloseTo(700 - 288.0952381 - years.get(1).tax(), within(1e-6));
  }

  /**
   * Sold after a year and a half: half a year's interest, the rest owed and the rest of the book.
   */
  @Test
  void aLifeThatEndsEarlyPaysBackAndWritesOffTheRest() {
    AfterTax terms = new AfterTax(loans(500, 0.1, 4), Depreciation.straightLine(4, false), 0.25);
    List<AfterTax.Year> years =
        terms.years(
            1_000, 600, 1.5, new Cash(new double[] {0, 1, 1.5}, new double[] {0, 300, 150}));
    AfterTax.Year last = years.get(1);
    double owed = new Loan(500, 0.1, 4).owedAfter(1);
    assertThat(last.endYr()).isEqualTo(1.5);
    assertThat(last.repayment()).isCloseTo(owed, within(1e-9));
    assertThat(last.interest()).isCloseTo(owed * 0.05, within(1e-9));
    assertThat(last.depreciation()).isCloseTo(750, within(1e-9));
    assertThat(last.tax()).isCloseTo(0.25 * (150 + 600 - owed * 0.05 - 750), within(1e-9));
  }

  /** Borrowing at the discount rate without tax is worth nothing; with tax interest is deducted. */
  @Test
  void aLoanAtTheDiscountRateChangesNothingBeforeTax() {
    Cash income = Cash.yearly(0, 400, 500, 600);
    double own =
        new AfterTax(loans(0, 0.09, 3), Depreciation.none(), 0)
            .cash(1_000, 0, 3, income)
            .netPresentValue(0.09);
    double borrowed =
        new AfterTax(loans(700, 0.09, 3), Depreciation.none(), 0)
            .cash(1_000, 0, 3, income)
            .netPresentValue(0.09);
    assertThat(borrowed).isCloseTo(own, within(1e-9));
    double taxed =
        new AfterTax(loans(700, 0.09, 3), Depreciation.none(), 0.25)
            .cash(1_000, 0, 3, income)
            .netPresentValue(0.09);
    double taxedOwn =
        new AfterTax(loans(0, 0.09, 3), Depreciation.none(), 0.25)
            .cash(1_000, 0, 3, income)
            .netPresentValue(0.09);
    assertThat(taxed).isGreaterThan(taxedOwn + 10);
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> new Loan(-1, 0.1, 5)).hasMessageContaining("principal is -1");
    assertThatThrownBy(() -> new Loan(1, Double.NaN, 5)).hasMessageContaining("rate is NaN");
    assertThatThrownBy(() -> new Loan(1, 0.1, 0)).hasMessageContaining("years is 0");
    assertThatThrownBy(() -> Depreciation.straightLine(0, false))
        .hasMessageContaining("years is 0");
    assertThatThrownBy(() -> Depreciation.decliningBalance(3, 4, false))
        .hasMessageContaining("factor is 4");
  }

  private static Loans loans(double principal, double rate, int years) {
    return new Loans(List.of(new Loan(principal, rate, years)));
  }
}
