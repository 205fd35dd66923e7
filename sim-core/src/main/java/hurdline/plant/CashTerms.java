package hurdline.plant;

import java.util.Optional;

/**
 * How the plant is paid for and taxed, for planning, before an accountant has looked at it.
 *
 * @param assets what the plant as it stands cost; absent where only purchases are looked at
 * @param loan absent where nothing is borrowed
 * @param tax absent where none is looked at
 */
public record CashTerms(Optional<Assets> assets, Optional<Borrowing> loan, Optional<Tax> tax) {
  /** Margins alone are looked at. */
  public static CashTerms none() {
    return new CashTerms(Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Whether there is anything to be said beside the margin. */
  public boolean isGiven() {
    return loan.isPresent() || tax.isPresent();
  }

  /**
   * What the plant as it stands cost.
   *
   * @param ageYr whole years since it was bought, as the calendar begins
   */
  public record Assets(double cost, int ageYr) {
    public Assets {
      Check.above0("cost", cost);
      Check.count(0, "ageYr", ageYr);
    }
  }

  /**
   * A loan in even payments at the ends of years.
   *
   * @param share of what is bought that is borrowed; 0 where an option is paid in cash
   * @param ratePerYr share a year
   */
  public record Borrowing(double share, double ratePerYr, int years) {
    public Borrowing {
      Check.share("share", share);
      Check.notBelow0("ratePerYr", ratePerYr);
      Check.count(1, "years", years);
    }
  }

  /**
   * Tax on what is earned.
   *
   * @param share of taxed income
   * @param writeOff absent where nothing is written off
   */
  public record Tax(double share, Optional<WriteOff> writeOff) {
    public Tax {
      Check.part("share", share);
    }
  }

  /**
   * Depreciation.
   *
   * @param years over which a cost is written off
   * @param factor of declining balance; 0 for straight line
   * @param halfFirst whether the first year counts half
   */
  public record WriteOff(int years, double factor, boolean halfFirst) {
    public WriteOff {
      Check.count(1, "years", years);
      Check.notBelow0("factor", factor);
    }
  }
}
