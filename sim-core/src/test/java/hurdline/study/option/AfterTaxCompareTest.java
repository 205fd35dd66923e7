package hurdline.study.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.RunFact;
import hurdline.answer.TornadoRow;
import hurdline.plant.Change;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * Purchases after their loan and tax, beside what they are worth before; by hand in after_tax.md.
 */
class AfterTaxCompareTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/after_tax.yaml"));
  private static final double AFTER = 367.9574970484;
  private static final double BEFORE = -1_000 + 800 / 1.1 + 1_000 / 1.21;

  private static CompareAnswer compared(AtomicInteger simulated, String... keysAndValues) {
    List<Change> changes = new ArrayList<>();
    for (int at = 0; at < keysAndValues.length; at += 2) {
      changes.add(new Change.Value(keysAndValues[at], keysAndValues[at + 1]));
    }
    PlantChanges base = new PlantChanges(PlantChanges.baseName(), List.of(), changes);
    CompareAsk ask =
        new CompareAsk(
            List.of(),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            Optional.of(
                List.of(
                    InputRange.around("products.tow.price", 0.2),
                    InputRange.around("money.loan.rate", 0.2),
                    InputRange.around("money.tax.rate", 0.2))),
            List.of("options.dearer.cost", "money.tax.rate"),
            Optional.empty());
    return new Compare(SOURCE, base, ask, Studied.effort(1, 1))
        .simulate((done, of) -> simulated.set(done), () -> false)
        .orElseThrow();
  }

  private static double mean(CompareAnswer answer, Quantity quantity) {
    return answer.worth("dearer", quantity).orElseThrow().mean();
  }

  private static TornadoRow swing(CompareAnswer answer, String key) {
    return answer.further().tornado().stream()
        .filter(row -> row.input().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theOwnersMoneyIsWorthWhatFollowsByHand() {
    CompareAnswer answer = compared(new AtomicInteger());
    assertThat(mean(answer, Quantity.NET_PRESENT_VALUE)).isCloseTo(BEFORE, within(1e-6));
    assertThat(mean(answer, Quantity.NET_PRESENT_VALUE_AFTER_TAX)).isCloseTo(AFTER, within(1e-6));
    assertThat(mean(answer, Quantity.SIMPLE_PAYBACK)).isCloseTo(1.2, within(1e-9));
    assertThat(mean(answer, Quantity.PAYBACK_AFTER_TAX))
        .isCloseTo(1 + 67.7142857143 / 563.7142857143, within(1e-9));
    assertThat(answer.afterTax()).extracting(AfterTaxRow::year).containsExactly(1.0, 2.0);
    assertThat(answer.afterTax().get(0).tax()).isCloseTo(122, within(1e-9));
    assertThat(answer.afterTax().get(1).depreciation()).isCloseTo(2_000 / 3.0, within(1e-9));
    assertThat(answer.afterTax().get(1).left()).isCloseTo(563.7142857143, within(1e-9));
    RunFact.LoanAndTax said =
        answer.assumptions().stream()
            .filter(RunFact.LoanAndTax.class::isInstance)
            .map(RunFact.LoanAndTax.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(said.loanRate()).isCloseTo(0.1, within(1e-12));
    assertThat(said).isEqualTo(new RunFact.LoanAndTax(0.6, said.loanRate(), 2, 0.3, 3, 2, true));
  }

  @Test
  void aFileWithoutLoanAndTaxHasNoSuchFigures() {
    CompareAsk plain =
        new CompareAsk(
            List.of(),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            Optional.of(List.of(InputRange.around("products.tow.price", 0.2))),
            List.of("options.dearer.cost"),
            Optional.empty());
    CompareAnswer answer =
        new Compare(
                Studied.source(Path.of("../line-configs/exact/two_years.yaml")),
                PlantChanges.base(),
                plain,
                Studied.effort(1, 1))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    assertThat(answer.afterTax()).isEmpty();
    assertThat(answer.worth("dearer", Quantity.NET_PRESENT_VALUE_AFTER_TAX)).isEmpty();
    assertThat(answer.further().tornado().get(0).afterTax()).isNaN();
    assertThat(answer.further().breakEven().get(0).valueAfterTax()).isNaN();
    assertThat(answer.assumptions()).noneMatch(RunFact.LoanAndTax.class::isInstance);
  }

  /** Each end of the tornado is what a comparison of the changed plant gives. */
  @Test
  void endsOfTheTornadoAreThoseOfThePlantSimulatedThere() {
    CompareAnswer answer = compared(new AtomicInteger());
    for (String key : List.of("products.tow.price", "money.loan.rate", "money.tax.rate")) {
      TornadoRow row = swing(answer, key);
      assertThat(row.afterTax()).isCloseTo(AFTER, within(1e-6));
      CompareAnswer low = compared(new AtomicInteger(), key, "x0.8");
      assertThat(row.afterTaxAtLow())
          .as(key)
          .isCloseTo(mean(low, Quantity.NET_PRESENT_VALUE_AFTER_TAX), within(1e-6));
      CompareAnswer high = compared(new AtomicInteger(), key, "x1.2");
      assertThat(row.afterTaxAtHigh())
          .as(key)
          .isCloseTo(mean(high, Quantity.NET_PRESENT_VALUE_AFTER_TAX), within(1e-6));
      assertThat(row.swingAfterTax()).as(key).isGreaterThan(1);
    }
    assertThat(swing(answer, "money.loan.rate").swing()).as("before tax").isZero();
  }

  @Test
  void theBreakEvenAfterTaxIsWhereItIsWorthNothing() {
    CompareAnswer answer = compared(new AtomicInteger());
    BreakEvenRow cost =
        answer.further().breakEven().stream()
            .filter(row -> row.input().equals("options.dearer.cost"))
            .findFirst()
            .orElseThrow();
    assertThat(cost.valueAfterTax()).isGreaterThan(1_000);
    CompareAnswer there =
        compared(new AtomicInteger(), "options.dearer.cost", cost.valueAfterTax() + " USD");
    assertThat(mean(there, Quantity.NET_PRESENT_VALUE_AFTER_TAX)).isCloseTo(0, within(2.0));
    assertThat(Math.abs(cost.valueAfterTax() - cost.value()))
        .as("not the one before tax")
        .isGreaterThan(5);
    assertThat(cost.netPresentValueAfterTax()).isCloseTo(AFTER, within(1e-6));
  }

  /** Nor are searches said to be, which takes minutes where it is true; a longer life would be. */
  @Test
  void aSearchAlongACostOrATaxIsNotSaidToSimulate() {
    PlantChanges base = PlantChanges.base();
    List<CompareAnswer.Option> options =
        List.of(OptionPlants.joined("dearer", SOURCE.variants().with().options()));
    assertThat(
            new BreakEvens(
                    SOURCE,
                    base,
                    options,
                    List.of("options.dearer.cost", "options.dearer.salvage", "money.tax.rate"))
                .simulatedSearches())
        .isEmpty();
    assertThat(
            new BreakEvens(SOURCE, base, options, List.of("options.dearer.life"))
                .simulatedSearches())
        .hasSize(2);
  }

  /** Prices, loan and tax move nothing in the plant, so nothing is simulated for them. */
  @Test
  void nothingIsSimulatedForLoanAndTax() {
    AtomicInteger with = new AtomicInteger();
    compared(with);
    CompareAsk bare =
        new CompareAsk(
            List.of(),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            Optional.empty(),
            List.of(),
            Optional.empty());
    AtomicInteger without = new AtomicInteger();
    new Compare(SOURCE, PlantChanges.base(), bare, Studied.effort(1, 1))
        .simulate((done, of) -> without.set(done), () -> false)
        .orElseThrow();
    assertThat(with.get()).isEqualTo(without.get());
  }
}
