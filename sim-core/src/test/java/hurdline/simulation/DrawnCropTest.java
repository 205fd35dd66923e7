package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.Distribution;
import hurdline.random.Lognormal;
import hurdline.random.Normal;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import hurdline.simulation.yard.Baling;
import hurdline.simulation.yard.CarriedOverStock;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What the fields are drawn to bear, against its mean under the plant file. Crops by name: stalk is
 * 1.
 */
class DrawnCropTest {
  private static final int STALK = 1;
  private static final int REPLICATIONS = 4000;

  /**
   * Standard errors that a mean over all replications may lie off. Seeds are fixed; with another
   * seed one of the ten means below would fail once in 170,000 times, were they normal.
   */
  private static final double STANDARD_ERRORS = 5;

  /**
   * Every distribution that the format has, cut where it can be; the first draws below 0 every
   * other time.
   */
  private static final List<String> YIELDS =
      List.of(
          "{normal: {mean: 0 t/ha, sd: 4 t/ha}}",
          "{normal: {mean: 8 t/ha, sd: 4 t/ha, low: 6 t/ha}}",
          "{lognormal: {mean: 8 t/ha, sd: 6 t/ha, low: 5 t/ha, high: 20 t/ha}}",
          "{exponential: {mean: 8 t/ha, low: 3 t/ha, high: 12 t/ha}}",
          "{gamma: {mean: 8 t/ha, sd: 4 t/ha, high: 10 t/ha}}",
          "{weibull: {shape: 0.8, scale: 8 t/ha, high: 30 t/ha}}",
          "{uniform: {low: 2 t/ha, high: 9 t/ha}}",
          "{triangular: {low: 2 t/ha, mode: 3 t/ha, high: 9 t/ha}}",
          "{beta: {mean: 5 t/ha, sd: 1 t/ha, low: 2 t/ha, high: 9 t/ha}}",
          "{observed: [2 t/ha, 3 t/ha, 11 t/ha]}");

  private static final String SEASON = "{normal: {mean: 100 %, sd: 30 %, low: 60 %, high: 110 %}}";

  private static Plant plant(List<String> yields) {
    StringBuilder fields = new StringBuilder();
    for (int at = 0; at < yields.size(); at++) {
      fields.append(
          "      f%d: {area: %d ha, yield: %s, ready: 2027-03-03, baling: 90 bales/d}%n"
              .formatted(at, 1 + at, yields.get(at)));
    }
    String rest =
        """
        yard: {places: {barn: {holds: 9000 bales}}}
        deliveries:
          stalk:
            hours: {from: "07:00", to: "18:00"}
            trucks: {count: 1, bales: 10, drive: 1 h}
            yield_factor: %s
            fields:
        %s
        """;
    return PlantFile.of("test", YardTexts.march(31, rest.formatted(SEASON, fields))).plant();
  }

  private static Haulage haulage(Plant plant) {
    return Haulage.of(plant, YardPlan.of(plant), Roster.of(plant));
  }

  /** [field][replication] kg; only draws, nothing is simulated. */
  private static double[][] drawnKg(Plant plant, int replications) {
    Haulage haulage = haulage(plant);
    Baling baling = new Baling(YardPlan.of(plant), haulage);
    double[][] drawnKg = new double[haulage.fields()][replications];
    for (int replication = 0; replication < replications; replication++) {
      baling.reset(new RandomStreams(5), replication + 1);
      for (int field = 0; field < drawnKg.length; field++) {
        drawnKg[field][replication] = baling.leftKg(field);
      }
    }
    return drawnKg;
  }

  /** How many of its own standard errors the mean of the values lies off. */
  private static double errorsOff(double[] values, double mean) {
    double sum = 0;
    double squares = 0;
    for (double value : values) {
      sum += value - mean;
      squares += (value - mean) * (value - mean);
    }
    int n = values.length;
    return sum / n / Math.sqrt((squares - sum * sum / n) / (n - 1) / n);
  }

