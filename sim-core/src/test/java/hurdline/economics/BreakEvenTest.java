package hurdline.economics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class BreakEvenTest {
  @Test
  void aStraightLineIsFoundOnEitherSide() {
    for (double root : new double[] {0.07, 0.5, 0.999, 1.3, 16}) {
      BreakEven found = BreakEven.of(x -> 7 * (root - x));
      assertThat(found.factor().getAsDouble()).isCloseTo(root, within(2e-3 * root));
      assertThat(found.from()).isLessThanOrEqualTo(Math.min(root, 1));
      assertThat(found.to()).isGreaterThanOrEqualTo(Math.min(Math.max(root, 1), 17));
    }
  }

  @Test
  void ofSeveralTheNearestThatIsSeenIsTaken() {
    BreakEven found = BreakEven.of(x -> (x - 1.2) * (x - 4));
    assertThat(found.factor().getAsDouble()).isCloseTo(1.2, within(2e-3));
  }

  @Test
  void whatKeepsItsSignHasNoneAndSaysWhereItWasLookedAt() {
    BreakEven found = BreakEven.of(x -> 1 + x);
    assertThat(found.factor()).isEmpty();
    assertThat(found.from()).isCloseTo(Math.pow(1.5, -7), within(1e-9));
    assertThat(found.to()).isCloseTo(Math.pow(1.5, 7), within(1e-9));
    assertThat(found.at1()).isEqualTo(2);
  }

  @Test
  void aJumpOverZeroIsWhereItCrosses() {
    assertThat(BreakEven.of(x -> x < 2.2 ? -5 : 30).factor().getAsDouble())
        .isCloseTo(2.2, within(0.01));
  }

  @Test
  void beyondAnImpossibleFactorNothingIsLookedAt() {
    List<Double> asked = new ArrayList<>();
    BreakEven found =
        BreakEven.of(
            x -> {
              asked.add(x);
              return x > 2 ? Double.NaN : 1;
            });
    assertThat(found.to()).isEqualTo(1.5);
    assertThat(asked).filteredOn(x -> x > 2).hasSize(1);
    assertThat(BreakEven.of(x -> Double.NaN).factor()).isEmpty();
    assertThat(BreakEven.of(x -> x - 1).factor()).hasValue(1);
  }

  /**
   * What is said before a search: straight, bent and jumping values that cross at each of 180
   * factors.
   */
  @Test
  void aSearchTriesAboutAsManyValuesAsIsSaid() {
    int tries = 0;
    int searches = 0;
    for (double crossing = 0.07; crossing < 14; crossing *= 1.03) {
      double at = crossing;
      for (DoubleUnaryOperator value :
          List.<DoubleUnaryOperator>of(x -> x - at, x -> Math.log(x / at), x -> x < at ? -1 : 1)) {
        List<Double> asked = new ArrayList<>();
        BreakEven.of(
            x -> {
              asked.add(x);
              return value.applyAsDouble(x);
            });
        int tried = (int) asked.stream().distinct().count();
        assertThat(tried).isLessThanOrEqualTo(BreakEven.mostTries());
        tries += tried;
        searches++;
      }
    }
    assertThat((double) tries / searches).isCloseTo(BreakEven.usualTries(), within(1.0));
  }
}
