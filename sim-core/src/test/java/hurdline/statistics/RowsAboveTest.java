package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import org.junit.jupiter.api.Test;

/** How many of the plants that draws allow lie above a threshold, apart from chance. */
class RowsAboveTest {
  /** X = 10, 12, 14, 16: mean 13. D = 1, −1, 2, −2: rows at 14, 12, 15, 11. */
  @Test
  void eachRowLiesAtTheMeanAndItsOwnDifference() {
    double[] given = {10, 12, 14, 16};
    double[] drawn = {11, 11, 16, 14};
    assertThat(RowsAbove.of(given, drawn, 200, 13)).isEqualTo(new RowsAbove(4, 2, 1));
    assertThat(RowsAbove.of(given, drawn, 200, 14.5)).isEqualTo(new RowsAbove(4, 1, 1));
    assertThat(RowsAbove.of(given, drawn, 200, 0)).isEqualTo(new RowsAbove(4, 4, 1));
  }

  /** Two rows twice, D = 3, −1 | 5, −3: means 4 and −2 around 1, B 36 and W 2: 1 ± 3·√(34/36). */
  @Test
  void whatChanceLeavesIsTakenOutWhereRowsWereSimulatedTwice() {
    double[] drawn = {3, -1, 5, -3};
    double upper = 1 + 3 * Math.sqrt(34.0 / 36);
    assertThat(RowsAbove.of(new double[4], drawn, 2, upper - 1e-9).above()).isEqualTo(1);
    assertThat(RowsAbove.of(new double[4], drawn, 2, upper + 1e-9).above()).isZero();
    assertThat(RowsAbove.of(new double[4], drawn, 2, 0).times()).isEqualTo(2);
  }

  @Test
  void aRowIsDoneThatIsInHalfOfItsYears() {
    assertThat(RowsAbove.half(new double[] {1, 0, 0, 0}, 2)).isEqualTo(new RowsAbove(2, 1, 2));
    assertThat(RowsAbove.half(new double[] {1, 0, 1}, 200)).isEqualTo(new RowsAbove(3, 2, 1));
  }

  /**
   * Inputs of which 84.1 % lie above the threshold (one deviation below the mean), in 200 rows; a
   * season's chance, which pairing leaves as large as the inputs' own. Simulated ten times each the
   * count is right; once each it is nearer to half, as is said: 76.0 % at √2 deviations.
   */
  @Test
  void theShareIsThatOfTheInputsAlone() {
    double once = 0;
    double tenTimes = 0;
    int worlds = 60;
    for (int world = 0; world < worlds; world++) {
      RandomStream stream = new RandomStreams(11).of(world, "rows");
      double[] input = new double[200];
      for (int row = 0; row < 200; row++) {
        input[row] = stream.nextNormal();
      }
      once += share(input, 200, stream) / worlds;
      tenTimes += share(input, 2_000, stream) / worlds;
    }
    assertThat(tenTimes).isCloseTo(0.841, within(0.012));
    assertThat(once).isCloseTo(0.760, within(0.015));
  }

  private static double share(double[] input, int replications, RandomStream stream) {
    double[] given = new double[replications];
    double[] drawn = new double[replications];
    for (int i = 0; i < replications; i++) {
      given[i] = 1;
      drawn[i] = 1 + input[i % 200] + stream.nextNormal();
    }
    RowsAbove found = RowsAbove.of(given, drawn, 200, 0);
    return (double) found.above() / found.rows();
  }
}
