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

/** A crop's price moves the cost of all its forms, once, simulated again or not. */
class FormPricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/two_forms.yaml"));
  private static final String COST = Measure.MONEY_CROP_COST.of();
  private static final String STOCK = Measure.MONEY_STOCK_CHANGE.of();

  private static Plant priced(String prices) {
    return SOURCE.variants().with(new Change.Value("money.crop_prices", prices));
  }

  @Test
  void aFormIsPaidAsItsCrop() {
    Plant base = SOURCE.variants().with();
    Plant dearer = SOURCE.variants().with(new Change.Value("money.crop_prices.stalk", "x1.5"));
    ReplicationResults moved = Repricing.of(simulated(base), base, dearer).orElseThrow();
    ReplicationResults due = simulated(dearer);
    assertThat(due.mean(COST)).isCloseTo(300, within(1e-9));
    assertThat(moved.mean(COST)).isCloseTo(300, within(1e-9));
    assertThat(due.mean(STOCK)).isCloseTo(-300, within(1e-9));
    assertThat(moved.mean(STOCK)).isCloseTo(-300, within(1e-9));
  }

  /** The module's 2 t at 80, the bales' at 100 and then at 150; both at 1.5 times move as one. */
  @Test
  void aPriceOfItsOwnIsSimulatedUnlessItMovesAlike() {
    Plant base = priced("{stalk: 100 USD/t, stalk_modules: 80 USD/t}");
    ReplicationResults before = simulated(base);
    assertThat(before.mean(COST)).isCloseTo(160, within(1e-9));
    Plant bales = priced("{stalk: 150 USD/t, stalk_modules: 80 USD/t}");
    assertThat(Repricing.of(before, base, bales)).isEmpty();
    assertThat(simulated(bales).mean(STOCK)).isCloseTo(-300, within(1e-9));
    Plant both = priced("{stalk: 150 USD/t, stalk_modules: 120 USD/t}");
    assertThat(Repricing.of(before, base, both).orElseThrow().mean(COST))
        .isCloseTo(240, within(1e-9))
        .isCloseTo(simulated(both).mean(COST), within(1e-9));
  }
}
