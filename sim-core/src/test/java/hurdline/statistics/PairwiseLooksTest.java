package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;

class PairwiseLooksTest {
  private static final List<Integer> LOOKS = List.of(40, 80);

  @Test
  void eachPlanLeftHasItsOwnGapToTheBest() {
    double[][] years = {
      {1, 2, 3, 4},
      {1, 4, 2, 5}, // above the first by 0, 2, -1, 1
      {-9, -8, -9, -8} // far below
    };
    PairwiseLooks looks = new PairwiseLooks(List.of(0, 1, 2), 0.05, List.of(4, 8));
    looks.look(years);
    double u = TDistribution.of(3).inverseSurvivalProbability(0.05 / (2 * 2)); // J·(K − 1)
    assertThat(looks.left()).containsExactly(0, 1);
    assertThat(looks.gap(0)).isCloseTo(0.5 + u * Math.sqrt(5.0 / 3) / 2, within(1e-12));
    assertThat(looks.gap(1)).isCloseTo(-0.5 + u * Math.sqrt(5.0 / 3) / 2, within(1e-12));
    assertThat(looks.best()).isEqualTo(1);
  }

  @Test
  void alikePlansAreLeftWithoutAGap() {
    double[] one = new double[80];
    Arrays.setAll(one, Math::sin);
    PairwiseLooks looks = new PairwiseLooks(List.of(0, 1), 0.025, LOOKS);
    looks.look(new double[][] {one, one.clone()});
    assertThat(looks.left()).containsExactly(0, 1);
    assertThat(looks.gap(0)).isZero();
    assertThat(looks.best()).isZero();
    assertThat(looks.isOver()).isFalse();
    assertThat(looks.next()).isEqualTo(80);
  }

  /** The plans' gaps hold all together; the control gives each the gap of another order. */
  @Test
  void allGapsHoldTogetherInAtLeast19CasesOf20() {
    int trials = 400;
    int wrong = 0;
    int control = 0;
    ZigguratSampler normal =
        ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_SHI_RO_256_PP.create(77));
    double[] means = {0, -0.1, -0.2, -0.3, -0.4, -0.5};
    for (int trial = 0; trial < trials; trial++) {
      double[][] years = new double[means.length][80];
      for (int i = 0; i < means.length; i++) {
        double mean = means[i];
        Arrays.setAll(years[i], year -> mean + normal.sample());
      }
      PairwiseLooks looks =
          new PairwiseLooks(IntStream.range(0, means.length).boxed().toList(), 0.05, LOOKS);
      boolean isFalse = false;
      boolean isFalseWithoutLimit = false;
      while (!looks.isOver()) {
        looks.look(years);
        isFalse |= !looks.left().contains(0);
        for (int i : looks.left()) {
          isFalse |= -means[i] > looks.gap(i);
        }
        int most =
            IntStream.range(0, 6)
                .boxed()
                .max((a, b) -> Double.compare(sum(years[a]), sum(years[b])))
                .orElseThrow();
        isFalseWithoutLimit |= most != 0; // the greatest sum taken for the best
      }
      wrong += isFalse ? 1 : 0;
      control += isFalseWithoutLimit ? 1 : 0;
    }
    int allowed = BinomialDistribution.of(trials, 0.05).inverseCumulativeProbability(0.999);
    assertThat(wrong).isLessThanOrEqualTo(allowed);
    assertThat(control).isGreaterThan(allowed);
  }

  private static double sum(double[] values) {
    return Arrays.stream(values).sum();
  }

  @Test
  void moreThan50PlansAreRefused() {
    assertThatThrownBy(
            () -> new PairwiseLooks(IntStream.range(0, 51).boxed().toList(), 0.05, LOOKS))
        .hasMessage("plans are 51; expected 2 to 50 of them");
  }
}
