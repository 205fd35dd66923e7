package hurdline.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class StandardNormalTest {
  private static final NormalDistribution LIBRARY = NormalDistribution.of(0, 1);

  @Test
  void theInverseAgreesWithTheLibraryFromTailToTail() {
    for (double u = 1e-300; u < 0.5; u *= 1.37) {
      double z = LIBRARY.inverseCumulativeProbability(u);
      assertThat(StandardNormal.quantile(u)).isCloseTo(z, within(2e-14 * Math.abs(z) + 1e-16));
    }
    for (double u = 0.001; u < 1; u += 0.001) {
      double z = LIBRARY.inverseCumulativeProbability(u);
      assertThat(StandardNormal.quantile(u)).isCloseTo(z, within(2e-14 * Math.abs(z) + 1e-15));
    }
  }

  /** What z² loses to rounding grows with z²; nothing else may. */
  @Test
  void theShareAgreesWithTheLibraryFromTailToTail() {
    for (double z = -37; z < 9; z += 0.0137) {
      double share = LIBRARY.cumulativeProbability(z);
      double nearCentre = Math.abs(z) <= 2 ? 3e-16 : 0;
      assertThat(StandardNormal.shareBelow(z))
          .isCloseTo(share, within((2e-15 + 4e-16 * z * z) * share + nearCentre));
    }
    assertThat(StandardNormal.shareBelow(Double.NEGATIVE_INFINITY)).isZero();
    assertThat(StandardNormal.shareBelow(Double.POSITIVE_INFINITY)).isEqualTo(1);
  }

  @Test
  void theInverseUndoesTheShare() {
    for (double z = -8; z < 1; z += 0.01) {
      assertThat(StandardNormal.quantile(StandardNormal.shareBelow(z))).isCloseTo(z, within(2e-14));
    }
  }

  @Test
  void theInverseIsOddAboutTheMiddle() {
    for (double u = 0x1p-20; u < 0.5; u += 0x1p-7) {
      assertThat(StandardNormal.quantile(1 - u)).isEqualTo(-StandardNormal.quantile(u));
    }
  }
}
