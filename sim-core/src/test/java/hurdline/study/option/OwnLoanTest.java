package hurdline.study.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareFact;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.RunFact;
import hurdline.answer.TornadoRow;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Purchases that are financed by loans of their own; by hand in own_loan.md. */
class OwnLoanTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/own_loan.yaml"));
  private static final double FEWER = 249.7679594056;
  private static final String RATE = "options.fewer_hands.loan.rate";

  private static CompareAnswer compared(List<String> options, String... keysAndValues) {
    return compared(SOURCE, options, keysAndValues);
  }

  private static CompareAnswer compared(
      PlantOrigin source, List<String> options, String... keysAndValues) {
    List<Change> changes = new ArrayList<>();
    for (int at = 0; at < keysAndValues.length; at += 2) {
      changes.add(new Change.Value(keysAndValues[at], keysAndValues[at + 1]));
    }
    PlantChanges base = new PlantChanges(PlantChanges.baseName(), List.of(), changes);
    boolean further = options.equals(List.of("fewer_hands"));
    CompareAsk ask =
        new CompareAsk(
            options,
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            further
                ? Optional.of(
                    List.of(InputRange.around(RATE, 0.2), InputRange.around("money.wage", 0.2)))
                : Optional.empty(),
            further ? List.of(RATE, "options.fewer_hands.cost") : List.of(),
            Optional.empty());
    return new Compare(source, base, ask, Studied.effort(1, 1))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static double value(CompareAnswer answer, String option) {
    return answer.worth(option, Quantity.NET_PRESENT_VALUE_AFTER_TAX).orElseThrow().mean();
  }

  @Test
  void eachPurchaseHasItsOwnLoanOrThePlants() {
    CompareAnswer answer =
        compared(
            List.of("fewer_hands", "dearer", "both_at_the_bank", "fewer_hands+both_at_the_bank"));
    assertThat(value(answer, "fewer_hands")).isCloseTo(FEWER, within(1e-6));
    assertThat(value(answer, "dearer")).isCloseTo(228.0991735537, within(1e-6));
    assertThat(value(answer, "both_at_the_bank")).isCloseTo(252.2550177096, within(1e-6));
    assertThat(value(answer, "fewer_hands+both_at_the_bank"))
        .isCloseTo(502.0229771152, within(1e-6));
    assertThat(answer.worth("fewer_hands", Quantity.NET_PRESENT_VALUE).orElseThrow().mean())
        .as("before loan and tax")
        .isCloseTo(-1_000 + 640 / 1.1 + 840 / 1.21, within(1e-6));
    assertThat(answer.worth("fewer_hands", Quantity.PAYBACK_AFTER_TAX).orElseThrow().mean())
        .as("no money of the owner's own")
        .isZero();
    AfterTaxRow last =
        answer.afterTax().stream().filter(row -> row.year() == 2).findFirst().orElseThrow();
    assertThat(last.repayment()).isCloseTo(767.9881673965, within(1e-6));
    assertThat(last.left()).isCloseTo(-6.8677532554, within(1e-6));
    assertThat(answer.assumptions())
        .filteredOn(CompareFact.LoanOfOption.class::isInstance)
        .extracting(fact -> ((CompareFact.LoanOfOption) fact).option())
        .containsExactly("fewer_hands", "dearer");
  }

  /**
   * The cleaner half on its maker's terms: 40 of interest and 500 of repayment in the first year,
   * tax on 800 − 333.33 − 40. With the belt interest 90, tax on 1,440 − 666.67 − 90 and so on: what
   * the two are worth alone.
   */
  @Test
  void twoPurchasesTogetherHaveEachTheirOwnLoan() {
    CompareAnswer answer =
        compared(
            List.of("fewer_hands", "dearer", "fewer_hands+dearer"),
            "options.dearer.loan",
            "{share: 50 %, rate: 8 %/yr, term: 1 yr}");
    double first = 800 - 540 - 0.3 * (800 - 1_000.0 / 3 - 40);
    double second = 800 - 0.3 * (800 - 2_000.0 / 3);
    double cleaner = -500 + first / 1.1 + second / 1.21;
    assertThat(value(answer, "dearer")).isCloseTo(cleaner, within(1e-6));
    double tax1 = 0.3 * (1_440 - 90 - 2_000.0 / 3);
    double year1 = 1_440 - 90 - 732.0118326037 - tax1;
    double interest2 = 0.05 * 767.9881673965;
    double tax2 = 0.3 * (1_440 + 200 - interest2 - 4_000.0 / 3);
    double year2 = 1_440 + 200 - interest2 - 767.9881673965 - tax2;
    assertThat(value(answer, "fewer_hands+dearer"))
        .isCloseTo(-500 + year1 / 1.1 + year2 / 1.21, within(1e-6))
        .isCloseTo(FEWER + cleaner, within(1e-6));
  }

  /** Each end is what a comparison of the changed plant gives. */
  @Test
  void tornadoAndBreakEvenGoByTheLoanOfTheOption() {
    CompareAnswer answer = compared(List.of("fewer_hands"));
    for (TornadoRow row : answer.further().tornado()) {
      CompareAnswer low = compared(List.of("fewer_hands"), row.input(), "x0.8");
      CompareAnswer high = compared(List.of("fewer_hands"), row.input(), "x1.2");
      assertThat(row.afterTax()).isCloseTo(FEWER, within(1e-6));
      assertThat(row.afterTaxAtLow())
          .as(row.input())
          .isCloseTo(value(low, "fewer_hands"), within(1e-6));
      assertThat(row.afterTaxAtHigh())
          .as(row.input())
          .isCloseTo(value(high, "fewer_hands"), within(1e-6));
      assertThat(row.swingAfterTax()).as(row.input()).isGreaterThan(5);
    }
    BreakEvenRow rate = answer.further().breakEven().get(0);
    CompareAnswer there = compared(List.of("fewer_hands"), RATE, rate.valueAfterTax() + " %/yr");
    assertThat(rate.unit()).isEqualTo("%/yr");
    assertThat(value(there, "fewer_hands")).isCloseTo(0, within(2.0));
  }

  /** The view is there for what has a loan of its own, and for nothing else. */
  @Test
  void withoutALoanOrATaxOfThePlantsAnOptionsLoanIsSeenAlone() throws IOException {
    String text =
        Files.readString(Path.of("../line-configs/exact/own_loan.yaml"))
            .replaceAll("(?m)^  (loan|tax): .*\n", "")
            .replace("share: 100 %", "share: 50 %");
    PlantFile file = PlantFile.of("one.yaml", text);
    PlantOrigin source =
        new PlantOrigin(file.variants(), "one.yaml", file.contentHash(), "0", List.of());
    CompareAnswer answer = compared(source, List.of("fewer_hands", "both_at_the_bank"));
    assertThat(value(answer, "fewer_hands"))
        .isCloseTo(-500 + 640 / 1.1 + 840 / 1.21 - paid(500), within(1e-6));
    assertThat(answer.worth("both_at_the_bank", Quantity.NET_PRESENT_VALUE_AFTER_TAX)).isEmpty();
    assertThat(answer.assumptions()).noneMatch(RunFact.LoanAndTax.class::isInstance);
  }

  @Test
  void anotherLoanIsNotSimulated() {
    Plant dearer = SOURCE.variants().with(new Change.Value(RATE, "7 %/yr"));
    Plant base = SOURCE.variants().with();
    assertThat(dearer).isNotEqualTo(base);
    assertThat(Repricing.areAlike(base, dearer)).isTrue();
  }

  /** What the maker gets of a loan, at the discount rate: two payments and the rest. */
  private static double paid(double principal) {
    double payment = principal * 0.05 / (1 - Math.pow(1.05, -4));
    double owed = (principal * 1.05 - payment) * 1.05;
    return payment / 1.1 + owed / 1.21;
  }
}
