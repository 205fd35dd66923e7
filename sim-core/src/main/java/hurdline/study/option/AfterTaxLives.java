package hurdline.study.option;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.CompareAnswer;
import hurdline.economics.AfterTax;
import hurdline.economics.Cash;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The service lives of an option after its loan and tax, beside those before. */
final class AfterTaxLives {
  private final CompareAnswer.Option option;
  private final double discountPerYr;
  private final AfterTax terms;
  private final List<Cash> incomes;

  AfterTaxLives(
      CompareAnswer.Option option, double discountPerYr, AfterTax terms, OptionCashFlow flow) {
    this.option = option;
    this.discountPerYr = discountPerYr;
    this.terms = terms;
    incomes = flow.incomes();
  }

  /** What the owner pays and gets in each life. */
  List<Cash> lives() {
    return incomes.stream()
        .map(income -> terms.cash(option.cost(), option.salvage(), option.lifeYr(), income))
        .toList();
  }

  /** The net present value of each life. */
  double[] values() {
    return lives().stream().mapToDouble(cash -> cash.netPresentValue(discountPerYr)).toArray();
  }

  /** Each year of the life, on average over the lives. */
  List<AfterTaxRow> rows(String currency) {
    List<List<AfterTax.Year>> lives =
        incomes.stream()
            .map(in -> terms.years(option.cost(), option.salvage(), option.lifeYr(), in))
            .toList();
    List<AfterTaxRow> rows = new ArrayList<>();
    for (int k = 0; k < lives.get(0).size(); k++) {
      int at = k;
      List<AfterTax.Year> years = lives.stream().map(life -> life.get(at)).toList();
      rows.add(
          new AfterTaxRow(
              option.name(),
              years.get(0).endYr(),
              currency,
              mean(years, AfterTax.Year::income),
              mean(years, AfterTax.Year::salvage),
              mean(years, AfterTax.Year::interest),
              mean(years, AfterTax.Year::repayment),
              mean(years, AfterTax.Year::depreciation),
              mean(years, AfterTax.Year::tax),
              mean(years, AfterTax.Year::left)));
    }
    return rows;
  }

  private static double mean(List<AfterTax.Year> years, ToDoubleFunction<AfterTax.Year> part) {
    return years.stream().mapToDouble(part).average().orElse(Double.NaN);
  }
}
