package hurdline.simulation.results;

import hurdline.economics.AfterTax;
import hurdline.economics.Depreciation;
import hurdline.economics.Loan;
import hurdline.plant.CashTerms;

/** The terms of a plant file, applied to what was bought. */
public final class TaxTerms {
  private TaxTerms() {}

  /** Loan, depreciation and tax of something that cost so much. */
  public static AfterTax of(CashTerms terms, double cost) {
    return new AfterTax(
        terms
            .loan()
            .map(loan -> new Loan(cost * loan.share(), loan.ratePerYr(), loan.years()))
            .orElse(new Loan(0, 0, 1)),
        terms
            .tax()
            .flatMap(CashTerms.Tax::writeOff)
            .map(TaxTerms::depreciation)
            .orElse(Depreciation.none()),
        terms.tax().map(CashTerms.Tax::share).orElse(0.0));
  }

  private static Depreciation depreciation(CashTerms.WriteOff of) {
    return of.factor() > 0
        ? Depreciation.decliningBalance(of.years(), of.factor(), of.halfFirst())
        : Depreciation.straightLine(of.years(), of.halfFirst());
  }
}
