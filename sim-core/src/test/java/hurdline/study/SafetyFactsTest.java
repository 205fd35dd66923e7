package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Fact;
import hurdline.answer.SafetyFact;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.Warnings;
import hurdline.plant.yaml.PlantFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SafetyFactsTest {
  private static List<Fact> of(Change... changes) {
    return new SafetyFacts(plant(changes)).facts();
  }

  private static Plant plant(Change... changes) {
    return PlantFile.read(Studied.EXAMPLE).variants().with(changes);
  }

  /**
   * 15 % for bales; the report goes by the limit that the warning names, on whichever side of it
   * the moisture lies.
   */
  @ParameterizedTest
  @CsvSource({"14.9 %, false", "15.1 %, true", "17 %, true", "21 %, true"})
  void balesAreWetWhereTheWarningSaysSo(String moisture, boolean wet) {
    Change change = new Change.Value("crops.stalk.moisture", moisture);
    assertThat(of(change).contains(new SafetyFact.WetBales(List.of("stalk")))).isEqualTo(wet);
    assertThat(
            Warnings.of(plant(change)).stream()
                .filter(warning -> warning.toString().contains("has 15 % moisture or more"))
                .count())
        .isEqualTo(wet ? 1 : 0);
  }

  @Test
  void aStopTooShortForLockingOutIsNamed() {
    List<Fact> hasty = of(new Change.Value("machines.lint_cleaner.stops.choke.lasts", "3 min"));
    assertThat(hasty).contains(new SafetyFact.ShortStops(List.of("lint_cleaner.choke"), 600));
    assertThat(of()).noneMatch(SafetyFact.ShortStops.class::isInstance);
  }

  @Test
  void longAndNightShiftsAreNamed() {
    assertThat(of())
        .anyMatch(
            fact ->
                fact instanceof SafetyFact.LongShifts shifts
                    && shifts.shifts().containsAll(List.of("gin_day", "gin_night")));
  }
}
