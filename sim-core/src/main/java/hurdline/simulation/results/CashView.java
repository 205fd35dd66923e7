package hurdline.simulation.results;

import hurdline.compiled.Periods;
import hurdline.economics.AfterTax;
import hurdline.measure.Measure;
import hurdline.plant.CashTerms;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import java.util.Optional;

/**
 * What the margin leaves after the plant's loan and tax, beside the margin and for planning: an
 * accountant has not looked at it.
 *
 * <p>In year k since the plant was bought the tax is t·(margin − Iₖ − Dₖ), with the loan's interest
 * I, with that on advances to growers, and the depreciation D; below 0 it lowers the tax on other
 * income. What is left is the margin less interest, repayment and tax.
 */
final class CashView {
  private final Periods years;
  private final Optional<CashTerms.Assets> assets;
  private final AfterTax terms;

  CashView(Plant plant, Periods years) {
    this.years = years;
    CashTerms cash = plant.money().map(Money::cash).orElse(CashTerms.none());
    boolean given = cash.isGiven() && plant.calendar().taxYears().isPresent();
    assets = cash.assets().filter(any -> given);
    terms = TaxTerms.of(cash, assets.map(CashTerms.Assets::cost).orElse(0.0));
  }

  /**
   * The years of the horizon that have ended, summed up; nothing where the file does not ask.
   *
   * @param margin up to now
   * @param onAdvances interest on what growers were paid and have not earned, beside the loan's
   */
  void put(OutcomeWriter tally, double margin, double onAdvances, double nowS) {
    if (assets.isEmpty()) {
      return;
    }
    double interest = onAdvances;
    double repayment = 0;
    double writtenOff = 0;
    for (int year = 0; year < years.count() && years.toS(year) <= nowS; year++) {
      int age = assets.get().ageYr() + year + 1;
      interest += terms.loans().interest(age);
      repayment += terms.loans().repayment(age);
      writtenOff += assets.get().cost() * terms.depreciation().share(age);
    }
    double tax = terms.taxRate() * (margin - interest - writtenOff);
    tally.put(Measure.CASH_INTEREST, interest);
    tally.put(Measure.CASH_REPAYMENT, repayment);
    tally.put(Measure.CASH_DEPRECIATION, writtenOff);
    tally.put(Measure.CASH_TAX, tax);
    tally.put(Measure.CASH_LEFT, margin - interest - repayment - tax);
  }
}
