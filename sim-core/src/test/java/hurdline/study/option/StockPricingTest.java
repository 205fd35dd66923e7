package hurdline.study.option;

import static hurdline.study.Studied.simulated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.TornadoRow;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.Variants;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import hurdline.study.replicate.ReplicationResults;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What waits in a store is priced alike whether a plant is simulated again or not. */
class StockPricingTest {
  private static PlantOrigin exact(String name) {
    return Studied.source(Path.of("../line-configs/exact/" + name + ".yaml"));
  }

  @ParameterizedTest
  @CsvSource({
    "'', products.tow.worth, x0.5, money.product_stock",
    "'', products.tow.price, x1.2, money.revenue",
    "'', products.tow.freight.cost, 120 USD, money.freight",
    "at_its_price, products.tow.price, x1.2, money.product_stock",
    "at_its_price, products.tow.price, x1.2, money.revenue"
  })
  void pricesMoveWithoutAnotherSimulation(String option, String key, String value, String moved) {
    Variants plants = exact("store_trucks").variants();
    Change[] as = option.isEmpty() ? new Change[0] : new Change[] {new Change.Named(option)};
    Plant base = plants.with(as);
    Change[] more = Arrays.copyOf(as, as.length + 1);
    more[as.length] = new Change.Value(key, value);
    Plant dearer = plants.with(more);
    ReplicationResults before = simulated(base);
    ReplicationResults priced = Repricing.of(before, base, dearer).orElseThrow();
    ReplicationResults due = simulated(dearer);
    for (String measure :
        new String[] {"money.revenue", "money.product_stock", "money.freight", "money.packages"}) {
      assertThat(priced.mean(measure)).as(measure).isCloseTo(due.mean(measure), within(1e-6));
    }
    assertThat(Math.abs(priced.mean(moved) - before.mean(moved))).isGreaterThan(1);
  }

  @Test
  void whatHasNoWorthOfItsOwnYetIsSimulated() {
    PlantOrigin source = exact("store_trucks");
    Plant base = source.variants().with(new Change.Named("at_its_price"));
    Plant worth =
        source
            .variants()
            .with(
                new Change.Named("at_its_price"),
                new Change.Value("products.tow.worth", "100 USD/t"));
    assertThat(Repricing.of(simulated(base), base, worth)).isEmpty();
    assertThat(simulated(worth).mean(Measure.MONEY_PRODUCT_STOCK.of()))
        .isCloseTo(1025, within(1e-6));
    Plant larger = source.variants().with(new Change.Value("stores.shed.holds", "20 t"));
    assertThat(Repricing.of(simulated(base), base, larger)).isEmpty();
  }

  @Test
  void theTornadoHasTheWorth() {
    assertThat(Tornado.usual(exact("store_trucks").variants().with()))
        .extracting(InputRange::key)
        .contains("products.tow.worth", "products.tow.price");
  }

  private static CompareAnswer compared(AtomicInteger simulated, boolean further) {
    CompareAsk ask =
        new CompareAsk(
            List.of("larger_shed"),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            further
                ? Optional.of(List.of(InputRange.around("products.tow.worth", 0.2)))
                : Optional.empty(),
            further ? List.of("products.tow.worth") : List.of(),
            Optional.empty());
    return new Compare(exact("store_trucks"), PlantChanges.base(), ask, Studied.effort(1, 1))
        .simulate((done, of) -> simulated.set(done), () -> false)
        .orElseThrow();
  }

  /** By hand in store_trucks.md. */
  @Test
  void tornadoAndBreakEvenMoveTheWorthWithoutAnotherSimulation() {
    AtomicInteger plain = new AtomicInteger();
    assertThat(
            compared(plain, false)
                .worth("larger_shed", Quantity.NET_PRESENT_VALUE)
                .orElseThrow()
                .mean())
        .isCloseTo(1165, within(1e-6));
    AtomicInteger further = new AtomicInteger();
    CompareAnswer answer = compared(further, true);
    assertThat(further.get()).isEqualTo(plain.get());
    TornadoRow row = answer.further().tornado().get(0);
    assertThat(row.netPresentValueAtLow()).isCloseTo(-245, within(1e-6));
    assertThat(row.netPresentValueAtHigh()).isCloseTo(2575, within(1e-6));
    BreakEvenRow even = answer.further().breakEven().get(0);
    assertThat(even.value()).isCloseTo(5885 / 35.25, within(0.2));
    assertThat(even.unit()).isEqualTo("USD/t");
  }
}
