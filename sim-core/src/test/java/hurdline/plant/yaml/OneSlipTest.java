package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One slip in a key is one problem, whatever options and plans build on it. */
class OneSlipTest {
  private static final String EXAMPLE = PlantFiles.text(PlantFiles.EXAMPLE);

  static Stream<String> topKeys() {
    return MapKeys.PLANT.keys().stream().filter(key -> EXAMPLE.contains("\n" + key + ":"));
  }

  private static List<String> problems(String text) {
    return new Edited(text).problems();
  }

  @ParameterizedTest
  @MethodSource("topKeys")
  void aMisspeltTopKeyIsOneProblem(String key) {
    String slip = key.substring(0, key.length() - 2) + key.charAt(key.length() - 1);
    List<String> problems = problems(EXAMPLE.replace("\n" + key + ":", "\n" + slip + ":"));
    assertThat(problems)
        .singleElement()
        .asString()
        .contains("unknown key \"" + slip + "\"")
        .endsWith("perhaps \"" + key + "\"");
  }

  @Test
  void aMisspeltKeyFurtherInThatAnOptionChangesIsOneProblem() {
    String small = PlantFiles.withoutTitles("small.yaml");
    assertThat(problems(small.replace("    power: 15 hp ", "    powr: 15 hp ")))
        .singleElement()
        .asString()
        .contains("machines.mill.powr: unknown key \"powr\"");
    assertThat(
            problems(
                small.replace(
                    "bagger: {kind: bag-filler, spouts: 1}",
                    "bagger: {kind: bag-filler, spots: 1}")))
        .singleElement()
        .asString()
        .contains("machines.bagger.spots: unknown key \"spots\"");
  }

  @ParameterizedTest
  @CsvSource({
    "from: 2027-03-01,from: 2027-02-30,calendar.from",
    "from: 2027-03-01,from: 2028-03-01,calendar.to",
    "to: 2027-05-28,to: 2027-05-38,calendar.to",
    "to: 2027-05-28,to: 2027-02-27,calendar.to",
    "to: 2027-05-28,to: May,calendar.to"
  })
  void aWrongDateOfTheCalendarIsOneProblem(String right, String slip, String path) {
    String small = PlantFiles.text("small.yaml");
    String edited = small.replace("\n  " + right, "\n  " + slip);
    assertThat(edited).isNotEqualTo(small);
    assertThat(problems(edited)).singleElement().asString().contains(" " + path + ": ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "stalk.yaml",
        "sweetgum-bend.yaml",
        "seasons/late_cotton.yaml",
        "seasons/cotton_first.yaml",
        "seasons/rented.yaml"
      })
  void soItIsWithCampaignsChangeoversAndPlans(String file) throws IOException {
    for (String key : List.of("from", "to")) {
      String plant =
          Files.readString(Path.of(System.getProperty("hurdline.root"), "line-configs", file));
      String edited = plant.replaceFirst("(?m)^(  " + key + ": \\d{4})-\\d\\d-", "$1-13-");
      assertThat(edited).isNotEqualTo(plant);
      assertThat(problems(edited))
          .as(file + " " + key)
          .singleElement()
          .asString()
          .contains(" calendar." + key + ": ");
    }
  }

  @Test
  void theTopKeyThatIsLeftOutIsNotToldAgainOfEachOption() {
    String text = EXAMPLE.replace("\nmachines:", "\nmachinery_of_the_hall:");
    assertThat(problems(text)).hasSizeLessThanOrEqualTo(2);
  }
}
