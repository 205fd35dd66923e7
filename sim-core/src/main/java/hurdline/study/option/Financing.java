package hurdline.study.option;

import hurdline.answer.CompareFact;
import hurdline.answer.Fact;
import hurdline.economics.AfterTax;
import hurdline.plant.CashTerms;
import hurdline.plant.Money;
import hurdline.plant.Option;
import hurdline.plant.Plant;
import hurdline.simulation.results.TaxTerms;
import java.util.List;
import java.util.Optional;

/**
 * How the purchase of an option, or of several together, is paid for and taxed: each part by a loan
 * of its own or the plant's.
 */
public record Financing(CashTerms plant, List<Option> bought) {
  public Financing {
    bought = List.copyOf(bought);
  }

  /** Of an option, A+B both, of a plant. */
  public static Financing of(String option, Plant plant) {
    return new Financing(
        plant.money().map(Money::cash).orElse(CashTerms.none()),
        OptionPlants.joinedOf(option, plant.options()));
  }

  /** Whether anything is said of loan or tax. */
  boolean isGiven() {
    return plant.isGiven() || bought.stream().anyMatch(part -> part.loan().isPresent());
  }

  AfterTax terms() {
    return TaxTerms.of(plant, bought);
  }

  /** The loans that parts have of their own. */
  public List<Fact> facts() {
    return bought.stream().map(Financing::fact).flatMap(Optional::stream).toList();
  }

  private static Optional<Fact> fact(Option part) {
    return part.loan()
        .map(
            loan ->
                new CompareFact.LoanOfOption(
                    part.name(), loan.share(), loan.ratePerYr(), loan.years()));
  }
}
