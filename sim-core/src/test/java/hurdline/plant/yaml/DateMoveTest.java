package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Variants;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values such as {@code +30d}: the date that the file says, moved. */
class DateMoveTest {
  private static final Variants VARIANTS = Edited.plantFile().read().variants();
  private static final Plant BASE = VARIANTS.with();

  private static Plant changed(String path, String value) {
    return VARIANTS.with(new Change.Value(path, value));
  }

  @ParameterizedTest
  @CsvSource({
    "+30d, 2027-07-10",
    "-1w, 2027-06-03",
    "+2 wk, 2027-06-24",
    "- 10 d, 2027-05-31",
    "+0d, 2027-06-10"
  })
  void aDateMovesByDaysAndWeeks(String by, String date) {
    assertThat(changed("deliveries.stalk.fields.*.ready", by))
        .isEqualTo(changed("deliveries.stalk.fields.*.ready", date));
  }

  @Test
  void theDateOfAFieldIsTheOneThatMoves() {
    assertThat(
            changed("deliveries.*.fields.*.ready", "+30d")
                .deliveries()
                .get(0)
                .fields()
                .get(0)
                .ready())
        .isEqualTo(LocalDate.of(2027, 6, 10).plusDays(30));
  }

  @Test
  void aMoveByNothingIsThePlantItself() {
    assertThat(changed("season.*.from", "+0d")).isEqualTo(BASE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "machines.mill.power | +30d | \"machines.mill.power\" says \"25 hp\", which is no date to move; expected a path to a date; a time"
            + " is set without a sign, and x and a factor scales an amount",
        "deliveries.stalk.fields.*.ready_sd | +2d | \"deliveries.stalk.fields.bench.ready_sd\" says \"5 d\", which is no date to move;"
            + " expected a path to a date; a time is set without a sign, and x and a factor scales an amount",
        "plant | -1w | \"plant\" says \"Every key at once\", which is no date to move; expected a path to a date; a time is set without a sign,"
            + " and x and a factor scales an amount",
        "machines.mill | +1d | \"machines.mill\" is a map with title, kind, power, draws, which is no date to move",
        "calendar.form | +1d | the file does not say \"calendar.form\", so there is nothing to move; expected a name or key, perhaps \"from\"",
        "calendar.from | +1.5d | \"+1.5d\" is not a date; expected a date such as 2027-06-07",
        "calendar.from | +12h | \"+12h\" is not a date; expected a date such as 2027-06-07",
        "calendar.from | x1.2 | \"calendar.from\" says \"2027-01-04\", which is no number to scale; expected a path to a quantity, a bare"
            + " number or a distribution",
      })
  void whatCannotBeMovedIsToldWithItsPath(String path, String by, String said) {
    List<String> lines =
        Assertions.assertThrows(ProblemsException.class, () -> changed(path, by)).lines();
    assertThat(lines.get(0)).contains(said);
  }
}
