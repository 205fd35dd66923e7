package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;

/**
 * Loads that come at random round the clock to one loader, against the mean wait of Pollaczek and
 * Khinchine, W = λ·E[S²] / (2(1 − λ·E[S])): a Poisson stream of rate λ, service times S of any
 * kind, one server, first come first served; several loaders against Erlang's.
 *
 * <p>Judged by the spread over replications (a two-sided t-test at 1e-6, so at most 9e-6 false
 * alarms for this class); each replication starts empty, which costs well below 1 % of the mean and
 * is far inside what the test can see.
 *
 * @see "Kleinrock, Queueing Systems, Volume 1: Theory (1975), section 5.6 (from memory)"
 */
class QueueFormulasTest {
  private static final int REPLICATIONS = 16;
  private static final double EVERY_MIN = 10;
  private static final double UNLOAD_MIN = 6;

  @Test
  void exponentialUnloadingWaitsAsLongAsTheFormulaSays() {
    double[] waits = waitsMin("{exponential: {mean: 6 min}}");
    assertThat(tellsApart(waits, formulaMin(2 * UNLOAD_MIN * UNLOAD_MIN))).isFalse();
    assertThat(tellsApart(waits, formulaMin(UNLOAD_MIN * UNLOAD_MIN)))
        .as("the control must be seen")
        .isTrue();
  }

  @Test
  void fixedUnloadingWaitsHalfAsLong() {
    double[] waits = waitsMin("6 min");
    assertThat(tellsApart(waits, formulaMin(UNLOAD_MIN * UNLOAD_MIN))).isFalse();
    assertThat(tellsApart(waits, formulaMin(1.2 * UNLOAD_MIN * UNLOAD_MIN)))
        .as("the control must be seen")
        .isTrue();
  }

  /** Mean and sd are of the time itself, not of its logarithm: only the second moment shows it. */
  @Test
  void lognormalUnloadingWaitsByItsSecondMoment() {
    double[] waits = waitsMin("{lognormal: {mean: 6 min, sd: 9 min}}");
    assertThat(tellsApart(waits, formulaMin(UNLOAD_MIN * UNLOAD_MIN + 9 * 9))).isFalse();
    assertThat(tellsApart(waits, formulaMin(UNLOAD_MIN * UNLOAD_MIN)))
        .as("the control must be seen")
        .isTrue();
  }

  /** Two and three loaders share one queue. */
  @Test
  void severalLoadersWaitAsErlangSays() {
    for (int loaders : new int[] {2, 3}) {
      double everyMin = UNLOAD_MIN / loaders / 0.75;
      double[] waits = waitsMin(everyMin, "{exponential: {mean: 6 min}}", loaders);
      assertThat(tellsApart(waits, QueuePlants.manyServersWait(everyMin, UNLOAD_MIN, loaders)))
          .isFalse();
      double apart = QueuePlants.manyServersWait(loaders * everyMin, UNLOAD_MIN, 1);
      assertThat(tellsApart(waits, apart)).as("a queue before each must be seen").isTrue();
    }
  }

  /**
   * Loads that are weighed in and out on one scale come to it twice as often, and scale and loader
   * wait each as if alone.
   *
   * @see "J. R. Jackson, Networks of waiting lines, Operations Research 5 (1957), pages 518-521
   *     (from memory)"
   */
  @Test
  void scaleAndLoaderOneAfterTheOtherWaitAsIfAlone() {
    Repeats repeats = new Repeats(QueuePlants.weighedLoads(8, 2.4, 6, 1), 48, REPLICATIONS);
    double[] scale = repeats.of("resource.scale.wait.mean");
    assertThat(tellsApart(scale, QueuePlants.oneServerWait(4, 2.4, 2 * 2.4 * 2.4))).isFalse();
    assertThat(tellsApart(scale, QueuePlants.oneServerWait(8, 2.4, 2 * 2.4 * 2.4)))
        .as("weighed once")
        .isTrue();
    double[] loader = repeats.of("resource.loader.wait.mean");
    assertThat(tellsApart(loader, QueuePlants.manyServersWait(8, 6, 1))).isFalse();
    assertThat(tellsApart(loader, QueuePlants.manyServersWait(8, 6.6, 1)))
        .as("a tenth longer")
        .isTrue();
  }

