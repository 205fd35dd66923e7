package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A press of two boxes whose change is over before the other can be full, so that packages are
 * counted and not simulated: figures must be those of simulating each. Stops in between and ends of
 * shifts within a change are where counting could slip.
 */
class CountedPackagesTest {
  private static final String STOPS =
      ", stops: {jam: {every: {exponential: {mean: 3 h}}, counted: running, lasts: {exponential: {mean: 10 min}}}}";

  /**
   * Four months with two or three stops a day, and now and then a shift that ends within a change.
   */
  @ParameterizedTest
  @CsvSource({"6 min, 1", "6 min, 2", "7.4 min, 3", "0 min, 4", "7.49 min, 5"})
  void countingGivesWhatSimulatingGives(String change, long seed) {
    Plant plant = plant(change, STOPS);
    Map<String, Double> simulated = values(plant, seed, true);
    Map<String, Double> counted = values(plant, seed, false);
    assertThat(counted.keySet()).isEqualTo(simulated.keySet());
    simulated.forEach(
        (measure, value) ->
            assertThat(counted.get(measure))
                .as(measure)
                .isCloseTo(value, within(1e-9 * Math.max(1, Math.abs(value)))));
    assertThat(counted.get("product.tow.packages")).isGreaterThan(4_000);
    if (!change.equals("0 min")) {
      assertThat(counted.get("line.stalk_line.hours.after_shift")).isGreaterThan(0.1);
    }
  }

  /**
   * 487 min a day fill a package in 7.5 min, on from where the day before left off: a change begun
   * less than its time ago runs on.
   */
  @ParameterizedTest
  @CsvSource({"7.4 min, 7.4", "5 min, 5", "0 min, 0"})
  void aChangeUnderWayAsTheShiftEndsIsFinished(String change, double changeMin) {
    Map<String, Double> got = values(plant(change, ""), 1, false);
    double after = 0;
    for (int day = 1; day <= 120; day++) {
      double sinceFullMin = 487 * day % 7.5;
      after +=
          Math.max(
              0,
              sinceFullMin > 0
                  ? changeMin - sinceFullMin
                  : 0); // full just now: its change waits for the morning
    }
    assertThat(got.get("product.tow.packages")).isEqualTo(Math.floor(487 * 120 / 7.5));
    assertThat(got.get("line.stalk_line.hours.after_shift")).isCloseTo(after / 60, within(1e-6));
  }

  private static Plant plant(String change, String stops) {
    return TestPlant.oneLine()
        .shift("2027-01-01", "2027-04-30", "06:00", "14:07")
        .says("machines", "{feeder: {kind: bale-feeder%s}, press: {kind: press, boxes: 2}}", stops)
        .says("products", "{tow: {package: pack, price: 300 USD/t}}")
        .says("packages", "{pack: {mass: 250 kg, change: %s, cost: 3 USD}}", change)
        .steps("feeder: {rate: 2 t/h, to: press}, press: {rate: 2 t/h, packs: tow}")
        .says("crews", "{stalk_line: {always: 2}}")
        .says("money", "{currency: USD, wage: 10 USD/h}")
        .plant();
  }

  private static Map<String, Double> values(Plant plant, long seed, boolean plainly) {
    Replication one = Ready.replication(plant);
    if (plainly) {
      one.withoutShortCuts();
    }
    Outcome outcome = one.run(new RandomStreams(seed), 1, null);
    Map<String, Double> got = new TreeMap<>();
    for (int k = 0; k < outcome.values().length; k++) {
      got.put(outcome.columns().get(k).name(), outcome.values()[k]);
    }
    return got;
  }
}
