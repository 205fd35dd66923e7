package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.service.EngineStudies;
import hurdline.service.Studies;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands first in a call and is no command. */
class FirstWordTest extends Calls {
  @Test
  void aFileAloneIsCheckedAndTheCommandsForItAreNamed() {
    assertThat(call(plant.toString())).isZero();
    String alone = out.toString();
    assertThat(err.toString())
        .contains(
            "That was \"hurdline check\", since no command was given. With this file:\n"
                + "  hurdline run "
                + plant
                + "\n"
                + "        simulates its calendar: what comes out, what limits it, what does it earn?\n"
                + "  hurdline compare "
                + plant
                + "\n");
    out.getBuffer().setLength(0);
    assertThat(call("check", plant.toString())).isZero();
    assertThat(alone).isEqualTo(out.toString());
  }

  @Test
  void flagsBehindAFileAreThoseOfCheck() {
    assertThat(call(plant.toString(), "--quiet")).isZero();
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).doesNotContain("hurdline run");
    assertThat(call(plant.toString(), "--replications", "3")).isEqualTo(2);
    assertThat(err.toString())
        .endsWith("See hurdline check --help\n")
        .doesNotContain("hurdline run");
  }

  @Test
  void aFileWithProblemsIsToldThemAlone() {
    Studies wrong =
        new Simulating(
            null,
            (chosen, effort) -> {
              throw new ProblemsException(
                  List.of(
                      new LocatedProblem(
                          LocatedProblem.Severity.PROBLEM,
                          "plant.yaml",
                          1,
                          1,
                          "plant",
                          "is missing",
                          "a name",
                          "",
                          "")));
            });
    assertThat(call(wrong, plant.toString())).isEqualTo(2);
    assertThat(err.toString()).isEqualTo("plant.yaml:1:1 plant: is missing; expected a name\n");
  }

  @Test
  void aFileThatIsNotThereIsToldSo() {
    assertThat(call(new EngineStudies(), "none.yaml")).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo("none.yaml: there is no such file; expected the path of a plant file\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rnu|run",
        "chekc|check",
        "comapre|compare",
        "seasons|season",
        "Run|run",
        "simulate|''"
      })
  void aMisspeltCommandGetsTheNearest(String word, String near) {
    assertThat(call(word, plant.toString())).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo(
            "hurdline: \""
                + word
                + "\" is no command and no file; "
                + (near.isEmpty() ? "" : "perhaps " + near + "? ")
                + "Commands are check, run, compare, choose, yard, season, page, fit, backtest, new, open. See hurdline --help\n");
    assertThat(out.toString()).isEmpty();
  }
}
