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
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Graded loads are priced alike whether a plant is simulated again or not. */
class PurchasePricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/graded_loads.yaml"));
  private static final Plant BASE = SOURCE.variants().with();
  private static final String PER_AREA = "money.crop_terms.stalk.per_area";
  private static final List<Measure> PARTS =
      List.of(Measure.MONEY_CROP_COST, Measure.MONEY_STOCK_CHANGE);

  private static Plant with(String key, String value) {
    return SOURCE.variants().with(new Change.Value(key, value));
  }

  private static Plant with(PlantOrigin of, List<Change> changes, Change further) {
    List<Change> all = new ArrayList<>(changes);
    all.add(further);
    return of.variants().with(all.toArray(Change[]::new));
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

  /** Area and mass move apart; an advance that growers keep moves with neither and is simulated. */
  @Test
  void areaIsPricedApartFromMass() {
    PlantOrigin fields = Studied.source(Path.of("../line-configs/exact/area_terms.yaml"));
    Plant base = fields.variants().with();
    ReplicationResults before = simulated(base);
    for (String change : List.of("money.crop_prices.stalk=80 USD/t", PER_AREA + "=500 USD/ha")) {
      Plant dearer =
          fields.variants().with(new Change.Value(change.split("=")[0], change.split("=")[1]));
      ReplicationResults priced = Repricing.of(before, base, dearer).orElseThrow();
      ReplicationResults due = simulated(dearer);
      for (Measure part : PARTS) {
        assertThat(priced.mean(part.of())).isCloseTo(due.mean(part.of()), within(1e-9));
        assertThat(priced.mean(part.of()) - before.mean(part.of())).isGreaterThan(50);
      }
    }
    assertThat(Tornado.usual(base)).extracting(InputRange::key).contains(PER_AREA);
  }

  @Test
  void anAdvanceThatIsKeptIsSimulatedAgain() {
    PlantOrigin advances = Studied.source(Path.of("../line-configs/exact/advance_terms.yaml"));
    Plant kept = advances.variants().with();
    Change dearer = new Change.Value("money.crop_prices.stalk", "80 USD/t");
    assertThat(Repricing.of(simulated(kept), kept, advances.variants().with(dearer))).isEmpty();
    Change owed = new Change.Named("owed");
    Plant back = advances.variants().with(owed);
    Plant dearerBack = advances.variants().with(owed, dearer);
    assertThat(
            Repricing.of(simulated(back), back, dearerBack).orElseThrow().mean(PARTS.get(0).of()))
        .isCloseTo(simulated(dearerBack).mean(PARTS.get(0).of()), within(1e-9));
  }

  /** What loads that fail cost is in the crop's cost and moves with no price. */
  @Test
  void failedLoadsArePricedApartFromMass() {
    PlantOrigin lots = Studied.source(Path.of("../line-configs/exact/failed_lots.yaml"));
    List<Change> some =
        List.of(
            new Change.Value("deliveries.stalk.fails.share", "50 %"),
            new Change.Value("deliveries.stalk.loads.every", "30 min"),
            new Change.Value("deliveries.stalk.loads.bales", "1"));
    Plant base = lots.variants().with(some.toArray(Change[]::new));
    ReplicationResults before = simulated(base);
    assertThat(before.mean(Measure.MONEY_CROP_FAILED.of("stalk"))).isPositive();
    assertThat(before.mean(Measure.INTAKE_WEIGHED_IN.of("stalk"))).isGreaterThan(2);
    Plant dearer = with(lots, some, new Change.Value("money.crop_prices.stalk", "150 USD/t"));
    ReplicationResults priced = Repricing.of(before, base, dearer).orElseThrow();
    ReplicationResults due = simulated(dearer);
    for (Measure part : PARTS) {
      assertThat(priced.mean(part.of())).isCloseTo(due.mean(part.of()), within(1e-9));
      assertThat(Math.abs(priced.mean(part.of()) - before.mean(part.of()))).isGreaterThan(50);
    }
    Plant costlier = with(lots, some, new Change.Value("deliveries.stalk.fails.cost", "80 USD"));
    assertThat(Repricing.of(before, base, costlier)).isEmpty();
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
