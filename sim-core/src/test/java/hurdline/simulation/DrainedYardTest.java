package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Loads into a yard that is drained all the while, over a window of days.
 *
 * <p>Agreement means within 4 standard errors; seeds are fixed, else at most 1 false alarm in 2,000
 * runs of the class.
 */
class DrainedYardTest {
  private static final long SEED = 5;
  private static final double ERRORS = 4;

  /** A stock that never runs out: the peak's law, hour by hour. */
  @Test
  void theHighestLevelOfAWindowFollowsItsLaw() {
    DrainedYard yard = new DrainedYard(120, 4, 0.25, 96);
    Repeats repeats = new Repeats(yard.plant(), SEED, 2_000);
    assertThat(repeats.of("line.stalk_line.hours.limited_by.no_bales")).containsOnly(0.0);
    double[] peak = repeats.of("yard.stalk.peak");
    assertThat(errorsOff(peak, yard.meanPeak())).isLessThan(ERRORS);
    double[] above = Arrays.stream(peak).map(p -> p > 140 ? 1 : 0).toArray();
    assertThat(errorsOff(above, yard.chanceOfPeakAbove(140))).isLessThan(ERRORS);
    assertThat(errorsOff(repeats.of("yard.stalk.mean"), yard.meanLevelOfStock()))
        .isLessThan(ERRORS);
    double[] aDaysFirst = Arrays.stream(peak).map(p -> p - 4).toArray();
    assertThat(errorsOff(aDaysFirst, yard.meanPeak())).as("a load less").isGreaterThan(ERRORS);
  }

  /**
   * From an empty start: hours without bales, and the mean level, by the law of the number there at
   * every instant.
   */
  @Test
  void aYardThatRunsDryFeedsAsTheLawOfItsLevelSays() {
    DrainedYard yard = new DrainedYard(0, 4, 0.2, 72);
    Repeats repeats = new Repeats(yard.plant(), SEED, 2_000);
    double dry = yard.hoursWithoutBales();
    assertThat(errorsOff(repeats.of("line.stalk_line.hours.limited_by.no_bales"), dry))
        .isLessThan(ERRORS);
    assertThat(errorsOff(repeats.of("mass.stalk.fed"), 72 - dry)).isLessThan(ERRORS);
    assertThat(errorsOff(repeats.of("yard.stalk.mean"), yard.meanLevel())).isLessThan(ERRORS);
    assertThat(errorsOff(repeats.of("mass.stalk.fed"), 0.8 * 72))
        .as("in the long run")
        .isGreaterThan(ERRORS);
  }

  /**
   * With a load now and then the feeder's idle time is the window less what came: nothing queues.
   */
  @Test
  void theReferenceItselfHoldsWhereItIsPlain() {
    DrainedYard seldom = new DrainedYard(0, 1, 1e-4, 48);
    assertThat(seldom.hoursWithoutBales()).isCloseTo(48 - 48e-4, within(1.1e-4));
    assertThat(seldom.meanLevel()).isCloseTo(0, within(1e-6));
    DrainedYard none = new DrainedYard(50, 1, 1e-9, 48);
    assertThat(none.meanPeak()).isCloseTo(50, within(1e-6));
    assertThat(none.meanLevelOfStock()).isCloseTo(48 - 23.5, within(1e-6));
  }

  private static double errorsOff(double[] each, double reference) {
    double[] got = Repeats.meanAndError(each);
    return Math.abs(got[0] - reference) / got[1];
  }
}
