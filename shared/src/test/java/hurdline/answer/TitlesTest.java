package hurdline.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TitlesTest {
  private static final Titles TITLES =
      new Titles(
          Map.of(
              Titles.key("machine", "mill"), "Hammer mill",
              Titles.key("product", "mill"), "Meal",
              Titles.key("option", "big"), "75 hp mill",
              Titles.key("resource", "loader"), "Front loader"));

  @Test
  void aTitleStandsForTheNameOfItsKindAlone() {
    assertThat(TITLES.machine("mill")).isEqualTo("Hammer mill");
    assertThat(TITLES.product("mill")).isEqualTo("Meal");
    assertThat(TITLES.line("mill")).isEqualTo("mill");
  }

  @Test
  void aNameWithoutATitleReadsWithItsUnderscoresAsSpaces() {
    assertThat(TITLES.machine("hurd_bagger_2")).isEqualTo("hurd bagger 2");
    assertThat(Titles.none().option("second_bag_hand")).isEqualTo("second bag hand");
  }

  @Test
  void optionsTogetherAndThePlantAsItStandsReadAsSuch() {
    assertThat(TITLES.option("big+second_bag_hand")).isEqualTo("75 hp mill + second bag hand");
    assertThat(TITLES.option("base")).isEqualTo("the plant as it stands");
    assertThat(TITLES.plan("base")).isEqualTo("the season as it stands");
  }

  @ParameterizedTest
  @CsvSource({
    "Hammer mill, hammer mill",
    "hurd bagger, hurd bagger",
    "Feeder, feeder",
    "North Bench, North Bench",
    "HVAC fan, HVAC fan",
    "Incline 2, Incline 2",
    "75 hp mill, 75 hp mill",
    "Ä, Ä"
  })
  void withinASentenceATitleBeginsSmallUnlessItIsAName(String title, String inText) {
    assertThat(Titles.inText(title)).isEqualTo(inText);
  }

  @Test
  void aCauseNamesMachinesStopsAndResourcesByTheirTitles() {
    assertThat(TITLES.cause("mill")).isEqualTo("the rate of the hammer mill");
    assertThat(TITLES.cause("mill.saw_change")).isEqualTo("the stop saw change of the hammer mill");
    assertThat(TITLES.cause("resource.loader")).isEqualTo("the wait for the front loader");
    assertThat(TITLES.cause("mill+saw_2.jam"))
        .isEqualTo("the stop jam of the hammer mill and the saw 2");
    assertThat(TITLES.causeLabel("mill")).isEqualTo("Hammer mill: own rate");
    assertThat(TITLES.causeLabel("resource.loader")).isEqualTo("wait for front loader");
  }
}
