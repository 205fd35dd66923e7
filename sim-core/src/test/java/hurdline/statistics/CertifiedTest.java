package hurdline.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.outside.Autocorrelation;
import hurdline.outside.Outside;
import java.math.BigDecimal;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Means and spreads against the univariate Statistical Reference Datasets of NIST. */
class CertifiedTest {
  @ParameterizedTest
  @ValueSource(strings = {"nist-lew", "nist-mavro", "nist-michelso"})
  void measuredDataSetsGiveTheirCertifiedMeanAndSpread(String name) {
    Outside outside = Outside.of(name);
    Summary summary = Summary.of(outside.numbers("values"));
    assertThat(summary.mean())
        .isCloseTo(outside.number("mean"), within(1e-14 * Math.abs(outside.number("mean"))));
    double sd = outside.number("sd");
    assertThat(summary.sd()).isCloseTo(sd, within(outside.number("tolerance.relative") * sd));
  }

  /**
   * The program works out no autocorrelation; tests that ask whether draws and replications hang
   * together use this one.
   */
  @ParameterizedTest
  @ValueSource(strings = {"nist-lew", "nist-mavro", "nist-michelso"})
  void measuredDataSetsGiveTheirCertifiedAutocorrelation(String name) {
    Outside outside = Outside.of(name);
    double certified = outside.number("autocorrelation");
    assertThat(Autocorrelation.ofNeighbours(outside.numbers("values")))
        .isCloseTo(certified, within(outside.number("tolerance.relative")));
  }

  /**
   * A large offset must not spoil the spread. The data are made by rule: one middle value, then
   * pairs around it; what is certified is then exact for the decimal numbers, and a double cannot
   * be nearer to them than the tolerance.
   *
   * @see "NIST Statistical Reference Datasets, univariate, NumAcc1 to NumAcc4; after Simon and
   *     Lesage (1989)"
   */
  @ParameterizedTest
  @CsvSource({
    "10000002,   1,   1,   1e-15",
    "1.2,        0.1, 500, 1e-14",
    "1000000.2,  0.1, 500, 1e-9",
    "10000000.2, 0.1, 500, 1e-8",
  })
  void aLargeOffsetDoesNotSpoilTheSpread(String middle, String off, int pairs, double tolerance) {
    double[] values = new double[1 + 2 * pairs];
    var centre = new BigDecimal(middle);
    values[0] = centre.doubleValue();
    for (int i = 1; i < values.length; i += 2) {
      values[i] = centre.subtract(new BigDecimal(off)).doubleValue();
      values[i + 1] = centre.add(new BigDecimal(off)).doubleValue();
    }
    Summary summary = Summary.of(values);
    assertThat(summary.mean()).isCloseTo(values[0], within(Math.ulp(values[0])));
    assertThat(summary.sd()).isCloseTo(Double.parseDouble(off), within(tolerance));
  }

  /**
   * The control: the textbook's sum of squares, misses a spread of 10 about 1e10 by more than 1.
   */
  @Test
  void theSumOfSquaresWouldFailTheseData() {
    double[] three = {1e10 + 10, 1e10 + 30, 1e10 + 20};
    double sum = Arrays.stream(three).sum();
    double squares = Arrays.stream(three).map(value -> value * value).sum();
    double naive = Math.sqrt(Math.abs(squares - sum * sum / 3) / 2);
    assertThat(Math.abs(naive - 10)).isGreaterThan(1);
    assertThat(Summary.of(three).sd()).isEqualTo(10);
  }
}
