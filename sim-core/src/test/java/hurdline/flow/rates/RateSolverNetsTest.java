package hurdline.flow.rates;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.flow.LimitSharingTrials;
import org.junit.jupiter.api.Test;

/**
 * Thousands of random nets against the definitions, linear programs and exhaustive search; more in
 * the proof.
 */
class RateSolverNetsTest {
  private static final long SEED = 20261125;

  @Test
  void everyRateIsFeasibleAndEveryHeadRunsAtItsReachOrHasTheHolderThatIsNamed() {
    int[] seen = new LimitSharingTrials(20_000).feasibleAndFair(SEED);
    assertThat(seen[0]).as("nets with a held head").isGreaterThan(10_000);
    assertThat(seen[1]).as("nets with a knot").isGreaterThan(1_000);
  }

  @Test
  void whatIsCalledAHolderIsOneByDefinition() {
    new LimitSharingTrials(10_000).aHolderIsWhatTheDefinitionSays(SEED + 1);
  }

  @Test
  void noHeadCouldRunFasterWithoutAnotherRunningSlower() {
    new LimitSharingTrials(3_000).maximal(SEED + 2);
  }

  @Test
  void groupByGroupTheLowestPacesAreAsHighAsTheyCanBe() {
    int[] seen = new LimitSharingTrials(3_000).lexicographic(SEED + 3);
    assertThat(seen[0]).as("compared").isGreaterThan(1_000);
    assertThat(seen[1]).as("programs that rounding made unsolvable").isLessThan(30);
  }

  @Test
  void ofAllWaysToNameHoldersTheOneThatFitsIsFound() {
    int[] seen = new LimitSharingTrials(20_000).oneOfAllAnswers(SEED + 4);
    assertThat(seen[0]).as("tried").isGreaterThan(15_000);
    assertThat(seen[1]).as("with a knot").isGreaterThan(200);
    assertThat(seen[2]).as("with several answers").isLessThan(5);
  }

  @Test
  void numberingHeadsAndLimitsOtherwiseChangesNoRate() {
    new LimitSharingTrials(20_000).sameUnderOtherNumbers(SEED + 5);
  }

  @Test
  void aHeadSlowedByAMillionthIsNoticed() {
    int[] seen = new LimitSharingTrials(5_000).slowedByAMillionth(SEED + 6);
    assertThat(seen[0]).isGreaterThan(10_000);
    assertThat(seen[1]).isZero();
  }

  @Test
  void aHeadSlowedByAMillionthLeavesThatMuchToTheProgram() {
    int[] seen = new LimitSharingTrials(500).slowedAndGivenToTheProgram(SEED + 9);
    assertThat(seen[0]).isGreaterThan(1_000);
    assertThat(seen[1]).isZero();
  }

  @Test
  void aHundredThousandthMovedBetweenRivalsIsNoticed() {
    int[] seen = new LimitSharingTrials(5_000).movedBetweenRivals(SEED + 7);
    assertThat(seen[0]).isGreaterThan(10_000);
    assertThat(seen[1]).isZero();
  }

  @Test
  void anotherHolderThanTheRightOnesIsRefused() {
    int[] seen = new LimitSharingTrials(5_000).anotherHolderNamed(SEED + 8);
    assertThat(seen[0]).isGreaterThan(5_000);
    assertThat(seen[1]).as("true ties, common with round numbers").isLessThan(seen[0] / 5);
  }
}
