package hurdline.study.option;

import static hurdline.study.Studied.simulated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.simulation.results.Outcome;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.ReplicationResults;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A shipped plant with all terms of growers and buyers at once: purge, area and advance, grades,
 * rejection, lots that fail, a market that fills up, trucks full by room, tarps, stores. Prices
 * that are changed without simulating again give what simulating again gives.
 */
class TermsPricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/quail-run.yaml"));
  private static final Plant BASE = SOURCE.variants().with();

  private static ReplicationResults before;

  @BeforeAll
  static void simulate() {
    before = simulated(BASE);
  }

  private static Plant with(String key, String value) {
    return SOURCE.variants().with(new Change.Value(key, value));
  }

  @Test
  void thePlantHasAllTerms() {
    for (String measure :
        new String[] {
          Measure.PRODUCT_PURGE_COST.of("lint"),
          Measure.MONEY_CROP_AREA.of("stalk"),
          Measure.MONEY_ADVANCE.of("stalk"),
          Measure.MONEY_COVERS.of(),
          Measure.MONEY_FREIGHT.of(),
          Measure.MONEY_DRIER_FUEL.of(),
          Measure.YARD_KEPT_APART.of("stalk"),
          Measure.PRODUCT_MARKET_COST.of("hurd"),
        }) {
      assertThat(before.mean(measure)).as(measure).isPositive();
    }
    assertThat(before.mean(Measure.MASS_PRICE_FACTOR.of("stalk"))).isBetween(0.7, 0.999);
  }

  @ParameterizedTest
  @CsvSource({
    "money.crop_prices.stalk, x1.2",
    "money.crop_terms.stalk.per_area, x1.5",
    "money.wage, x1.3",
    "money.drier_fuel, x2",
    "products.lint.price, x0.8",
    "products.hurd.price, x1.2",
    "products.fiber.price, x1.1",
    "products.fiber.freight.cost, x1.5",
    "products.*.price, x0.9"
  })
  void pricesMoveWithoutAnotherSimulation(String key, String value) {
    Plant other = with(key, value);
    ReplicationResults priced = Repricing.of(before, BASE, other).orElseThrow();
    ReplicationResults due = simulated(other);
    double moved = 0;
    for (Outcome.Column column : priced.columns()) {
      double is = priced.mean(column.name());
      assertThat(is)
          .as(column.name())
          .isCloseTo(due.mean(column.name()), within(1e-9 * Math.abs(is) + 1e-6));
      moved += Math.abs(is - before.mean(column.name()));
    }
    assertThat(moved).as("the price matters").isGreaterThan(10);
  }

  /** What is no price of an amount is simulated again, with all that follows from it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "products.lint.purge.factor=0 %",
        "products.lint.purge.packages=8",
        "products.hurd.market.beyond.0.1=0.5",
        "products.fiber.freight.packages=60",
        "money.crop_grades.stalk.0.steps.1.1=0.8",
        "money.crop_terms.stalk.advance.if_short=kept",
        "deliveries.stalk.reject.0.above=13 %",
        "deliveries.stalk.fails.share=20 %",
        "deliveries.stalk.fails.cost=500 USD",
        "deliveries.stalk.release_after=20 d",
        "yard.places.rows.cover.cost=90 USD"
      })
  void otherTermsAreSimulated(String change) {
    Plant other = with(change.split("=")[0], change.split("=")[1]);
    Optional<ReplicationResults> priced = Repricing.of(before, BASE, other);
    assertThat(priced).isEmpty();
  }
}
