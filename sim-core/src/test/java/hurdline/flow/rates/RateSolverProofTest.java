package hurdline.flow.rates;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.flow.LimitSharingNets;
import hurdline.flow.LimitSharingTrials;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The checks of {@link RateSolverNetsTest} on 200,000 nets each, and the search for knots on a
 * million.
 */
@Tag("proof")
class RateSolverProofTest {
  private static final long SEED = 1_000_003;
  private static final int NETS = 200_000;

  @Test
  void everyRateIsFeasibleAndEveryHeadRunsAtItsReachOrHasTheHolderThatIsNamed() {
    int[] seen = new LimitSharingTrials(NETS).feasibleAndFair(SEED);
    assertThat(seen[1]).as("nets with a knot").isGreaterThan(10_000);
  }

  @Test
  void whatIsCalledAHolderIsOneByDefinition() {
    new LimitSharingTrials(NETS).aHolderIsWhatTheDefinitionSays(SEED + 1);
  }

  @Test
  void noHeadCouldRunFasterWithoutAnotherRunningSlower() {
    new LimitSharingTrials(NETS).maximal(SEED + 2);
  }

  @Test
  void groupByGroupTheLowestPacesAreAsHighAsTheyCanBe() {
    int[] seen = new LimitSharingTrials(NETS).lexicographic(SEED + 3);
    assertThat(seen[1]).as("programs that rounding made unsolvable").isLessThan(NETS / 100);
  }

  @Test
  void ofAllWaysToNameHoldersTheOneThatFitsIsFound() {
    int[] seen = new LimitSharingTrials(NETS).oneOfAllAnswers(SEED + 4);
    assertThat(seen[2]).as("with several answers").isLessThan(NETS / 10_000);
  }

  @Test
  void numberingHeadsAndLimitsOtherwiseChangesNoRate() {
    new LimitSharingTrials(NETS).sameUnderOtherNumbers(SEED + 5);
  }

  @Test
  void aMillionKnotsOrNoneAreUntiedMostlyInTwoRounds() {
    LimitSharingNets nets = new LimitSharingNets(SEED + 6, 12, 10, false);
    int knots = 0;
    int quick = 0;
    for (int i = 0; i < 1_000_000; i++) {
      int rounds = nets.next().solved().knotRounds();
      knots += rounds > 0 ? 1 : 0;
      quick += rounds == 1 || rounds == 2 ? 1 : 0;
    }
    assertThat(knots).isGreaterThan(50_000);
    assertThat((double) quick / knots).isGreaterThan(0.9);
  }
}
