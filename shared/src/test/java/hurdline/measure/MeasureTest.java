package hurdline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.Titles;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureTest {
  private static String[] namesFor(Measure measure) {
    List<String> names = new ArrayList<>();
    Pattern.compile("<[a-z]+>")
        .matcher(measure.pattern())
        .results()
        .forEach(r -> names.add("x" + names.size()));
    return names.toArray(String[]::new);
  }

  @ParameterizedTest
  @EnumSource
  void aFilledNameIsFoundAgain(Measure measure) {
    String[] names = namesFor(measure);
    assertThat(Measure.find(measure.of(names)))
        .contains(new MeasureName(measure, List.of(names), false));
  }

  @ParameterizedTest
  @EnumSource
  void onlyAMeasureOfMassHasADryTwin(Measure measure) {
    String[] names = namesFor(measure);
    if (measure.isMass()) {
      assertThat(measure.dryOf(names)).isEqualTo(measure.of(names) + "_dry");
      assertThat(Measure.find(measure.dryOf(names)))
          .contains(new MeasureName(measure, List.of(names), true));
    } else {
      assertThatThrownBy(() -> measure.dryOf(names)).isInstanceOf(IllegalStateException.class);
      assertThat(Measure.find(measure.of(names) + "_dry"))
          .satisfies(
              found ->
                  assertThat(found.map(MeasureName::dry))
                      .isNotEqualTo(java.util.Optional.of(true)));
    }
  }

  @ParameterizedTest
  @EnumSource
  void aMeasureExplainsItselfInOneSentence(Measure measure) {
    assertThat(measure.sentence()).matches("[A-Z][^.]*\\.");
  }

  @Test
  void patternsAreDistinct() {
    HashSet<String> seen = new HashSet<>();
    for (Measure measure : Measure.values()) {
      assertThat(seen.add(measure.pattern().replaceAll("<[a-z]+>", "<>")))
          .as(measure.pattern())
          .isTrue();
    }
  }

  @Test
  void tooFewOrTooManyNamesAreRefused() {
    assertThatThrownBy(Measure.MACHINE_MASS_IN::of)
        .hasMessage("machine.<machine>.mass_in needs more names than []");
    assertThatThrownBy(() -> Measure.AIR_DUST.of("mill"))
        .hasMessage("air.dust takes 0 names, not [mill]");
  }

  @Test
  void aHolderMayCarryADot() {
    String name = Measure.LINE_HOURS_LIMITED_BY.of("stalk_line", Cause.STOP.of("mill", "hammers"));
    assertThat(name).isEqualTo("line.stalk_line.hours.limited_by.mill.hammers");
    assertThat(Measure.find(name).orElseThrow().names())
        .containsExactly("stalk_line", "mill.hammers");
  }

  @ParameterizedTest
  @CsvSource({
    "stalk_saw, RATE, stalk_saw, the rate of the stalk saw",
    "mill.hammers, STOP, mill, the stop hammers of the mill",
    "mill.screen_change, SCREEN_CHANGE, mill, the screen change of the mill",
    "hurd_bagger.package_change, PACKAGE_CHANGE, hurd_bagger, the package change at the hurd"
        + " bagger",
    "resource.loader, RESOURCE, '', the wait for the loader",
    "no_bales, NO_BALES, '', want of bales",
    "kept_apart, KEPT_APART, '', bales kept apart until released",
    "lift, LIFT, '', the lift that sets bales on the table"
  })
  void aCauseWordIsTakenApart(String cause, Cause kind, String machine, String words) {
    assertThat(Cause.kindOf(cause)).isEqualTo(kind);
    assertThat(Cause.machineOf(cause)).isEqualTo(machine);
    assertThat(Titles.none().cause(cause)).isEqualTo(words);
  }

  @Test
  void unitsHangOnCropAndCurrencyWhereTheyMust() {
    assertThat(Unit.BALES.word("modules", "USD")).isEqualTo("modules");
    assertThat(Unit.MONEY_PER_TONNE.word("bales", "EUR")).isEqualTo("EUR/t");
    assertThat(Unit.TONNE.word("bales", "EUR")).isEqualTo("t");
  }

  @Test
  void statesStandInTheirOrderOfPrecedence() {
    assertThat(List.of(State.values()).stream().map(State::word))
        .containsExactly(
            "unused",
            "changeover",
            "uncrewed",
            "planned",
            "down",
            "changing",
            "starved",
            "blocked",
            "slowed",
            "full_rate");
  }
}
