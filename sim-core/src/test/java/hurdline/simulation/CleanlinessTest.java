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
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Packages that are paid by what is in them, in a plant of bales no two of which are alike. */
class CleanlinessTest {
  private static final List<String> COMPONENTS =
      List.of("long_fiber", "short_fiber", "hurd", "fines");
  private static final Variants STALK =
      PlantFile.read(Path.of("../line-configs/stalk.yaml")).variants();
  private static final List<String> PRODUCTS = List.of("long_fiber", "tow");

  private static Outcome year(Change... changes) {
    return Ready.replication(STALK.with(changes)).run(new RandomStreams(1), 1, null);
  }

  private static Change[] paid(String component, String factors) {
    List<Change> changes = new ArrayList<>();
    for (String product : PRODUCTS) {
      changes.add(
          new Change.Value(
              "products." + product + ".cleanliness",
              "{component: " + component + ", " + factors + "}"));
    }
    return changes.toArray(Change[]::new);
  }

  private static double sum(Outcome year, Measure measure) {
    return PRODUCTS.stream().mapToDouble(product -> year.value(measure.of(product))).sum();
  }

  private static double revenue(Outcome year) {
    return sum(year, Measure.PRODUCT_REVENUE);
  }

  @Test
  void aFactorOfOneEarnsWhatOnePriceDoes() {
    Outcome alike = year();
    Outcome graded = year(paid("hurd", "line: [[2 %, 1], [10 %, 1]]"));
    for (Outcome.Column column : alike.columns()) {
      double was = alike.value(column.name());
      if (!Double.isNaN(was)) {
        assertThat(graded.value(column.name()))
            .as(column.name())
            .isCloseTo(was, within(1e-9 * Math.abs(was) + 1e-9));
      }
    }
    assertThat(sum(graded, Measure.PRODUCT_POINT_COST)).isZero();
  }

  /**
   * Paid by the share itself, a package earns what its mass of the component would: over all
   * components that is the whole price, whatever went into which package.
   */
  @Test
  void sharesOfAllComponentsAddUpToTheWholePrice() {
    double sum = 0;
    for (String component : COMPONENTS) {
      double earned = revenue(year(paid(component, "line: [[0 %, 0], [100 %, 1]]")));
      assertThat(earned).as(component).isPositive();
      sum += earned;
    }
    double alike = revenue(year());
    assertThat(sum).isCloseTo(alike, within(1e-9 * alike));
  }

  /** A line down to nothing at 100 % loses one hundredth of the price with each point. */
  @Test
  void aPointCostsWhatTheLineFallsByIt() {
    double alike = revenue(year());
    Outcome year = year(paid("hurd", "line: [[0 %, 1], [100 %, 0]]"));
    assertThat(sum(year, Measure.PRODUCT_POINT_COST)).isCloseTo(alike / 100, within(1e-9 * alike));
    assertThat(year.value(Measure.PRODUCT_SHARE_SD.of("tow", "hurd"))).isBetween(0.0001, 0.05);
    assertThat(year.value(Measure.PRODUCT_PRICE_FACTOR.of("tow")))
        .isCloseTo(1 - year.value(Measure.PRODUCT_SHARE_MEAN.of("tow", "hurd")), within(0.001));
  }

  /** The cost of a point is what is missing in a plant whose every step lies a point lower. */
  @Test
  void aPointIsThatOfStepsThatLieAPointLower() {
    Outcome year = year(paid("hurd", "steps: [[0 %, 1.1], [2.5 %, 1], [3 %, 0.9], [3.5 %, 0.5]]"));
    Outcome stricter =
        year(paid("hurd", "steps: [[0 %, 1.1], [1.5 %, 1], [2 %, 0.9], [2.5 %, 0.5]]"));
    assertThat(sum(year, Measure.PRODUCT_POINT_COST))
        .isPositive()
        .isCloseTo(revenue(year) - revenue(stricter), within(1e-9 * revenue(year)));
  }
}
