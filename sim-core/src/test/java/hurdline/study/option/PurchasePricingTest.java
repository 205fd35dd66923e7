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
import java.util.List;
import org.junit.jupiter.api.Test;

/** Graded loads are priced alike whether a plant is simulated again or not. */
class PurchasePricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/graded_loads.yaml"));
  private static final Plant BASE = SOURCE.variants().with();
  private static final List<Measure> PARTS =
      List.of(Measure.MONEY_CROP_COST, Measure.MONEY_STOCK_CHANGE);

  private static Plant with(String key, String value) {
    return SOURCE.variants().with(new Change.Value(key, value));
  }

  @Test
  void aPriceMovesWithoutAnotherSimulation() {
    Plant dearer = with("money.crop_prices.wet", "150 USD/t");
    ReplicationResults before = simulated(BASE);
    ReplicationResults priced = Repricing.of(before, BASE, dearer).orElseThrow();
    ReplicationResults due = simulated(dearer);
    for (Measure part : PARTS) {
      assertThat(priced.mean(part.of())).isCloseTo(due.mean(part.of()), within(1e-9));
      assertThat(priced.mean(part.of()) - before.mean(part.of())).isGreaterThan(50);
    }
  }

  /** Other grades and limits are no other price; at 15.9 % the wet loads are sent away. */
  @Test
  void otherTermsAreSimulated() {
    ReplicationResults before = simulated(BASE);
    Plant kinder = with("money.crop_grades.wet.1.line.1.1", "1");
    assertThat(Repricing.of(before, BASE, kinder)).isEmpty();
    assertThat(simulated(kinder).mean(Measure.MASS_PRICE_FACTOR.of("wet")))
        .isCloseTo(0.8, within(1e-12));
    Plant stricter = with("deliveries.wet.reject.0.above", "15.9 %");
    assertThat(Repricing.of(before, BASE, stricter)).isEmpty();
    assertThat(simulated(stricter).mean(Measure.MASS_REJECTED.of("wet")))
        .isCloseTo(6, within(1e-9));
  }
}
