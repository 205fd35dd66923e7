package hurdline.study.option;

import static hurdline.study.Studied.simulated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.ReplicationResults;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a market takes less for moves with the price, whether a plant is simulated again or not. */
class MarketPricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/market.yaml"));
  private static final Plant BASE = SOURCE.variants().with();

  private static Plant with(String key, String value) {
    return SOURCE.variants().with(new Change.Value(key, value));
  }

  @ParameterizedTest
  @CsvSource({"products.hurds.price, x1.5", "products.trash.price, -40 USD/t"})
  void pricesMoveWithoutAnotherSimulation(String key, String value) {
    Plant other = with(key, value);
    ReplicationResults before = simulated(BASE);
    double priced =
        Repricing.of(before, BASE, other).orElseThrow().mean(Measure.MONEY_REVENUE.of());
    double due = simulated(other).mean(Measure.MONEY_REVENUE.of());
    assertThat(priced).isCloseTo(due, within(1e-9 * due));
    assertThat(Math.abs(priced - before.mean(Measure.MONEY_REVENUE.of()))).isGreaterThan(1);
  }

  /** A market that takes more is no other price, and neither is one beside an order of its own. */
  @Test
  void otherMarketsAreSimulated() {
    ReplicationResults before = simulated(BASE);
    Plant wider = with("products.hurds.market.beyond.0.0", "12 t");
    assertThat(Repricing.of(before, BASE, wider)).isEmpty();
    assertThat(simulated(wider).mean(Measure.PRODUCT_REVENUE.of("hurds")))
        .isCloseTo(1200 + 180 + 1200 + 48, within(1e-9));
    assertThat(Repricing.of(before, BASE, with("products.tow.price", "x1.1"))).isEmpty();
  }
}
