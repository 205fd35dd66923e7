package hurdline.simulation.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.YardPlan;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import hurdline.simulation.YardTexts;
import org.junit.jupiter.api.Test;

/**
 * What a bale is made of: each share times max(0, 1 + s·z), z standard normal, then all over their
 * sum.
 */
class BaleDrawsTest {
  private static final int STALK = 1;
  private static final int FIBER = 0;
  private static final int HURD = 1;

  private final RandomStreams streams = new RandomStreams(6);

  private YardPlan plan(String spread) {
    String text = YardTexts.march(1, "yard: {places: {row: {holds: 10 bales}}}\n");
    return YardPlan.of(
        PlantFile.of("test", text.replace("composition_cv: 5 %", "composition_cv: " + spread))
            .plant());
  }

  private BaleDraws draws(YardPlan plan) {
    return new BaleDraws(plan, STALK, plan.bale(STALK), streams, 1, "here");
  }

  @Test
  void sharesAreSpreadAndBroughtToOne() {
    YardPlan plan = plan("80 %");
    Bales bales = new Bales(plan.components(), plan.attributes().size());
    BaleDraws draws = draws(plan);
    RandomStream fiber = streams.of(1, "here.composition.fiber");
    RandomStream hurd = streams.of(1, "here.composition.hurd");
    int cut = 0;
    int whole = 0;
    for (int k = 0; k < 2_000; k++) {
      double ofFiber = 0.3 * Math.max(0, 1 + 0.8 * fiber.nextNormal());
      double ofHurd = 0.7 * Math.max(0, 1 + 0.8 * hurd.nextNormal());
      double sum = ofFiber + ofHurd;
      int bale = draws.make(bales, 7);
      double expected = sum > 0 ? ofFiber / sum : 0.3;
      assertThat(bales.dryShare[2 * bale + FIBER]).isCloseTo(expected, within(1e-12));
      assertThat(bales.dryShare[2 * bale + HURD]).isCloseTo(1 - expected, within(1e-12));
      assertThat(bales.moisture[bale]).isBetween(0.08, 0.20);
      assertThat(bales.knownAtS[bale]).isEqualTo(7);
      cut += ofFiber == 0 ? 1 : 0;
      whole += sum > 0 ? 0 : 1;
      bales.free(bale);
    }
    assertThat(cut).as("bales without fiber, about one in nine").isBetween(150, 280);
    assertThat(whole).as("bales of the mean composition, about one in ninety").isBetween(8, 45);
  }

  @Test
  void withoutSpreadEveryBaleIsTheSame() {
    YardPlan plan = plan("0 %");
    Bales bales = new Bales(plan.components(), plan.attributes().size());
    BaleDraws draws = draws(plan);
    for (int k = 0; k < 3; k++) {
      int bale = draws.make(bales, 0);
      assertThat(bales.dryShare[2 * bale + FIBER]).isEqualTo(0.3);
      assertThat(bales.dryShare[2 * bale + HURD]).isEqualTo(0.7);
      assertThat(bales.massKg[bale]).isEqualTo(500);
    }
  }
}
