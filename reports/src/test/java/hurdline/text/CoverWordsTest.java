package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.measure.Measure;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CoverWordsTest {
  @Test
  void stacksHoursAndMoneyAreSaid() {
    assertThat(
            new CoverWords(
                    List.of(
                        SampleRow.of(Measure.YARD_PLACE_COVERED.of("open"), "count", 31),
                        SampleRow.of(Measure.YARD_PLACE_COVER_HOURS.of("open"), "h", 62),
                        SampleRow.of(Measure.MONEY_COVERS.of(), "USD", 3_472)),
                    new Wording(UnitSystem.METRIC, Locale.ROOT))
                .sentences())
        .containsExactly(
            "31 stacks were covered in the open, by hands for 62.00 h",
            "Covers of stacks cost 3,472 USD, hands included");
  }
}
