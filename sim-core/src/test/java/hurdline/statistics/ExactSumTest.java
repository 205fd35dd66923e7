package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against sums in decimal digits without end. */
class ExactSumTest {
  private final Random chance = new Random(7);

  private static ExactSum of(List<Double> terms) {
    ExactSum sum = new ExactSum();
    terms.forEach(sum::add);
    return sum;
  }

  private static double byDigits(List<Double> terms) {
    return terms.stream()
        .map(BigDecimal::new)
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .doubleValue();
  }

  private List<Double> terms(int count, int powers) {
    List<Double> terms = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      terms.add(Math.scalb(chance.nextDouble() - 0.5, chance.nextInt(2 * powers + 1) - powers));
    }
    return terms;
  }

  @Test
  void itIsTheNearestDoubleToTheTrueSum() {
    for (int powers : new int[] {0, 3, 40, 300, 900}) {
      for (int count : new int[] {0, 1, 2, 511, 513, 3_000}) {
        List<Double> terms = terms(count, powers);
        assertThat(of(terms).value()).isEqualTo(byDigits(terms));
      }
    }
  }

  @Test
  void whatCancelsLeavesTheSmallTerm() {
    assertThat(of(List.of(1e100, 1.0, -1e100)).value()).isEqualTo(1.0);
    assertThat(of(List.of(-3.0, 2.0)).value()).isEqualTo(-1.0);
    assertThat(of(List.of(5e-324, 5e-324)).value()).isEqualTo(1e-323);
    assertThat(of(List.of(0.1, -0.1)).value()).isZero();
  }

  @Test
  void halvesGoToTheEvenNeighborUnlessAnythingIsAboveThem() {
    double ulp = Math.ulp(1.0);
    assertThat(of(List.of(1.0, ulp / 2)).value()).isEqualTo(1.0);
    assertThat(of(List.of(1.0 + ulp, ulp / 2)).value()).isEqualTo(1.0 + 2 * ulp);
    assertThat(of(List.of(1.0, ulp / 2, 1e-300)).value()).isEqualTo(1.0 + ulp);
  }

  @Test
  void orderAndGroupsDoNotMatterWherePlainAdditionShowsThem() {
    List<Double> terms = terms(2_000, 30);
    double whole = of(terms).value();
    ExactSum groups = new ExactSum();
    groups.add(of(terms.subList(0, 700)));
    groups.add(of(terms.subList(700, 2_000)));
    List<Double> shuffled = new ArrayList<>(terms);
    Collections.shuffle(shuffled, chance);
    assertThat(groups.value()).isEqualTo(whole);
    assertThat(of(shuffled).value()).isEqualTo(whole);
    assertThat(plain(shuffled)).as("the control").isNotEqualTo(plain(terms));
  }

  private static double plain(List<Double> terms) {
    return terms.stream().reduce(0.0, Double::sum);
  }

  @Test
  void aTermSoManyTimesIsThatOftenAdded() {
    ExactSum times = new ExactSum();
    times.add(0.1, 98_001);
    assertThat(times.value()).isEqualTo(byDigits(Collections.nCopies(98_001, 0.1)));
    assertThat(plain(Collections.nCopies(98_001, 0.1)))
        .as("the control")
        .isNotEqualTo(times.value());
  }

  @Test
  void whatIsNoNumberStaysNone() {
    assertThat(of(List.of(1.0, Double.NaN)).value()).isNaN();
    assertThat(of(List.of(1.0, Double.POSITIVE_INFINITY)).value()).isInfinite();
    ExactSum whole = of(List.of(1.0));
    whole.add(of(List.of(Double.NaN)));
    assertThat(whole.value()).isNaN();
  }
}
