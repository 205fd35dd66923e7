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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Freight is priced alike whether a plant is simulated again or not. */
class FreightPricingTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/freight.yaml"));
  private static final Plant BASE = SOURCE.variants().with();

  private static Plant with(String key, String value) {
    return SOURCE.variants().with(new Change.Value(key, value));
  }

  @ParameterizedTest
  @CsvSource({
    "products.hurds.freight, x1.5",
    "products.tow.freight.cost, 120 USD",
    "products.trash.freight.cost, x0"
  })
  void pricesMoveWithoutAnotherSimulation(String key, String value) {
    Plant dearer = with(key, value);
    ReplicationResults before = simulated(BASE);
    double priced =
        Repricing.of(before, BASE, dearer).orElseThrow().mean(Measure.MONEY_FREIGHT.of());
    double due = simulated(dearer).mean(Measure.MONEY_FREIGHT.of());
    assertThat(priced).isCloseTo(due, within(1e-9 * due));
    assertThat(Math.abs(priced - before.mean(Measure.MONEY_FREIGHT.of()))).isGreaterThan(1);
  }

  @Test
  void theTornadoHasEachFreight() {
    assertThat(Tornado.usual(BASE))
        .extracting(InputRange::key)
        .contains(
            "products.tow.freight.cost", "products.hurds.freight", "products.trash.freight.cost");
  }

  /** Loads that are full by their packages move with the price alone, and so with more of them. */
  @Test
  void loadsThatAreFullByRoomArePricedAlike() {
    PlantOrigin room = Studied.source(Path.of("../line-configs/exact/freight_room.yaml"));
    Plant base = room.variants().with();
    ReplicationResults before = simulated(base);
    List<String> hauled =
        base.products().stream()
            .filter(product -> product.freight().isPresent())
            .map(hurdline.plant.Product::name)
            .toList();
    assertThat(hauled).isNotEmpty();
    for (String product : hauled) {
      String key = "products." + product + ".freight.";
      Plant dearer = room.variants().with(new Change.Value(key + "cost", "x1.5"));
      double priced =
          Repricing.of(before, base, dearer).orElseThrow().mean(Measure.MONEY_FREIGHT.of());
      assertThat(priced)
          .isCloseTo(simulated(dearer).mean(Measure.MONEY_FREIGHT.of()), within(1e-9 * priced))
          .isGreaterThan(before.mean(Measure.MONEY_FREIGHT.of()));
      Plant fewer = room.variants().with(new Change.Value(key + "load", "x0.5"));
      assertThat(Repricing.of(before, base, fewer)).as("another load is no price").isEmpty();
    }
  }

  /** 6.75 t are one load of 8 t, or no load that is known by its mass. */
  @Test
  void otherTrucksAreSimulated() {
    Plant larger = with("products.tow.freight.load", "8 t");
    assertThat(Repricing.of(simulated(BASE), BASE, larger)).isEmpty();
    assertThat(simulated(larger).mean(Measure.PRODUCT_FREIGHT.of("tow"))).isEqualTo(90);
    Plant byMass = with("products.tow.freight", "10 USD/t");
    assertThat(Repricing.of(simulated(BASE), BASE, byMass)).isEmpty();
    assertThat(simulated(byMass).mean(Measure.PRODUCT_FREIGHT.of("tow")))
        .isCloseTo(67.5, within(1e-9));
  }
}
