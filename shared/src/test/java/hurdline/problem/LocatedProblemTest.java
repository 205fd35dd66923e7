package hurdline.problem;

import static hurdline.problem.LocatedProblem.Severity.PROBLEM;
import static hurdline.problem.LocatedProblem.Severity.WARNING;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LocatedProblemTest {
  @Test
  void aProblemSaysWhereWhatAndWhatWasExpected() {
    var problem =
        new LocatedProblem(
            PROBLEM,
            "a/plant.yaml",
            3,
            7,
            "machines.mill.powr",
            "unknown key",
            "a key",
            "power",
            "option big");
    assertThat(problem.text())
        .isEqualTo(
            "a/plant.yaml:3:7 machines.mill.powr: unknown key; expected a key (with option big)");
    assertThat(problem.inFile("plant.yaml").text())
        .startsWith("plant.yaml:3:7 machines.mill.powr: ");
  }

  @Test
  void aWarningAdvises() {
    assertThat(
            new LocatedProblem(
                    WARNING, "plant.yaml", 0, 0, "crops.stalk", "it is wet", "dry it", "", "")
                .text())
        .isEqualTo("plant.yaml crops.stalk: it is wet; dry it");
  }

  @Test
  void whatIsOfNoLineOrNoFileHasNoPlaceInFront() {
    assertThat(LocatedProblem.at("rain.csv", 4, "no date", "a date", "").text())
        .isEqualTo("rain.csv:4: no date; expected a date");
    assertThat(LocatedProblem.of("plant.yaml", "no options", "one", "").text())
        .isEqualTo("plant.yaml: no options; expected one");
    assertThat(LocatedProblem.of("", "no such measure", "one", "").text())
        .isEqualTo("no such measure; expected one");
  }

  @Test
  void aBreakWithinAKeyIsNoNewLine() {
    assertThat(LocatedProblem.of("plant.yaml", "unknown key \"a\nb\"", "a key", "").text())
        .isEqualTo("plant.yaml: unknown key \"a b\"; expected a key");
  }
}
