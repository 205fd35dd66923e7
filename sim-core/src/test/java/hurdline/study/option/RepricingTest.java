package hurdline.study.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.simulation.CompiledPlant;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Simulates priced anew, set beside simulates at those prices. */
class RepricingTest {
  private static final int COUNT = 1;
  private static final PlantOrigin EXAMPLE = Studied.source(Studied.EXAMPLE);

  private static Plant base;
  private static ReplicationResults atBase;

  @BeforeAll
  static void simulate() {
    base = EXAMPLE.variants().with();
    atBase = simulated(base);
  }

  private static Plant with(String key, String value) {
    return EXAMPLE.variants().with(new Change.Value(key, value));
  }

  private static ReplicationResults simulated(Plant plant) {
    return new ReplicationBudget(Studied.effort(COUNT, 1), (done, of) -> {}, () -> false)
        .whole(CompiledPlant.of(plant), COUNT)
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "products.*.price, x0.8",
    "products.trash.price, x1.2",
    "money.crop_prices.stalk, x1.2",
    "money.electricity.*, x0.8",
    "money.electricity.demand, x1.2",
    "money.electricity.energy, 0 USD/kWh",
    "money.wage, x1.2",
    "money.overhead, 300000 USD/yr"
  })
  void amountsAtOtherPricesAreThoseThatASimulationGives(String key, String value) {
    Plant dearer = with(key, value);
    ReplicationResults priced = Repricing.of(atBase, base, dearer).orElseThrow();
    ReplicationResults simulated = simulated(dearer);
    assertThat(priced.columns()).hasSize(9);
    double moved = 0;
    for (int at = 0; at < priced.columns().size(); at++) {
      String measure = priced.columns().get(at).name();
      for (int one = 0; one < COUNT; one++) {
        double is = priced.series(measure)[one];
        assertThat(is)
            .as(measure)
            .isCloseTo(simulated.series(measure)[one], within(1e-9 * Math.abs(is) + 1e-6));
        moved += Math.abs(is - atBase.series(measure)[one]);
      }
    }
    assertThat(moved).as("the price matters").isGreaterThan(100);
  }

  /** Some bales are too wet, and what comes of them loses part of a price that moves. */
  @Test
  void dockedPricesMoveWithTheProductsOwn() {
    Change dearer = new Change.Value("products.medium_hurd.price", "x1.2");
    Plant docked = EXAMPLE.variants().with(moisture("medium"), moisture("coarse"));
    ReplicationResults before = simulated(docked);
    assertThat(before.mean(Measure.PRODUCT_TOO_WET.of("medium_hurd"))).isGreaterThan(50);
    Plant after = EXAMPLE.variants().with(moisture("medium"), moisture("coarse"), dearer);
    double priced =
        Repricing.of(before, docked, after).orElseThrow().mean(Measure.MONEY_REVENUE.of());
    double simulated = simulated(after).mean(Measure.MONEY_REVENUE.of());
    assertThat(priced)
        .isCloseTo(simulated, within(1e-9 * simulated))
        .isGreaterThan(before.mean(Measure.MONEY_REVENUE.of()) + 1000);
    assertThat(Repricing.of(atBase, base, docked))
        .as("another moisture is no other price")
        .isEmpty();
  }

  /** Bales are paid by the hurd in them, at a factor that stays what it is. */
  @Test
  void gradedPricesMoveWithTheProductsOwn() {
    PlantOrigin source = Studied.source(Path.of("../line-configs/quail-run.yaml"));
    Plant plant = source.variants().with();
    ReplicationResults before = simulated(plant);
    assertThat(before.mean(Measure.PRODUCT_PRICE_FACTOR.of("fiber"))).isBetween(0.8, 0.99);
    Plant after = source.variants().with(new Change.Value("products.fiber.price", "x1.2"));
    double priced =
        Repricing.of(before, plant, after).orElseThrow().mean(Measure.MONEY_REVENUE.of());
    double simulated = simulated(after).mean(Measure.MONEY_REVENUE.of());
    assertThat(priced)
        .isCloseTo(simulated, within(1e-9 * simulated))
        .isGreaterThan(before.mean(Measure.MONEY_REVENUE.of()) + 1000);
    Change factors = new Change.Value("products.fiber.cleanliness.line.*.1", "x0.9");
    assertThat(Repricing.of(before, plant, source.variants().with(factors)))
        .as("another line is no other price")
        .isEmpty();
  }

  private static Change moisture(String hurd) {
    return new Change.Value(
        "products." + hurd + "_hurd.moisture", "{basis: 12 %, at_most: 14 %, dock: 40 %}");
  }

  @Test
  void whatIsNoPriceOrHadNoneIsSimulated() {
    for (List<String> change :
        List.of(
            List.of("machines.mill.power", "50 hp"),
            List.of("products.cottonseed.price", "5 USD/ton"),
            List.of("money.moisture_basis.stalk", "14 %"))) {
      assertThat(Repricing.of(atBase, base, with(change.get(0), change.get(1))))
          .as(change.get(0))
          .isEmpty();
    }
    assertThat(Repricing.of(atBase, base, with("money.discount_rate", "5 %/yr"))).isPresent();
  }

  /** The mill makes coarse hurd while no order is open, as it sells better than broad hurd. */
  @Test
  void aPriceThatChangesWhatTheMillMakesIsSimulated() {
    PlantOrigin source = Studied.source(Path.of("../line-configs/exact/then_best.yaml"));
    Plant plant = source.variants().with();
    ReplicationResults before = simulated(plant);
    Plant dearer = source.variants().with(new Change.Value("products.coarse_hurd.price", "x1.2"));
    double priced =
        Repricing.of(before, plant, dearer).orElseThrow().mean(Measure.MONEY_REVENUE.of());
    assertThat(priced)
        .isCloseTo(simulated(dearer).mean(Measure.MONEY_REVENUE.of()), within(1e-9 * priced));
    Plant cheaper = source.variants().with(new Change.Value("products.coarse_hurd.price", "x0.7"));
    assertThat(Repricing.of(before, plant, cheaper)).isEmpty();
  }

  /** A price of an order's own does not move with the product's. */
  @Test
  void aProductWithAnOrderAtItsOwnPriceIsSimulated() {
    Change order = new Change.Value("products.fine_hurd.orders.0.price", "500 USD/ton");
    Plant ordered = EXAMPLE.variants().with(order);
    ReplicationResults simulated = simulated(ordered);
    Plant dearer =
        EXAMPLE.variants().with(order, new Change.Value("products.fine_hurd.price", "x1.1"));
    assertThat(Repricing.of(simulated, ordered, dearer)).isEmpty();
    Plant other =
        EXAMPLE.variants().with(order, new Change.Value("products.medium_hurd.price", "x1.1"));
    Optional<ReplicationResults> priced = Repricing.of(simulated, ordered, other);
    assertThat(priced.orElseThrow().mean(Measure.MONEY_REVENUE.of()))
        .isGreaterThan(simulated.mean(Measure.MONEY_REVENUE.of()));
  }
}