  @Test
  void theDrawnCropOfManyReplicationsHasItsMeanUnderEveryDistribution() {
    Plant plant = plant(YIELDS);
    Haulage haulage = haulage(plant);
    double[][] drawnKg = drawnKg(plant, REPLICATIONS);
    double sumKg = 0;
    for (int field = 0; field < drawnKg.length; field++) {
      double meanKg = haulage(plant(onlyField(field))).meanCropKg(STALK);
      sumKg += meanKg;
      assertThat(errorsOff(drawnKg[field], meanKg))
          .as(YIELDS.get(field))
          .isBetween(-STANDARD_ERRORS, STANDARD_ERRORS);
    }
    assertThat(haulage.meanCropKg(STALK)).isCloseTo(sumKg, within(1e-9 * sumKg));
    assertThat(haulage.meanCropKg(0)).isZero();
  }

  /** The same plant with no yield at all in every field but one. */
  private static List<String> onlyField(int field) {
    return YIELDS.stream()
        .map(yield -> yield.equals(YIELDS.get(field)) ? yield : "0 t/ha")
        .toList();
  }

  /**
   * The control: means as the file gives them, before cuts and with draws below 0 counted as such,
   * are seen to be wrong.
   */
  @Test
  void meansBeforeACutFail() {
    double[][] drawnKg = drawnKg(plant(YIELDS), REPLICATIONS);
    double season = new Normal(1, 0.3, 0.6, 1.1).mean();
    assertThat(Math.abs(errorsOff(drawnKg[0], 0))).isGreaterThan(STANDARD_ERRORS);
    assertThat(Math.abs(errorsOff(drawnKg[2], 3e4 * 0.8 * season))).isGreaterThan(STANDARD_ERRORS);
    Distribution cut = new Lognormal(0.8, 0.6, 0.5, 2);
    assertThat(Math.abs(errorsOff(drawnKg[2], 3e4 * cut.mean() * 1)))
        .isGreaterThan(STANDARD_ERRORS);
    assertThat(errorsOff(drawnKg[2], 3e4 * cut.mean() * season))
        .isBetween(-STANDARD_ERRORS, STANDARD_ERRORS);
  }

  @Test
  void oneSeasonFactorIsDrawnForAllFieldsOfACrop() {
    double[][] drawnKg = drawnKg(plant(List.of("8 t/ha", "8 t/ha")), 50);
    for (int replication = 0; replication < 50; replication++) {
      assertThat(drawnKg[1][replication]).isCloseTo(2 * drawnKg[0][replication], within(1e-6));
    }
    assertThat(drawnKg[0][0]).isNotEqualTo(drawnKg[0][1]);
  }

  /**
   * Opened with what another year left unbaled, a year has drawn the same; a crop without fields
   * has no drawn crop.
   */
  @Test
  void theMeasureIsWhatTheYearItselfHasDrawn() {
    Plant plant = plant(List.of("{normal: {mean: 8 t/ha, sd: 1 t/ha}}", "400 t/ha"));
    double[][] drawnKg = drawnKg(plant, 2);
    Replication replication = Ready.replication(plant);
    replication.run(new RandomStreams(5), 1, null);
    CarriedOverStock left = replication.leftOver();
    assertThat(left.isEmpty()).isFalse();
    Outcome second = replication.run(new RandomStreams(5), 2, left, null);
    double expected = (drawnKg[0][1] + drawnKg[1][1]) / 1000;
    assertThat(second.value("mass.stalk.drawn")).isCloseTo(expected, within(1e-9 * expected));
    assertThat(second.value("mass.stalk.drawn_over_mean"))
        .isCloseTo(expected * 1000 / haulage(plant).meanCropKg(STALK), within(1e-9));
    assertThat(second.columns()).noneMatch(column -> column.name().startsWith("mass.cotton.drawn"));
  }

  @Test
  void aMeanOfNothingGivesNoRatio() {
    Outcome outcome =
        Ready.replication(plant(List.of("0 t/ha"))).run(new RandomStreams(5), 1, null);
    assertThat(outcome.value("mass.stalk.drawn")).isZero();
    assertThat(outcome.value("mass.stalk.drawn_over_mean")).isNaN();
  }
}
