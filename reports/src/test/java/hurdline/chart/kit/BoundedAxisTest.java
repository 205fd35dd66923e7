package hurdline.chart.kit;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.data.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundedAxisTest {
  private static NumberAxis axis() {
    return new BoundedAxis("t", new Wording(UnitSystem.METRIC, Locale.ROOT));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-1e-308, 1e-308",
    "2e-308, 2e-308",
    "NaN, NaN",
    "0, 1e-310",
    "-1e-10, 1e-12",
    "NaN, 2"
  })
  void anAxisOfNothingGoesFrom0To1(double low, double high) {
    assertThat(BoundedAxis.drawn(low, high)).isEqualTo(new Range(0, 1));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 5, 0, 5",
    "-3, 40, -3, 40",
    "-1e308, 1e308, -1e300, 1e300",
    "-Infinity, 2, -1e300, 2",
    "5, 0, 0, 5",
    "0.0001, 0.0004, 0.0001, 0.0004"
  })
  void endsAreFiniteAndElseAsWanted(double low, double high, double drawnLow, double drawnHigh) {
    assertThat(BoundedAxis.drawn(low, high)).isEqualTo(new Range(drawnLow, drawnHigh));
  }

  @Test
  void anAxisOfValuesThatHardlyDifferIsAsLongAsTicksNeed() {
    Range drawn = BoundedAxis.drawn(1e6, 1e6 + 1e-6);
    assertThat(drawn.getLength())
        .isCloseTo(0.02 * 1e6, org.assertj.core.api.Assertions.within(1e-3));
    assertThat(drawn.getCentralValue())
        .isCloseTo(1e6, org.assertj.core.api.Assertions.within(1e-3));
  }

  @Test
  void aRangeThatIsSetIsBoundedToo() {
    NumberAxis axis = axis();
    axis.setRange(new Range(0, 0));
    assertThat(axis.getRange()).isEqualTo(new Range(0, 1));
    axis.setRange(0, Double.POSITIVE_INFINITY);
    assertThat(axis.getRange()).isEqualTo(new Range(0, 1e300));
  }

  @Test
  void labelsHaveTheDecimalsThatTheAxisNeeds() {
    NumberAxis axis = axis();
    axis.setRange(0, 5000);
    assertThat(axis.getNumberFormatOverride().format(2500.5)).isEqualTo("2,500.5");
    axis.setRange(0, 0.0005);
    assertThat(axis.getNumberFormatOverride().format(0.00025)).isEqualTo("0.00025");
    axis.setRange(0, 2e300);
    assertThat(axis.getNumberFormatOverride().format(1e300)).isEqualTo("1E300");
  }
}
