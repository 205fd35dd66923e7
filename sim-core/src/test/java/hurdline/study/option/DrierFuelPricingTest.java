package hurdline.study.option;

import static hurdline.study.Studied.simulated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Fuel of driers is priced alike whether a plant is simulated again or not. */
class DrierFuelPricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/drier_fuel.yaml"));
  private static final Plant BASE = SOURCE.variants().with();

  private static Plant fuel(String price) {
    return SOURCE.variants().with(new Change.Value("money.drier_fuel", price));
  }

  @Test
  void aPriceMovesWithoutAnotherSimulation() {
    Plant dearer = fuel("x1.5");
    double priced =
        Repricing.of(simulated(BASE), BASE, dearer)
            .orElseThrow()
            .mean(Measure.MONEY_DRIER_FUEL.of());
    assertThat(priced).isCloseTo(187.2, within(1e-9));
    assertThat(simulated(dearer).mean(Measure.MONEY_DRIER_FUEL.of()))
        .isCloseTo(priced, within(1e-9));
    assertThat(simulated(dearer).mean(Measure.MONEY_MARGIN.of()))
        .isCloseTo(174.4 - 62.4, within(1e-9));
  }

  @Test
  void theTornadoHasItAndFreeFuelIsSimulated() {
    assertThat(Tornado.usual(BASE)).extracting(InputRange::key).contains("money.drier_fuel");
    Plant free = fuel("0 USD/kg");
    assertThat(Tornado.usual(free)).extracting(InputRange::key).doesNotContain("money.drier_fuel");
    assertThat(Repricing.of(simulated(free), free, BASE)).isEmpty();
  }
}
