package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.Variants;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Water in what is sold neither earns nor is missed. */
class SellingTest {
  private static final Path FILES = Path.of("../line-configs");

  private static Variants variants(String name) {
    return PlantFile.read(FILES.resolve(name)).variants();
  }

  private static Outcome year(Plant plant) {
    return Ready.replication(plant).run(new RandomStreams(1), 1, null);
  }

  /** The same year, but for the water: less dry matter is fed, and no more is earned. */
  @ParameterizedTest
  @ValueSource(strings = {"small.yaml", "stalk.yaml", "sweetgum-bend.yaml"})
  void wetterStalksNeverEarnMore(String name) {
    Variants variants = variants(name);
    Outcome before = year(variants.with());
    for (String factor : new String[] {"x1.1", "x1.25", "x1.5"}) {
      Outcome wetter = year(variants.with(new Change.Value("crops.stalk.moisture", factor)));
      for (String measure :
          new String[] {
            Measure.MASS_FED.dryOf("stalk"), Measure.MONEY_REVENUE.of(), Measure.MONEY_MARGIN.of()
          }) {
        assertThat(wetter.value(measure))
            .as("%s at %s", measure, factor)
            .isLessThan(before.value(measure));
      }
      before = wetter;
    }
  }

  /** Sold by the scale, water earns: what the test above would miss if it could not see it. */
  @Test
  void aDryTonneEarnsTheSameAtABasisAndMoreByTheScale() {
    Variants variants = variants("small.yaml");
    Change scale = new Change.Value("products.*.moisture", "as is");
    Change wetter = new Change.Value("crops.stalk.moisture", "x1.5");
    assertThat(perDryT(variants.with(wetter)) / perDryT(variants.with())).isBetween(0.998, 1.002);
    assertThat(perDryT(variants.with(scale, wetter)) / perDryT(variants.with(scale)))
        .isGreaterThan(1.05);
  }

  private static double perDryT(Plant plant) {
    Outcome year = year(plant);
    return year.value(Measure.MONEY_REVENUE.of()) / year.value(Measure.MASS_FED.dryOf("stalk"));
  }

  /**
   * Twice the water in the bales, the same dry matter in each: the same dry matter is sold for the
   * same money.
   */
  @Test
  void anHourOfTheSameDryMatterEarnsTheSame() {
    Variants variants = variants("exact/sold_at_basis.yaml");
    Change wetter = new Change.Value("crops.dry_stalk.moisture", "20 %");
    Change faster = new Change.Value("lines.dry_line.steps.feeder.rate", "1.125 t/h");
    Outcome dry = year(variants.with());
    Outcome wet = year(variants.with(wetter, faster));
    for (String product : new String[] {"hurds", "fiber"}) {
      double sold = dry.value(Measure.PRODUCT_SOLD.of(product));
      assertThat(wet.value(Measure.PRODUCT_SOLD.of(product))).isCloseTo(sold, within(1e-9 * sold));
      assertThat(wet.value(Measure.PRODUCT_MASS.of(product)))
          .isGreaterThan(dry.value(Measure.PRODUCT_MASS.of(product)) * 1.05);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "exact/too_wet.yaml",
        "exact/sold_at_basis.yaml",
        "exact/clean_orders.yaml",
        "sweetgum-bend.yaml"
      })
  void monthsAndLinesEarnWhatTheYearDoes(String name) {
    Plant plant = variants(name).with();
    Outcome year = year(plant);
    int column =
        year.monthColumns().stream()
            .map(Outcome.Column::name)
            .toList()
            .indexOf(Measure.MONEY_REVENUE.of());
    double revenue = year.value(Measure.MONEY_REVENUE.of());
    assertThat(Stream.of(year.months()).mapToDouble(month -> month[column]).sum())
        .isCloseTo(revenue, within(1e-9 * revenue));
    assertThat(
            plant.lines().stream()
                .mapToDouble(line -> year.value(Measure.MONEY_LINE_REVENUE.of(line.name())))
                .sum())
        .isCloseTo(revenue, within(1e-9 * revenue));
    assertThat(
            plant.products().stream()
                .mapToDouble(product -> year.value(Measure.PRODUCT_REVENUE.of(product.name())))
                .sum())
        .isCloseTo(revenue, within(1e-9 * revenue));
  }

  @Test
  void whatSellsOnOrdersOnlySellsNoMoreThanIsOrdered() {
    Variants variants = variants("exact/too_wet.yaml");
    Outcome year = year(variants.with(new Change.Value("products.chips.sells", "orders")));
    assertThat(year.value(Measure.PRODUCT_SOLD.of("chips"))).isCloseTo(7.2 / 0.88, within(1e-9));
    assertThat(year.value(Measure.PRODUCT_REVENUE.of("chips"))).isCloseTo(854.2, within(1e-9));
    Change small = new Change.Value("products.chips.orders.1.mass", "1 t");
    Outcome less = year(variants.with(new Change.Value("products.chips.sells", "orders"), small));
    assertThat(less.value(Measure.PRODUCT_SOLD.of("chips"))).isCloseTo(7.1, within(1e-9));
  }
}
