package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Scores of a season among simulated ones, and how often they raise a false alarm. */
class SeasonScoreTest {
  private static final int WEEKS = 12;

  /** One year's weeks hang together; its level is a chance of its own. */
  private static double[] season(RandomStream stream, double more) {
    double level = 100 + more + 3 * stream.nextNormal();
    return IntStream.range(0, WEEKS).mapToDouble(w -> level + 5 * stream.nextNormal()).toArray();
  }

  private static SeasonScore score(int world, double more) {
    RandomStream stream = new RandomStreams(5).of(world, "seasons");
    double[][] simulated =
        IntStream.range(0, 99).mapToObj(r -> season(stream, 0)).toArray(double[][]::new);
    return SeasonScore.of(season(stream, more), simulated);
  }

  /** Sums 1 + 2 among 3, 5, 7, 9, ...: the least of 20, and its rank is below all. */
  @Test
  void theFarthestOfAllHasTheLeastChance() {
    double[][] simulated =
        IntStream.range(0, 19)
            .mapToObj(r -> new double[] {10 + r, 10 + r})
            .toArray(double[][]::new);
    SeasonScore found = SeasonScore.of(new double[] {1, 2}, simulated);
    assertThat(found.total()).isEqualTo(3);
    assertThat(found.mean()).isEqualTo(38);
    assertThat(found.totalP()).isCloseTo(1 / 20.0, within(1e-12));
    assertThat(found.totalTail()).isLessThan(0.02);
    assertThat(found.outside90()).isEqualTo(1);
  }

  /**
   * At 5 % in 400 worlds, three standard errors either way; weeks that hang together do no harm.
   */
  @Test
  void aRightModelIsRarelyBlamed() {
    int worlds = 400;
    double total = 0;
    double crps = 0;
    double ranks = 0;
    for (int world = 0; world < worlds; world++) {
      SeasonScore found = score(world, 0);
      total += found.totalP() <= 0.05 ? 1.0 / worlds : 0;
      crps += found.crpsP() <= 0.05 ? 1.0 / worlds : 0;
      ranks += found.rankP() <= 0.05 ? 1.0 / worlds : 0;
    }
    assertThat(total).isBetween(0.017, 0.083);
    assertThat(crps).isBetween(0.017, 0.083);
    assertThat(ranks).isBetween(0.017, 0.083);
  }

  @Test
  void aWrongModelIsFound() {
    long found = IntStream.range(0, 40).filter(world -> score(world, 12).totalP() <= 0.05).count();
    assertThat(found).isGreaterThan(30);
  }

  @Test
  void chancesAreRaisedByHolm() {
    assertThat(SeasonScore.together(new double[] {0.04, 0.01, 0.03}))
        .containsExactly(0.06, 0.03, 0.06);
  }

  /** y = 2z + noise of variance 1, z standard normal: Δz = 2/(4 + 1)·y, told 4/5. */
  @Test
  void aSeasonMovesTheInputThatItTellsOf() {
    RandomStream stream = new RandomStreams(8).of(1, "inputs");
    int n = 2_000;
    double[] input = new double[n];
    double[] other = new double[n];
    double[][] totals = new double[n][];
    for (int r = 0; r < n; r++) {
      input[r] = stream.nextNormal();
      other[r] = stream.nextNormal();
      totals[r] = new double[] {2 * input[r] + stream.nextNormal(), 7};
    }
    LinearUpdate update = new LinearUpdate(totals, new double[] {5, 7});
    LinearUpdate.Move found = update.of(input).orElseThrow();
    assertThat(found.errors()).isCloseTo(2, within(0.1));
    assertThat(found.told()).isCloseTo(0.8, within(0.03));
    assertThat(update.of(other).orElseThrow().told()).isLessThan(0.01);
    assertThat(update.of(new double[n])).isEmpty();
  }
}
