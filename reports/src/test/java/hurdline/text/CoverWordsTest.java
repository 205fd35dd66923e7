package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CoverWordsTest {
  private static SummaryRow row(String measure, String unit, double mean) {
    return new SummaryRow(
        "base", measure, unit, mean, mean, mean, 0, mean, mean, mean, mean, mean, 40, "student");
  }

  @Test
  void stacksHoursAndMoneyAreSaid() {
    assertThat(
            new CoverWords(
                    List.of(
                        row(Measure.YARD_PLACE_COVERED.of("open"), "count", 31),
                        row(Measure.YARD_PLACE_COVER_HOURS.of("open"), "h", 62),
                        row(Measure.MONEY_COVERS.of(), "USD", 3_472)),
                    new Wording(UnitSystem.METRIC, Locale.ROOT))
                .sentences())
        .containsExactly(
            "31 stacks were covered in the open, by hands for 62.00 h",
            "Covers of stacks cost 3,472 USD, hands included");
  }
}
