package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.TornadoRow;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import hurdline.study.option.InputRange;
import hurdline.study.option.Tornado;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** On what the worth of an option hangs, and where it is nothing. */
class HangsOnTest {
  private static final Path SMALL = Path.of("../line-configs/small.yaml");
  private static final String LESS_OVERHEAD =
      "\n  less_overhead:\n    cost: 6000 USD\n    life: 2 yr\n    salvage: 1000 USD\n"
          + "    with: {money: {overhead: 80000 USD/yr}}\n";

  /** 89 days of 10 000 USD a year, at a month of a twelfth of 365.25 days. */
  private static final double YEARLY = 10_000 * 89 / 365.25;

  /** What 1 USD at the end of each calendar is worth. */
  private static final double EACH =
      Math.pow(1.08, -89 / 365.25) + Math.pow(1.08, -1 - 89 / 365.25);

  private static PlantOrigin source() throws IOException {
    String text = Files.readString(SMALL).replace("discount_rate: 9 %/yr", "discount_rate: 8 %/yr");
    PlantFile file = PlantFile.of("small.yaml", text + LESS_OVERHEAD);
    return new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", file.warnings());
  }

  private static Compare asked(Optional<List<InputRange>> tornado, String... keys)
      throws IOException {
    CompareAsk ask =
        new CompareAsk(
            List.of("less_overhead"),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            tornado,
            Arrays.asList(keys),
            Optional.empty());
    return new Compare(source(), PlantChanges.base(), ask, Studied.effort(3, 2));
  }

  private static CompareAnswer simulated(Compare compare) {
    return compare.simulate((done, of) -> {}, () -> false).orElseThrow();
  }

  /** A calendar of 89 days at the beginning of each of two years. */
  private static double worth(double yearly, double cost) {
    return -cost + yearly * EACH + 1_000 / (1.08 * 1.08);
  }

  @Test
  void eachEndOfAnInputIsWorthWhatIsDoneByHand() throws IOException {
    CompareAnswer answer =
        simulated(
            asked(
                Optional.of(
                    List.of(
                        InputRange.around("money.overhead", 0.2),
                        new InputRange("money.discount_rate", "0 %/yr", "8 %/yr"),
                        InputRange.around("options.less_overhead.cost", 0.5)))));
    double as = answer.worth("less_overhead", Quantity.NET_PRESENT_VALUE).orElseThrow().mean();
    assertThat(as).isCloseTo(worth(YEARLY, 6_000), within(0.01));
    List<TornadoRow> rows = answer.further().tornado();
    assertThat(rows.get(0).netPresentValueAtLow())
        .isCloseTo(worth(0.8 * YEARLY, 6_000), within(0.01));
    assertThat(rows.get(0).netPresentValueAtHigh())
        .isCloseTo(worth(1.2 * YEARLY, 6_000), within(0.01));
    assertThat(rows.get(0).low()).isEqualTo(0.8);
    assertThat(rows.get(0).unit()).isEqualTo("x");
    assertThat(rows.get(1).netPresentValueAtLow()).isCloseTo(2 * YEARLY - 5_000, within(0.01));
    assertThat(rows.get(1).netPresentValueAtHigh()).isCloseTo(as, within(0.01));
    assertThat(rows.get(1).unit()).isEqualTo("%/yr");
    assertThat(rows.get(2).netPresentValueAtHigh()).isCloseTo(worth(YEARLY, 9_000), within(0.01));
  }

  @Test
  void theCostAtWhichItIsWorthNothingIsWhatItBringsInAndTakesNoSimulation() throws IOException {
    int[] simulations = {0};
    CompareAnswer answer =
        asked(Optional.empty(), "options.less_overhead.cost")
            .simulate((done, of) -> simulations[0] = done, () -> false)
            .orElseThrow();
    BreakEvenRow row = answer.further().breakEven().get(0);
    double brought = worth(YEARLY, 0);
    assertThat(row.found()).isTrue();
    assertThat(row.value()).isCloseTo(brought, within(2e-3 * brought));
    assertThat(row.unit()).isEqualTo("USD");
    assertThat(row.inFile()).isEqualTo(6_000);
    assertThat(simulations[0])
        .as(
            "base and option three times, and two lives of two calendars of the base, priced again for the option")
        .isEqualTo(6 + 4);
  }

  @Test
  void aKeyThatBothPlantsHaveIsScaledInBoth() throws IOException {
    BreakEvenRow row =
        simulated(asked(Optional.empty(), "money.overhead")).further().breakEven().get(0);
    double factor = (6_000 - 1_000 / (1.08 * 1.08)) / (YEARLY * EACH);
    assertThat(row.value()).isCloseTo(90_000 * factor, within(2e-3 * 90_000 * factor));
    assertThat(row.unit()).isEqualTo("USD/yr");
    assertThat(row.from()).isLessThan(row.value());
  }

