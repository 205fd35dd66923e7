package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Variants;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Products of which buyers take only so much, in a plant of bales no two of which are alike. */
class MarketTest {
  private static final Variants QUAIL =
      PlantFile.read(Path.of("../line-configs/quail-run.yaml")).variants();
  private static final String REVENUE = Measure.PRODUCT_REVENUE.of("fiber");
  private static final String POINT = Measure.PRODUCT_POINT_COST.of("fiber");

  private static Outcome year(Change... changes) {
    return Ready.replication(QUAIL.with(changes)).run(new RandomStreams(1), 1, null);
  }

  private static Change fiber(String market) {
    return new Change.Value("products.fiber.market", market);
  }

  @Test
  void aMarketThatTakesAllChangesNothing() {
    Outcome alike = year();
    Outcome taken = year(fiber("{beyond: [[100000 ton, 0]]}"));
    for (Outcome.Column column : alike.columns()) {
      double was = alike.value(column.name());
      if (!Double.isNaN(was)) {
        assertThat(taken.value(column.name()))
            .as(column.name())
            .isCloseTo(was, within(1e-9 * Math.abs(was) + 1e-9));
      }
    }
    assertThat(taken.value(Measure.PRODUCT_BEYOND_MARKET.of("fiber"))).isZero();
    assertThat(taken.value(Measure.PRODUCT_MARKET_COST.of("fiber"))).isZero();
  }

  /** Bales are graded by their hurd; a year's market pays all of them its mean factor. */
  @Test
  void gradedBalesArePaidTheMeanFactorOfTheirPeriod() {
    Outcome alike = year();
    double madeT = alike.value(Measure.PRODUCT_SOLD.of("fiber"));
    Outcome full = year(fiber("{per: year, beyond: [[50 t, 0.6]]}"));
    double mean = (50 + 0.6 * (madeT - 50)) / madeT;
    assertThat(madeT).isGreaterThan(100);
    assertThat(full.value(REVENUE)).isCloseTo(alike.value(REVENUE) * mean, within(1e-6));
    assertThat(full.value(POINT)).isCloseTo(alike.value(POINT) * mean, within(1e-6));
    assertThat(full.value(Measure.PRODUCT_PRICE_FACTOR.of("fiber")))
        .isEqualTo(alike.value(Measure.PRODUCT_PRICE_FACTOR.of("fiber")));
    assertThat(full.value(Measure.MONEY_LINE_REVENUE.of("stalk_line")))
        .isCloseTo(
            full.value(REVENUE) + full.value(Measure.PRODUCT_REVENUE.of("hurd")), within(1e-6));
  }

  /** Four months take at most four times as much; what nobody takes is not sold. */
  @Test
  void eachMonthTakesAsMuchAgain() {
    double madeT = year().value(Measure.PRODUCT_SOLD.of("fiber"));
    Outcome full = year(fiber("{per: month, beyond: [[10 t, 0]]}"));
    assertThat(full.value(Measure.PRODUCT_SOLD.of("fiber"))).isCloseTo(40, within(1e-9));
    assertThat(full.value(Measure.PRODUCT_BEYOND_MARKET.of("fiber")))
        .isCloseTo(madeT - 40, within(1e-9));
  }
}
