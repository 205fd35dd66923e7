package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PairedDifferenceTest {
  private static final double[] BASE = {100, 140, 80, 120};
  private static final double[] OPTION = {103, 145, 82, 126};

  /**
   * Differences 3, 5, 2, 6: mean 4, variance 10/3. Base varies by 2000/3, option by 2250/3. t of 3
   * degrees 3.182446.
   */
  @Test
  void aDifferenceIsKnownByHand() {
    PairedDifference paired = PairedDifference.of(BASE, OPTION, 1);
    assertThat(paired.baseMean()).isEqualTo(110);
    assertThat(paired.optionMean()).isEqualTo(114);
    assertThat(paired.difference()).isEqualTo(4);
    assertThat(paired.at95().halfWidth())
        .isCloseTo(3.182446305 * Math.sqrt(10.0 / 3) / 2, within(1e-9));
    assertThat(paired.joint()).isEqualTo(paired.at95());
    assertThat(paired.varianceRemoved()).isCloseTo(1 - 10.0 / (2000 + 2250), within(1e-12));
    assertThat(paired.significant()).isTrue();
  }

  /**
   * Unpaired, the same data tell nothing apart: the standard error of a mean is 13 against a
   * difference of 4.
   */
  @Test
  void pairingTellsApartWhatTheSeasonsHide() {
    assertThat(Intervals.mean95(BASE).covers(114)).isTrue();
    assertThat(PairedDifference.of(BASE, OPTION, 1).significant()).isTrue();
  }

  /**
   * sd 1.826 against 4: with 3 pairs 4.303 · 1.826 / √3 = 4.54, too wide; with 4, 3.182 · 1.826 / 2
   * = 2.91.
   */
  @Test
  void theReplicationsNeededAreKnownByHand() {
    assertThat(PairedDifference.of(BASE, OPTION, 1).replicationsNeeded()).hasValue(4);
  }

  /**
   * Differences ±10 about 1, n even: s near 10, so about (1.96 · 10)² = 385 pairs, a few more for
   * t.
   */
  @Test
  void aSmallDifferenceNeedsAboutTheSquareOfItsNoise() {
    double[] base = new double[400];
    double[] option = new double[400];
    for (int i = 0; i < 400; i++) {
      option[i] = 1 + (i % 2 == 0 ? 10 : -10);
    }
    PairedDifference paired = PairedDifference.of(base, option, 1);
    assertThat(paired.replicationsNeeded().getAsInt()).isBetween(385, 392);
    assertThat(paired.significant()).isTrue();
    assertThat(PairedDifference.of(base, option, 10).significant())
        .as("one of ten, jointly")
        .isFalse();
    assertThat(PairedDifference.of(base, option, 10).at95()).isEqualTo(paired.at95());
    assertThat(PairedDifference.of(base, option, 10).replicationsNeeded().getAsInt())
        .isGreaterThan(700);
  }

  @Test
  void nothingIsSignificantThatDoesNotDiffer() {
    PairedDifference same = PairedDifference.of(BASE, BASE, 3);
    assertThat(same.difference()).isZero();
    assertThat(same.at95()).isEqualTo(new Interval(0, 0));
    assertThat(same.significant()).isFalse();
    assertThat(same.replicationsNeeded()).isEmpty();
    assertThat(same.varianceRemoved()).isEqualTo(1);
  }

  @Test
  void aDifferenceWithoutSpreadIsSignificantByTwo() {
    PairedDifference sure = PairedDifference.of(new double[] {1, 1}, new double[] {3, 3}, 1);
    assertThat(sure.at95()).isEqualTo(new Interval(2, 2));
    assertThat(sure.replicationsNeeded()).hasValue(2);
    assertThat(sure.varianceRemoved()).isNaN();
  }

  @Test
  void onePairHasADifferenceAndNoInterval() {
    PairedDifference one = PairedDifference.of(new double[] {1}, new double[] {3}, 1);
    assertThat(one.difference()).isEqualTo(2);
    assertThat(one.at95()).isEqualTo(Interval.NONE);
    assertThat(one.significant()).isFalse();
    assertThat(one.replicationsNeeded()).isEmpty();
    assertThat(one.varianceRemoved()).isNaN();
  }

  @Test
  void pairsInWhichEitherHasNoValueAreLeftOut() {
    PairedDifference paired =
        PairedDifference.of(
            new double[] {100, Double.NaN, 140, 80, 120, 7},
            new double[] {103, 9, 145, 82, 126, Double.NaN},
            1);
    assertThat(paired).isEqualTo(PairedDifference.of(BASE, OPTION, 1));
  }

  @Test
  void unequalNumbersAreRefused() {
    assertThatThrownBy(() -> PairedDifference.of(BASE, new double[3], 1))
        .hasMessage("option has 3 values; expected as many as base, 4");
  }

  /**
   * The same sum added up in another order; and, as a control, a difference that is small but one.
   */
  @Test
  void roundingTellsNothingApart() {
    double[] base = {100.1, 100.1, 100.1};
    double[] same = {100.1 + 2e-14, 100.1 + 2e-14, 100.1 + 2e-14};
    double[] other = {100.1001, 100.1001, 100.1001};
    assertThat(PairedDifference.of(base, same, 1).significant()).isFalse();
    assertThat(PairedDifference.of(base, same, 1).difference()).isZero();
    assertThat(PairedDifference.of(base, other, 1).significant()).isTrue();
  }

  /**
   * What is left of sums that come to nothing has no size of its own; one such pair would be skewed
   * beyond measure.
   */
  @Test
  void pairsThatDifferByRoundingAloneHaveAWordOfTheirOwn() {
    double[] base = new double[12];
    double[] option = new double[12];
    option[5] = 3e-13;
    PairedDifference same = PairedDifference.of(base, option, 1);
    assertThat(same.difference()).isZero();
    assertThat(same.interval()).isEqualTo(MeanInterval.EQUAL);
    assertThat(same.significant()).isFalse();
    option[5] = 0.5;
    assertThat(PairedDifference.of(base, option, 1).interval()).isEqualTo(MeanInterval.SKEWED);
  }
}