  @Test
  void withOneLoaderErlangSaysWhatPollaczekDoes() {
    double everyMin = 10;
    assertThat(QueuePlants.manyServersWait(everyMin, UNLOAD_MIN, 1))
        .isCloseTo(formulaMin(2 * UNLOAD_MIN * UNLOAD_MIN), within(1e-12));
  }

  /**
   * Four trucks in a closed round: random drives of Z min both ways together, one loader that takes
   * S min, exponential. With p₀ = 1 / Σₖ N!/(N − k)!·(S/Z)ᵏ the loader is busy 1 − p₀ of the time,
   * whatever the drives' distribution.
   *
   * @see "Kleinrock, Queueing Systems, Volume 1: Theory (1975), section 3.8, finite customer
   *     population (from memory)"
   */
  @Test
  void aClosedRoundOfTrucksDependsOnTheDrivesOnlyByTheirMean() {
    double busy = finiteSourceBusy(4, 20, 60);
    assertThat(busy).isCloseTo(0.794, within(0.001));
    assertThat(tellsApart(loaderBusy("30 min"), busy)).isFalse();
    assertThat(tellsApart(loaderBusy("{lognormal: {mean: 30 min, sd: 30 min}}"), busy)).isFalse();
    assertThat(tellsApart(loaderBusy("36 min"), busy)).as("the control must be seen").isTrue();
  }

  private static double finiteSourceBusy(int trucks, double serviceMin, double driveMin) {
    double sum = 0;
    double term = 1;
    for (int k = 0; k <= trucks; k++) {
      sum += term;
      term *= (trucks - k) * serviceMin / driveMin;
    }
    return 1 - 1 / sum;
  }

  private static double[] loaderBusy(String drive) {
    YardRun run =
        YardRun.of(
            YardTexts.plant(
                "2027-03-01",
                "2027-04-14",
                "[]",
                """
                resources: {loader: {count: 1}}
                yard: {places: {barn: {holds: 99999 bales}}}
                deliveries:
                  stalk:
                    fields: {bench: {area: 1000 ha, yield: 10 t/ha, ready: 2027-03-01, baling: 90 bales/d}}
                    hours: {from: "00:00", to: "24:00"}
                    trucks: {count: 4, bales: 1, drive: %s}
                    unload: {lasts: {exponential: {mean: 20 min}}, needs: loader}
                """
                    .formatted(drive)));
    double[] busy = new double[REPLICATIONS];
    for (int replication = 0; replication < REPLICATIONS; replication++) {
      busy[replication] = run.run(47, replication + 1).busyShare("loader");
    }
    return busy;
  }

  private static double formulaMin(double secondMomentMin2) {
    double load = UNLOAD_MIN / EVERY_MIN;
    return secondMomentMin2 / EVERY_MIN / (2 * (1 - load));
  }

  /** Mean wait of each replication. */
  private static double[] waitsMin(String unload) {
    return waitsMin(EVERY_MIN, unload, 1);
  }

  private static double[] waitsMin(double everyMin, String unload, int loaders) {
    YardRun run =
        YardRun.of(
            YardTexts.plant(
                "2027-03-01",
                "2027-04-14",
                "[]",
                """
                resources: {loader: {count: %d}}
                yard: {places: {barn: {holds: 99999 bales}}}
                deliveries:
                  stalk:
                    loads: {every: {exponential: {mean: %s min}}, bales: 1}
                    unload: {lasts: %s, needs: loader}
                """
                    .formatted(loaders, everyMin, unload)));
    double[] waits = new double[REPLICATIONS];
    for (int replication = 0; replication < REPLICATIONS; replication++) {
      waits[replication] = run.run(46, replication + 1).waitMeanS("loader") / YardRun.MIN;
    }
    return waits;
  }

  private static boolean tellsApart(double[] waits, double formula) {
    double mean = Arrays.stream(waits).average().orElseThrow();
    double squares = Arrays.stream(waits).map(wait -> (wait - mean) * (wait - mean)).sum();
    double error = Math.sqrt(squares / (waits.length - 1) / waits.length);
    double limit = TDistribution.of(waits.length - 1).inverseSurvivalProbability(0.5e-6);
    return Math.abs(mean - formula) > limit * error;
  }
}
