package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import org.junit.jupiter.api.Test;

/** Intervals by chance and inputs: by hand, and how often they hold where truth is known. */
class MeanOverInputsTest {
  private static final double T_OF_THREE = 3.182446305284263; // 97.5 % point, 3 degrees of freedom

  /**
   * X = 10, 12, 14, 16: mean 13, s² = 20/3, h = t₃·√(20/3)/2. D = 1, −1, 2, −2: variance 10/3, so
   * the inputs make t₃·√(10/3).
   */
  @Test
  void partsAreThoseByHand() {
    double[] given = {10, 12, 14, 16};
    double[] drawn = {11, 11, 16, 14};
    MeanOverInputs found = MeanOverInputs.of(given, drawn, 200, 0.95);
    double chance = T_OF_THREE * Math.sqrt(20.0 / 3) / 2;
    double inputs = T_OF_THREE * Math.sqrt(10.0 / 3);
    assertThat(found.mean()).isEqualTo(13);
    assertThat(found.chance().halfWidth()).isCloseTo(chance, within(1e-9));
    assertThat(found.inputsHalfWidth()).isCloseTo(inputs, within(1e-9));
    assertThat(found.interval().halfWidth()).isCloseTo(Math.hypot(chance, inputs), within(1e-9));
    assertThat(found.isBound()).isTrue();
    assertThat(found.shift()).isZero();
    assertThat(found.bends()).isFalse();
  }

  /**
   * Two rows twice each, D = 3, −1 | 5, −3: row means 4 and −2, B = 2·18 = 36, W = (2 + 2)/2 = 2,
   * so v = 17 + ½√(2·(36²/1 + 2²/2)) = 17 + ½√2596.
   */
  @Test
  void rowsSimulatedTwiceTellChanceApart() {
    MeanOverInputs found = MeanOverInputs.of(new double[4], new double[] {3, -1, 5, -3}, 2, 0.95);
    double variance = 17 + 0.5 * Math.sqrt(2596);
    assertThat(found.isBound()).isFalse();
    assertThat(found.inputsHalfWidth())
        .isCloseTo(12.706204736432095 * Math.sqrt(variance), within(1e-6));
  }

  @Test
  void inputsThatMakeNothingLeaveTheIntervalByChance() {
    double[] given = {1, 2, 4};
    MeanOverInputs found = MeanOverInputs.of(given, given, 200, 0.95);
    assertThat(found.interval()).isEqualTo(Intervals.mean95(given));
  }

  @Test
  void anAnswerThatBendsIsTold() {
    double[] given = new double[40];
    double[] drawn = new double[40];
    for (int i = 0; i < 40; i++) {
      given[i] = 100;
      drawn[i] = 100 - (i % 4) * (i % 4); // the more an input is off, the less, either way
    }
    assertThat(MeanOverInputs.of(given, drawn, 200, 0.95).bends()).isTrue();
  }

  /**
   * 2,000 worlds: the input's estimate θ̂ is normal around 0 with error 1, a season is θ +
   * 2·chance, 40 seasons. With three standard errors (0.5 %) of slack; by chance alone the interval
   * must fail.
   */
  @Test
  void theIntervalHoldsTheTruthAndThatByChanceAloneDoesNot() {
    int held = 0;
    int alone = 0;
    int worlds = 2_000;
    RandomStreams streams = new RandomStreams(7);
    for (int world = 0; world < worlds; world++) {
      RandomStream stream = streams.of(world, "worlds");
      double estimate = stream.nextNormal();
      double[] given = new double[40];
      double[] drawn = new double[40];
      for (int i = 0; i < 40; i++) {
        double season = 2 * stream.nextNormal();
        given[i] = estimate + season;
        drawn[i] = estimate + stream.nextNormal() + season;
      }
      MeanOverInputs found = MeanOverInputs.of(given, drawn, 200, 0.95);
      held += found.interval().covers(0) ? 1 : 0;
      alone += found.chance().covers(0) ? 1 : 0;
    }
    assertThat((double) held / worlds).isBetween(0.935, 0.975);
    assertThat((double) alone / worlds).isLessThan(0.6);
  }
}
