package hurdline.flow.rates;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.flow.LimitSharingTrials;
import org.junit.jupiter.api.Test;

/**
 * What {@link RateSolverNetsTest} shows on thousands of nets, on hundreds: fast enough to run
 * against each mutant.
 */
class RateSolverFewNetsTest {
  private static final long SEED = 20261126;

  @Test
  void everyHeadRunsAtItsReachOrHasAHolder() {
    assertThat(new LimitSharingTrials(1_500).feasibleAndFair(SEED)[0]).isGreaterThan(700);
  }

  @Test
  void aHolderIsOneByDefinition() {
    new LimitSharingTrials(800).aHolderIsWhatTheDefinitionSays(SEED + 1);
  }

  @Test
  void pacesAreThoseOfThePrograms() {
    assertThat(new LimitSharingTrials(100).lexicographic(SEED + 3)[0]).isGreaterThan(30);
  }

  @Test
  void ofAllWaysToNameHoldersOneFits() {
    assertThat(new LimitSharingTrials(800).oneOfAllAnswers(SEED + 4)[0]).isGreaterThan(500);
  }

  @Test
  void anotherHolderIsRefused() {
    int[] seen = new LimitSharingTrials(400).anotherHolderNamed(SEED + 8);
    assertThat(seen[0]).isGreaterThan(400);
    assertThat(seen[1]).isLessThan(seen[0] / 5);
  }
}
