package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.outside.Outside;
import org.junit.jupiter.api.Test;

class SummaryTest {
  private static final double NONE = Double.NaN;

  @Test
  void quantilesMeetTheOutsideOnes() {
    Outside outside = Outside.of("estimate-quantile");
    double[] values = outside.numbers("values");
    double[] given = values.clone();
    double[] shares = outside.numbers("shares");
    double[] quantiles = outside.numbers("quantiles");
    for (int i = 0; i < shares.length; i++) {
      assertThat(Quantiles.of(values, shares[i]))
          .isCloseTo(quantiles[i], within(1e-14 * Math.abs(quantiles[i])));
    }
    assertThat(Quantiles.of(values, shares)).hasSameSizeAs(shares);
    assertThat(values).as("left as they were").containsExactly(given);
  }

  @Test
  void aSummaryIsKnownByHand() {
    Summary summary = Summary.of(new double[] {4, 1, 3, 2});
    assertThat(summary.count()).isEqualTo(4);
    assertThat(summary.mean()).isEqualTo(2.5);
    assertThat(summary.sd()).isCloseTo(Math.sqrt(5.0 / 3), within(1e-15));
    assertThat(new double[] {summary.p05(), summary.p50(), summary.p95()})
        .containsExactly(new double[] {1.15, 2.5, 3.85}, within(1e-12));
    assertThat(summary.least()).isEqualTo(1);
    assertThat(summary.most()).isEqualTo(4);
    assertThat(summary.mean95()).isEqualTo(Intervals.mean95(new double[] {1, 2, 3, 4}));
  }

  @Test
  void oneReplicationHasAMeanAndNoInterval() {
    assertThat(Summary.of(new double[] {7}))
        .isEqualTo(new Summary(1, 7, NONE, NONE, NONE, 7, 7, 7, 7, 7, MeanInterval.NONE));
  }

  @Test
  void replicationsWithoutAValueAreLeftOut() {
    assertThat(Summary.of(new double[] {NONE, 4, 1, NONE, 3, 2}))
        .isEqualTo(Summary.of(new double[] {4, 1, 3, 2}));
    assertThat(Summary.of(new double[] {NONE}))
        .isEqualTo(
            new Summary(
                0, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, MeanInterval.NONE));
  }

  @Test
  void whatDoesNotVaryHasAnIntervalOfNoWidth() {
    Summary summary = Summary.of(new double[] {0.1, 0.1, 0.1});
    assertThat(summary.mean95()).isEqualTo(new Interval(0.1, 0.1));
    assertThat(summary.sd()).isZero();
  }

  @Test
  void anInfiniteValueIsRefused() {
    assertThatThrownBy(() -> Summary.of(new double[] {1, Double.NEGATIVE_INFINITY}))
        .hasMessage("a value is -Infinity; expected a finite number, or NaN for none");
  }
}
