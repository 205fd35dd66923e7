package hurdline.study.replicate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.simulation.results.Outcome;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StoppingRuleTest {
  private static final String MARGIN = Measure.MONEY_MARGIN.of();

  private static StoppingRule goal(int replications, double halfWidth, boolean relative) {
    Precision aim = new Precision(MARGIN, halfWidth, relative, MARGIN + ":aim");
    return new StoppingRule(
        new RunSettings(replications, Optional.of(aim), 1, 1, Optional.empty()));
  }

  /** Half of them a unit above the mean, half of them one below: s is √(n/(n − 1)). */
  private static ReplicationResults figures(int count, double mean) {
    ReplicationResults figures = new ReplicationResults();
    List<Outcome.Column> columns = List.of(new Outcome.Column(MARGIN, Measure.MONEY_MARGIN, ""));
    for (int at = 0; at < count; at++) {
      figures.add(columns, new double[] {mean + (at % 2 == 0 ? 1 : -1)});
    }
    return figures;
  }

  @ParameterizedTest
  @CsvSource({"1, 40", "10, 40", "40, 40", "100, 100"})
  void anAimIsNotJudgedByFewerThan40Replications(int asked, int first) {
    assertThat(goal(asked, 1, false).first()).isEqualTo(first);
  }

  @Test
  void withoutAnAimThereAreAsManyAsWereAskedFor() {
    assertThat(
            new StoppingRule(new RunSettings(3, Optional.empty(), 1, 1, Optional.empty())).first())
        .isEqualTo(3);
  }

  /**
   * By hand: s = √(40/39) = 1.01274, t of 39 degrees of freedom 2.0227, so the half-width is
   * 0.32389. An aim of 0.001 takes 40 · 323.89² = 4,196,000.
   */
  @Test
  void anAimOutOfReachSaysHowManyReplicationsItTakes() {
    StoppingRule goal = goal(40, 0.001, false);
    assertThat(goal.outOfReach(figures(40, 5)))
        .hasValueSatisfying(
            fact -> {
              assertThat(fact.needed()).isCloseTo(4_196_000, within(1_000.0));
              assertThat(fact.count()).isEqualTo(40);
              assertThat(fact.most()).isEqualTo(10_000);
            });
  }

  @Test
  void anAimThatIsAShareOfNothingIsBeyondCounting() {
    assertThat(goal(40, 0.01, true).outOfReach(figures(40, 0)).orElseThrow().needed()).isInfinite();
  }

  @Test
  void anAimWithinReachIsNoNews() {
    assertThat(goal(40, 0.1, false).outOfReach(figures(40, 5))).isEmpty();
    assertThat(goal(40, 1, false).outOfReach(figures(40, 5))).isEmpty();
  }

  @Test
  void aMeasureWithoutAnyValueIsNotFollowed() {
    assertThat(goal(40, 0.001, false).outOfReach(figures(40, Double.NaN))).isEmpty();
    assertThat(goal(40, 0.001, false).next(figures(40, Double.NaN))).isEqualTo(40);
  }

  @Test
  void itEndsAtTheMostAndNoBatchMoreThanDoublesWhatThereIs() {
    StoppingRule goal = goal(40, 1e-9, false);
    int count = 40;
    int batches = 0;
    while (goal.next(figures(count, 5)) > count) {
      int next = goal.next(figures(count, 5));
      assertThat(next).isLessThanOrEqualTo(2 * count);
      count = next;
      batches++;
    }
    assertThat(count).isEqualTo(10_000);
    assertThat(batches).isEqualTo(8);
  }
}
