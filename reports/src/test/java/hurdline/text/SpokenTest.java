package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class SpokenTest {
  private static final double NONE = Double.NaN;
  private final Spoken spoken = new Spoken(new Wording(UnitSystem.US, Locale.ROOT));

  private String estimate(double value, double half, String unit) {
    return spoken.estimate(value, value - half, value + half, unit);
  }

  @Test
  void anAmountHasNoMoreDigitsThanItsHalfWidthAndNeverMoreThanThree() {
    assertThat(estimate(521_342, 5_500, "USD")).isEqualTo("521,000 USD, give or take 6,000");
    assertThat(estimate(521_342, 1_240, "USD")).isEqualTo("521,000 USD, give or take 1,000");
    assertThat(estimate(521_342, 30, "USD")).isEqualTo("521,000 USD");
    assertThat(estimate(521_342, 23_000, "USD")).isEqualTo("520,000 USD, give or take 20,000");
    assertThat(estimate(521_342, 12_600, "USD")).isEqualTo("521,000 USD, give or take 13,000");
    assertThat(estimate(0.83, 0.04, "yr")).isEqualTo("0.83 years, give or take 0.04");
    assertThat(estimate(1, 0, "bales")).isEqualTo("1 bale");
    assertThat(estimate(0.4, 0.2, "bales")).isEqualTo("0 bales");
  }

  @Test
  void whereTheSidesDifferTheWiderOneIsSaid() {
    assertThat(spoken.estimate(100_000, 95_000, 120_000, "USD"))
        .isEqualTo("100,000 USD, give or take 20,000");
  }

  @Test
  void aSkewedIntervalThatLeavesZeroOutNeverReadsAsIfItHeldIt() {
    assertThat(spoken.estimate(1_372, 643, 5_471, "USD"))
        .isEqualTo("1,000 USD, between 600 and 5,500");
    assertThat(spoken.estimate(-1_372, -5_471, -643, "USD"))
        .isEqualTo("-1,000 USD, between -5,500 and -600");
    assertThat(spoken.estimate(1_372, -643, 5_471, "USD"))
        .isEqualTo("1,000 USD, give or take 4,000");
  }

  @Test
  void aboutIsForWhatIsRounded() {
    assertThat(spoken.about(2_000, 1_700, 2_200, "bales")).isEqualTo("about 2,000 bales");
    assertThat(spoken.about(463, NONE, NONE, "bales")).isEqualTo("463 bales");
    assertThat(spoken.about(1_463, NONE, NONE, "bales")).isEqualTo("about 1,460 bales");
    assertThat(spoken.about(158)).isEqualTo("about 160");
    assertThat(spoken.about(7)).isEqualTo("7");
  }

  /**
   * The half-width falls with the root of the number: three times as wide needs nine times as many.
   */
  @Test
  void theReplicationsThatWouldDecideGrowWithTheSquare() {
    assertThat(Spoken.needed(40, 10, 30)).isEqualTo(360);
    assertThat(Spoken.needed(40, -10, 5)).isEqualTo(10);
    assertThat(spoken.wouldDecide(Spoken.needed(40, 0, 5), 40, "replications", "which"))
        .isEqualTo("no number of replications within reach would show which");
  }

  @Test
  void aShortTimeIsSaidInMonthsOrWeeks() {
    assertThat(spoken.aboutYears(0.04, 0.039, 0.041)).isEqualTo("about 2 weeks");
    assertThat(spoken.aboutYears(0.826, 0.51, 1.14)).isEqualTo("about 10 months");
    assertThat(spoken.aboutYears(0.001, 0.001, 0.001)).isEqualTo("about 1 week");
    assertThat(spoken.aboutYears(3.24, 3.04, 3.44)).isEqualTo("about 3.2 years");
  }
}
