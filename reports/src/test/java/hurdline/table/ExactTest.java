package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExactTest {
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.1",
    "88, 88",
    "-0.0, 0",
    "1e-9, 1E-9",
    "2e23, 2E+23",
    "1390.909090909091, 1390.909090909091",
    "0.002, 0.002",
    "1234567890123456789, 1234567890123456800",
    "NaN, ''"
  })
  void aNumberIsWrittenAsShortAsItReadsBack(double value, String text) {
    assertThat(Exact.text(value)).isEqualTo(text);
  }

  @Test
  void everyDoubleReadsBackAsItself() {
    SplittableRandom random = new SplittableRandom(5);
    for (int draw = 0; draw < 100_000; draw++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value)) {
        assertThat(Double.parseDouble(Exact.text(value))).isEqualTo(value);
      }
    }
  }
}
