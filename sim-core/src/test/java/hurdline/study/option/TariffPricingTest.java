package hurdline.study.option;

import static hurdline.study.Studied.simulated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import hurdline.study.replicate.ReplicationResults;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Electricity by hours is priced alike whether a plant is simulated again or not. */
class TariffPricingTest {
  private static PlantOrigin exact(String name) {
    return Studied.source(Path.of("../line-configs/exact/" + name + ".yaml"));
  }

  /** All prices at once: what is paid for electricity grows alike, whatever its periods. */
  @ParameterizedTest
  @ValueSource(strings = {"tariff_night", "ratchet"})
  void aStarScalesEveryPriceAndNoRatchet(String name) {
    PlantOrigin source = Studied.source(Path.of("../line-configs/exact/" + name + ".yaml"));
    Plant base = source.variants().with();
    Plant dearer = source.variants().with(new Change.Value("money.electricity.*", "x1.2"));
    ReplicationResults before = simulated(base);
    double due = 1.2 * electricity(before);
    assertThat(electricity(simulated(dearer))).isCloseTo(due, within(1e-9 * due)).isPositive();
    assertThat(electricity(Repricing.of(before, base, dearer).orElseThrow()))
        .isCloseTo(due, within(1e-9 * due));
    assertThat(source.variants().with(new Change.Value("money.electricity.*", "x1")))
        .isEqualTo(base);
  }

  private static double electricity(ReplicationResults figures) {
    return figures.mean(Measure.MONEY_ELECTRICITY.of());
  }

  @ParameterizedTest
  @CsvSource({
    "tariff_night, energy, x1.3",
    "tariff_night, demand, 11 USD/kW/month",
    "tariff_night, periods.summer.energy, 0.17 USD/kWh",
    "tariff_night, periods.night.energy, 0 USD/kWh",
    "tariff_night, periods.*.energy, x0.7",
    "tariff_night, periods.summer.demand, x2",
    "tariff_night, periods.*.demand, x1.1",
    "ratchet, demand, x1.2"
  })
  void pricesMoveWithoutAnotherSimulation(String plant, String key, String value) {
    PlantOrigin source = exact(plant);
    Plant base = source.variants().with();
    Plant dearer = source.variants().with(new Change.Value("money.electricity." + key, value));
    ReplicationResults before = simulated(base);
    double priced = electricity(Repricing.of(before, base, dearer).orElseThrow());
    assertThat(priced).isCloseTo(electricity(simulated(dearer)), within(1e-9 * priced));
    assertThat(Math.abs(priced - electricity(before))).as("the price matters").isGreaterThan(1);
  }

  @ParameterizedTest
  @CsvSource({
    "tariff_night, money.electricity.periods.night.from, '\"21:00\"'",
    "tariff_night, money.electricity.periods.summer.months, '[May]'",
    "tariff_night, base_loads.lights.power, 9 kW",
    "ratchet, money.electricity.ratchets.0.at_least, 90 %",
    "ratchet, money.electricity.ratchets.0.before, 300 kW"
  })
  void anotherContractIsSimulated(String plant, String key, String value) {
    PlantOrigin source = exact(plant);
    Plant base = source.variants().with();
    Plant other = source.variants().with(new Change.Value(key, value));
    ReplicationResults before = simulated(base);
    assertThat(Repricing.of(before, base, other)).isEmpty();
    assertThat(electricity(simulated(other))).isNotEqualTo(electricity(before));
  }

  /**
   * 10 kW in every month and 110 in December: the first year is billed eleven months and that, the
   * second three months at 80 % of it and nine at their own.
   */
  @Test
  void aRatchetBillsTheYearInWhichItsMonthLies() {
    Plant plant =
        exact("ratchet")
            .variants()
            .with(
                new Change.Value("calendar.to", "2028-12-31"),
                new Change.Value(
                    "season",
                    "[{line: stalk_line, from: 2027-12-06, to: 2027-12-06, shifts: [day]}]"),
                new Change.Value("money.electricity.ratchets", "[{at_least: 80 %, of_last: 3}]"));
    double[] demand = simulated(plant).byYear().series(Measure.MONEY_DEMAND.of());
    assertThat(demand[0]).isCloseTo(10 * (11 * 10 + 110), within(1e-6));
    assertThat(demand[1]).isCloseTo(10 * (3 * 88 + 9 * 10), within(1e-6));
  }

  @Test
  void theTornadoHasEachKindOfPrice() {
    assertThat(Tornado.usual(exact("tariff_night").variants().with()))
        .extracting(InputRange::key)
        .containsSubsequence(
            "money.electricity.energy",
            "money.electricity.demand",
            "money.electricity.periods.*.energy",
            "money.electricity.periods.*.demand");
    assertThat(Tornado.usual(exact("ratchet").variants().with()))
        .extracting(InputRange::key)
        .contains("money.electricity.demand")
        .doesNotContain("money.electricity.*");
  }

  /** By hand in ratchet.md: the second calendar remembers what the first has reached. */
  @Test
  void aRatchetReachesFromOneCalendarOfALifeIntoTheNext() {
    CompareAsk ask =
        new CompareAsk(
            List.of(),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            Optional.empty(),
            List.of(),
            Optional.empty());
    CompareAnswer answer =
        new Compare(exact("ratchet"), PlantChanges.base(), ask, Studied.effort(1, 2))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    assertThat(answer.worth("smaller_motor", Quantity.NET_PRESENT_VALUE).orElseThrow().mean())
        .isCloseTo(1_780, within(1e-6));
  }
}
