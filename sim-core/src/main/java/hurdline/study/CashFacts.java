package hurdline.study;

import hurdline.answer.Fact;
import hurdline.answer.RunFact;
import hurdline.plant.CashTerms;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import java.util.Optional;

/** How the view after loan and tax is made. */
public final class CashFacts {
  private CashFacts() {}

  /** Empty where the file has neither loan nor tax. */
  public static Optional<Fact> of(Plant plant) {
    return plant.money().map(Money::cash).filter(CashTerms::isGiven).map(CashFacts::fact);
  }

  private static Fact fact(CashTerms cash) {
    Optional<CashTerms.WriteOff> writeOff = cash.tax().flatMap(CashTerms.Tax::writeOff);
    return new RunFact.LoanAndTax(
        cash.loan().map(CashTerms.Borrowing::share).orElse(0.0),
        cash.loan().map(CashTerms.Borrowing::ratePerYr).orElse(0.0),
        cash.loan().map(CashTerms.Borrowing::years).orElse(0),
        cash.tax().map(CashTerms.Tax::share).orElse(0.0),
        writeOff.map(CashTerms.WriteOff::years).orElse(0),
        writeOff.map(CashTerms.WriteOff::factor).orElse(0.0),
        writeOff.map(CashTerms.WriteOff::halfFirst).orElse(false));
  }
}