  @Test
  void whatItDoesNotHangOnHasNoBreakEven() throws IOException {
    BreakEvenRow row =
        simulated(asked(Optional.empty(), "money.wage")).further().breakEven().get(0);
    assertThat(row.found()).isFalse();
    assertThat(row.value()).isNaN();
    assertThat(row.netPresentValue()).isCloseTo(worth(YEARLY, 6_000), within(0.01));
    assertThat(row.from()).isLessThan(2);
    assertThat(row.to()).isGreaterThan(300);
  }

  @Test
  void whatAnotherOptionCostsIsNotAskedOfAnOption() throws IOException {
    CompareAsk ask =
        new CompareAsk(
            List.of("less_overhead", "bigger_mill"),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            Optional.empty(),
            List.of("options.less_overhead.cost", "options.*.cost"),
            Optional.empty());
    CompareAnswer answer =
        simulated(new Compare(source(), PlantChanges.base(), ask, Studied.effort(3, 2)));
    assertThat(answer.further().breakEven())
        .extracting(BreakEvenRow::option, BreakEvenRow::input)
        .containsExactly(
            tuple("less_overhead", "options.less_overhead.cost"),
            tuple("less_overhead", "options.*.cost"),
            tuple("bigger_mill", "options.*.cost"));
    assertThatThrownBy(() -> asked(Optional.empty(), "options.bigger_mill.cost"))
        .hasMessage(
            "small.yaml: options.bigger_mill.cost is of an option that is not compared;"
                + " expected a key of the plant or of a compared option");
  }

  @Test
  void severalValuesAtOnceAreToldAsAFactor() throws IOException {
    BreakEvenRow row =
        simulated(asked(Optional.empty(), "products.*.price")).further().breakEven().get(0);
    assertThat(row.unit()).isEqualTo("x");
    assertThat(row.inFile()).isEqualTo(1);
  }

  @Test
  void aKeyThatLeadsNowhereIsToldBeforeAnythingIsSimulated() {
    assertThatThrownBy(() -> asked(Optional.empty(), "money.overhed"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("money.overhed")
        .hasMessageContaining("\"overhead\"");
    assertThatThrownBy(
            () -> asked(Optional.of(List.of(InputRange.around("products.fibre.price", 0.2)))))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("products.fibre.price");
    assertThatThrownBy(
            () -> asked(Optional.of(List.of(new InputRange("money.wage", "24 USD/h", "24 USD/h")))))
        .hasMessage("small.yaml: money.wage changes nothing; expected an input that does");
  }

  /**
   * The option sets the key, so at either end both plants have that value and nothing is left to be
   * worth anything.
   */
  @Test
  void aKeyThatTheOptionSetsIsRefusedWhereBothEndsTakeItsPlace() throws IOException {
    assertThatThrownBy(
            () ->
                asked(
                    Optional.of(
                        List.of(new InputRange("money.overhead", "70000 USD/yr", "90000 USD/yr")))))
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            "small.yaml: \"base\" and \"less_overhead\" are the same plant at both ends of money.overhead, for the varied"
                + " values take the place of what makes them different; expected another key, or a share such as"
                + " money.overhead=20%");
    asked(Optional.of(List.of(InputRange.around("money.overhead", 0.2))));
  }

  @Test
  void theUsualInputsArePricesYieldsEnergyWagesAndStops() {
    PlantOrigin example = Studied.source(Studied.EXAMPLE);
    assertThat(Tornado.usual(example.variants().with()))
        .extracting(InputRange::key)
        .containsExactly(
            "products.long_fiber_bales.price",
            "products.short_fiber_bales.price",
            "products.coarse_hurd.price",
            "products.medium_hurd.price",
            "products.fine_hurd.price",
            "products.dust.price",
            "products.trash.price",
            "products.motes.price",
            "products.lint.price",
            "money.crop_prices.stalk",
            "money.electricity.*",
            "money.wage",
            "deliveries.stalk.fields.*.yield",
            "machines.*.stops.*.every",
            "machines.*.stops.*.lasts");
  }

  @Test
  void theUsualInputsCanAllBePut() throws IOException {
    CompareAnswer answer = simulated(asked(Optional.of(List.of())));
    assertThat(answer.further().tornado())
        .extracting(TornadoRow::input)
        .contains("products.fiber.price", "machines.*.stops.*.every");
  }
}
