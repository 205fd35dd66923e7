package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Variants;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Stores of products, in plants of bales no two of which are alike. */
class FinishedGoodsTest {
  private static final Variants STALK =
      PlantFile.read(Path.of("../line-configs/stalk.yaml")).variants();
  private static final List<String> PRODUCTS = List.of("long_fiber", "tow");
  private static final String CLEAN = "{component: hurd, line: [[2 %, 1.1], [10 %, 0.7]]}";

  private static Outcome year(Stream<Change> changes) {
    return Ready.replication(STALK.with(changes.toArray(Change[]::new)))
        .run(new RandomStreams(1), 1, null);
  }

  private static Stream<Change> paidByHurd() {
    return PRODUCTS.stream()
        .map(product -> new Change.Value("products." + product + ".cleanliness", CLEAN));
  }

  private static Stream<Change> stored(String holds, String pickUps) {
    return Stream.concat(
        Stream.of(new Change.Value("stores", "{shed: {holds: " + holds + "}}")),
        PRODUCTS.stream()
            .flatMap(
                product ->
                    Stream.of(
                        new Change.Value("products." + product + ".store", "shed"),
                        new Change.Value("products." + product + ".pick_ups", pickUps))));
  }

  private static double of(Outcome year, Measure measure, String... names) {
    return year.value(measure.of(names));
  }

  /** What has not left is worth what it would sell for, so that nothing but the day is another. */
  @Test
  void aStoreThatHoldsNobodyEarnsWhatAPlantWithoutOneDoes() {
    for (Stream<Change> price : List.of(Stream.<Change>of(), paidByHurd())) {
      List<Change> priced = price.toList();
      Outcome without = year(priced.stream());
      Outcome with =
          year(
              Stream.concat(
                  priced.stream(),
                  stored("90000 t", "{days: [Wed], at: \"09:00\", load: 9 t, at_most: 1}")));
      for (String product : PRODUCTS) {
        assertThat(of(with, Measure.PRODUCT_LEFT, product)).isGreaterThan(20);
        double earned = of(with, Measure.PRODUCT_REVENUE, product);
        double worth = of(with, Measure.PRODUCT_STOCK_WORTH, product);
        double whole = of(without, Measure.PRODUCT_REVENUE, product);
        assertThat(earned + worth).isCloseTo(whole, within(1e-9 * whole));
        assertThat(earned).isGreaterThan(0.1 * whole);
      }
      assertThat(of(with, Measure.MONEY_PRODUCT_STOCK))
          .isGreaterThan(0.02 * of(without, Measure.MONEY_REVENUE));
      assertThat(beforeFreight(with))
          .isCloseTo(beforeFreight(without), within(1e-9 * of(without, Measure.MONEY_REVENUE)));
      assertThat(of(with, Measure.STORE_HOURS_FULL, "shed")).isZero();
    }
  }

  private static double beforeFreight(Outcome year) {
    return of(year, Measure.MONEY_MARGIN) + of(year, Measure.MONEY_FREIGHT);
  }

  /** A store that takes a week's packages holds the line; the more room, the less. */
  @Test
  void aFullStoreHoldsTheLineForTheHoursThatItIsFull() {
    String rare = "{days: [Wed], at: \"09:00\", load: 9 t, at_most: 1}";
    double fed = Double.POSITIVE_INFINITY;
    double held = -1;
    for (String holds : List.of("90 t", "30 t", "12 t")) {
      Outcome year = year(stored(holds, rare));
      double scheduled = of(year, Measure.LINE_HOURS_SCHEDULED, "stalk_line");
      double hours = of(year, Measure.LINE_HOURS_LIMITED_BY, "stalk_line", "no_room.shed");
      assertThat(hours).isGreaterThan(held).isLessThan(scheduled);
      assertThat(of(year, Measure.MASS_FED, "stalk")).isLessThan(fed);
      assertThat(of(year, Measure.STORE_HOURS_FULL, "shed")).isGreaterThan(hours);
      held = hours;
      fed = of(year, Measure.MASS_FED, "stalk");
    }
  }
}
