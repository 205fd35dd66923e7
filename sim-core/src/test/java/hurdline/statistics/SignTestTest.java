package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SignTestTest {
  /** Ten of ten: 2 · (1/2)¹⁰; nine of ten: 2 · 11 / 1024. */
  @Test
  void theChanceOfASplitIsCountedOut() {
    assertThat(SignTest.twoSided(10, 0)).isCloseTo(2.0 / 1024, within(1e-12));
    assertThat(SignTest.twoSided(1, 9)).isCloseTo(22.0 / 1024, within(1e-12));
    assertThat(SignTest.twoSided(0, 1)).isEqualTo(1);
  }

  @Test
  void anEvenSplitAndNoneAtAllTellNothing() {
    assertThat(SignTest.twoSided(5, 5)).isEqualTo(1);
    assertThat(SignTest.twoSided(0, 0)).isEqualTo(1);
  }

  @Test
  void countsBelowNoneAreRefused() {
    assertThatThrownBy(() -> SignTest.twoSided(-1, 2)).hasMessageContaining("expected 0 or more");
  }
}
