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

/** Hands that cover stacks are priced alike whether a plant is simulated again or not. */
class CoverPricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/tarps.yaml"));

  @Test
  void aWageMovesTheHandsAlone() {
    Plant base = SOURCE.variants().with();
    Plant dearer = SOURCE.variants().with(new Change.Value("money.wage", "50 USD/h"));
    double priced =
        Repricing.of(simulated(base), base, dearer).orElseThrow().mean(Measure.MONEY_COVERS.of());
    assertThat(priced).isCloseTo(330, within(1e-9));
    assertThat(simulated(dearer).mean(Measure.MONEY_COVERS.of())).isCloseTo(330, within(1e-9));
  }

  /** Hands grow as wages do, so lives need them priced too; before the change it was 60. */
  @Test
  void theHandsAloneArePricedForLaterYears() {
    Plant base = SOURCE.variants().with();
    Plant dearer = SOURCE.variants().with(new Change.Value("money.wage", "50 USD/h"));
    assertThat(
            Repricing.of(simulated(base), base, dearer)
                .orElseThrow()
                .mean(Measure.MONEY_COVER_HANDS.of()))
        .isCloseTo(150, within(1e-9));
  }
}
