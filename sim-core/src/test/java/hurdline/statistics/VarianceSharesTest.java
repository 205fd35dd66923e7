package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import org.junit.jupiter.api.Test;

/** Which of several inputs makes an answer vary. */
class VarianceSharesTest {
  /** y = 3a + b + noise of variance 2, all of variance 1: shares 9/12, 1/12, nothing. */
  @Test
  void sharesAreThoseOfASum() {
    int n = 4_000;
    RandomStream stream = new RandomStreams(3).of(1, "inputs");
    double[] y = new double[n];
    double[][][] numbers = new double[3][n][];
    for (int i = 0; i < n; i++) {
      double a = stream.nextNormal();
      double b = stream.nextNormal();
      numbers[0][i] = new double[] {a, 5}; // a number that never changes explains nothing
      numbers[1][i] = new double[] {b, -2 * b};
      numbers[2][i] = new double[] {stream.nextNormal()};
      y[i] = 3 * a + b + Math.sqrt(2) * stream.nextNormal();
    }
    VarianceShares found = VarianceShares.of(y, numbers);
    assertThat(found.share()[0]).isCloseTo(0.75, within(0.02));
    assertThat(found.share()[1]).isCloseTo(1.0 / 12, within(0.02));
    assertThat(found.share()[2]).isLessThan(0.005);
    assertThat(found.p()[1]).isLessThan(1e-6);
    assertThat(found.p()[2]).isGreaterThan(0.001);
  }

  @Test
  void whatDoesNotVaryHasNoShares() {
    VarianceShares found =
        VarianceShares.of(new double[] {2, 2, 2}, new double[][][] {{{1}, {2}, {3}}});
    assertThat(found.share()).containsExactly(0);
    assertThat(found.p()).containsExactly(1);
  }
}
