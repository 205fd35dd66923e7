package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is left of an amount of which a part was counted before the first day. */
class InitialAgeTest {
  private static final int YEARS = 2000;

  /**
   * Tonnes fed at 2 t/h before the first stop, which outlasts the two days, by replication.
   *
   * @param every and initial age, of running hours
   */
  private static double[] fedT(String every, int years) {
    Plant plant =
        TestPlant.oneLine()
            .days(2)
            .with(
                "machines.feeder.stops",
                "{chain: {every: " + every + ", counted: running, lasts: 100 h}}")
            .plant();
    Replication replication = Ready.replication(plant);
    RandomStreams streams = new RandomStreams(1);
    return IntStream.rangeClosed(1, years)
        .mapToDouble(year -> replication.run(streams, year, null).value("mass.stalk.fed"))
        .toArray();
  }

  private static double mean(double[] of) {
    return IntStream.range(0, of.length).mapToDouble(i -> of[i]).average().orElseThrow();
  }

  /**
   * Of amounts between 0 and 20 h those above 10 h are even between 10 and 20, so that 0 to 10 h
   * are left: 10 t in the mean, with a standard error of 20/√12/√2000 = 0.13 t; within 4 of them.
   */
  @Test
  void theFirstAmountIsOneOfThoseAboveTheAge() {
    double[] fedT = fedT("{uniform: {low: 0 h, high: 20 h}}, initial_age: 10 h", YEARS);
    assertThat(mean(fedT)).isCloseTo(10, within(0.52));
    assertThat(Arrays.stream(fedT)).allMatch(t -> t > 0 && t <= 20.001);
  }

  /** What has no memory stays as it was: 4 h are left in the mean, 8 t; error 8/√2000 = 0.18 t. */
  @Test
  void anExponentialAmountForgetsItsAge() {
    double[] fedT = fedT("{exponential: {mean: 4 h}}, initial_age: 3 h", YEARS);
    assertThat(mean(fedT)).isCloseTo(8, within(0.72));
  }

  @Test
  void aPartThatIsOlderThanItsLawAllowsStopsAtOnce() {
    assertThat(mean(fedT("{uniform: {low: 0 h, high: 20 h}}, initial_age: 21 h", 20))).isZero();
    assertThat(mean(fedT("10 h, initial_age: 4 h", 1))).isCloseTo(12, within(1e-6));
    assertThat(mean(fedT("10 h, initial_age: 11 h", 1))).isZero();
  }
}
