package hurdline.simulation.results;

import hurdline.economics.AfterTax;
import hurdline.economics.Depreciation;
import hurdline.economics.Loan;
import hurdline.economics.Loans;
import hurdline.plant.CashTerms;
import hurdline.plant.Option;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The terms of a plant file, applied to what was bought. */
public final class TaxTerms {
  private TaxTerms() {}

  /** Loan, depreciation and tax of something that cost so much. */
  public static AfterTax of(CashTerms terms, double cost) {
    return new AfterTax(
        loans(Stream.of(loan(terms.loan(), cost))), depreciation(terms), taxRate(terms));
  }

  /** The same of options bought together, each with a loan of its own or the plant's. */
  public static AfterTax of(CashTerms terms, List<Option> bought) {
    return new AfterTax(
        loans(bought.stream().map(part -> loan(part.loan().or(terms::loan), part.cost()))),
        depreciation(terms),
        taxRate(terms));
  }

  private static Loans loans(Stream<Optional<Loan>> each) {
    return new Loans(each.flatMap(Optional::stream).toList());
  }

  private static Optional<Loan> loan(Optional<CashTerms.Borrowing> of, double cost) {
    return of.map(loan -> new Loan(cost * loan.share(), loan.ratePerYr(), loan.years()));
  }

  private static double taxRate(CashTerms terms) {
    return terms.tax().map(CashTerms.Tax::share).orElse(0.0);
  }

  private static Depreciation depreciation(CashTerms terms) {
    return terms
        .tax()
        .flatMap(CashTerms.Tax::writeOff)
        .map(TaxTerms::depreciation)
        .orElse(Depreciation.none());
  }

  private static Depreciation depreciation(CashTerms.WriteOff of) {
    return of.factor() > 0
        ? Depreciation.decliningBalance(of.years(), of.factor(), of.halfFirst())
        : Depreciation.straightLine(of.years(), of.halfFirst());
  }
}
