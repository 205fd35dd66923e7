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

/** What purge packages bring moves with the price, whether a plant is simulated again or not. */
class PurgePricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/purge.yaml"));
  private static final Plant BASE = SOURCE.variants().with();

  private static Plant with(String key, String value) {
    return SOURCE.variants().with(new Change.Value(key, value));
  }

  @ParameterizedTest
  @CsvSource({"products.lint.price, x1.5", "products.lint.price, 300 USD/t"})
  void pricesMoveWithoutAnotherSimulation(String key, String value) {
    Plant other = with(key, value);
    ReplicationResults before = simulated(BASE);
    double priced =
        Repricing.of(before, BASE, other).orElseThrow().mean(Measure.MONEY_REVENUE.of());
    double due = simulated(other).mean(Measure.MONEY_REVENUE.of());
    assertThat(priced).isCloseTo(due, within(1e-9 * due));
    assertThat(Math.abs(priced - before.mean(Measure.MONEY_REVENUE.of()))).isGreaterThan(1);
  }

  /**
   * Another factor or count is no other price; four bales of 250 kg at 1000 USD/t. Without days a
   * changeover is none, and cotton has one shift more.
   */
  @ParameterizedTest
  @CsvSource({
    "products.lint.purge.factor, 0 %, 31000",
    "products.lint.purge.factor, 100 %, 32000",
    "products.lint.purge.packages, 8, 30800",
    "season.1.changeover, 0 d, 48000"
  })
  void otherPurgesAreSimulated(String key, String value, double due) {
    Plant other = with(key, value);
    assertThat(Repricing.of(simulated(BASE), BASE, other)).isEmpty();
    assertThat(simulated(other).mean(Measure.PRODUCT_REVENUE.of("lint")))
        .isCloseTo(due, within(1e-6));
  }

  /** What the money of each year's life is made of has it too. */
  @Test
  void theLineEarnsWhatItsProductDoes() {
    ReplicationResults results = simulated(BASE);
    assertThat(results.mean(Measure.MONEY_LINE_REVENUE.of("cotton_line")))
        .isCloseTo(31_400, within(1e-6));
  }
}
