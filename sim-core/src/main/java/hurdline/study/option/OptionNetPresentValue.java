package hurdline.study.option;

import hurdline.answer.CompareAnswer;
import hurdline.plant.Change;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import java.util.Optional;

/**
 * What options are worth with something changed in base and option alike, on the same chance as the
 * comparison itself: what changes only the terms of an option costs no simulate.
 */
public final class OptionNetPresentValue {
  private final OptionPlants plants;
  private final ServiceLifeYears years;

  public OptionNetPresentValue(OptionPlants plants, ServiceLifeYears years) {
    this.plants = plants;
    this.years = years;
  }

  /**
   * The net present values of lives, of which the mean is what the option is worth.
   *
   * @return empty if stop was asked for before both plants were whole
   * @throws hurdline.plant.ProblemsException if a changed plant has problems
   */
  Optional<double[]> values(String option, Change... change) {
    Plant base = plants.base(change);
    CompareAnswer.Option terms = OptionPlants.joined(option, base.options());
    return years
        .of(base, plants.of(option, change), terms.lifeYr())
        .map(margin -> new OptionCashFlow(terms, base.money().orElseThrow(), margin).values());
  }

  /** What asks for the worth of lives, before tax or after. */
  interface Worth {
    Optional<double[]> of(String option, Change... change);
  }

  /** Whether the plant as it stands says how the purchase of an option is paid for or taxed. */
  boolean isAfterTaxAsked(String option) {
    return Financing.of(option, plants.base()).isGiven();
  }

  /**
   * The same after the loan on the option and tax.
   *
   * @throws hurdline.plant.ProblemsException if a changed plant has problems
   */
  Optional<double[]> afterTax(String option, Change... change) {
    Plant base = plants.base(change);
    Money money = base.money().orElseThrow();
    CompareAnswer.Option terms = OptionPlants.joined(option, base.options());
    return years
        .of(base, plants.of(option, change), terms.lifeYr())
        .map(
            margin ->
                new AfterTaxLives(
                        terms,
                        money.discountPerYr(),
                        Financing.of(option, base).terms(),
                        new OptionCashFlow(terms, money, margin))
                    .values());
  }
}
