package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each mistake of the wrong cases is told on its line, in words that name it and what was meant.
 */
class WrongCasesTest {
  private static final Pattern MISTAKE =
      Pattern.compile(
          "\\{\"line\": ([0-9]+), \"words\": \\[([^\\]]*)\\](?:, \"line_or\":"
              + " \\[([^\\]]*)\\])?\\}");

  static List<String> wrong() {
    return PlantFiles.WRONG;
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void everyMistakeIsTold(String name) {
    List<String> lines = problems(name);
    Matcher mistakes = MISTAKE.matcher(PlantFiles.text("wrong/" + name + ".expect.json"));
    List<String> untold = new ArrayList<>();
    int count = 0;
    for (; mistakes.find(); count++) {
      if (lines.stream().noneMatch(told(mistakes))) {
        untold.add(mistakes.group());
      }
    }
    assertThat(count).isGreaterThan(4);
    assertThat(untold).as(String.join("\n", lines)).isEmpty();
    assertThat(lines).hasSizeLessThanOrEqualTo(count + 1);
  }

  private static java.util.function.Predicate<String> told(Matcher mistake) {
    String places = mistake.group(3) == null ? mistake.group(1) : mistake.group(3);
    List<String> words = List.of(mistake.group(2).replace("\"", "").split(", "));
    List<String> starts =
        List.of(places.split(", ")).stream().map(line -> "wrong.yaml:" + line + ":").toList();
    return line ->
        starts.stream().anyMatch(line::startsWith) && words.stream().allMatch(line::contains);
  }

  /** What the text calls "perhaps" is there as data too, and nothing else is. */
  @ParameterizedTest
  @MethodSource("wrong")
  void theNearestWordIsDataToo(String name) {
    for (LocatedProblem problem : located(name)) {
      Matcher perhaps = Pattern.compile("perhaps \"([^\"]*)\"$").matcher(problem.expected());
      assertThat(problem.nearest())
          .as(problem.text())
          .isEqualTo(perhaps.find() ? perhaps.group(1) : "");
      assertThat(problem.severity()).isEqualTo(LocatedProblem.Severity.PROBLEM);
    }
  }

  @Test
  void someOfThemHaveANearestWord() {
    assertThat(
            wrong().stream()
                .flatMap(name -> located(name).stream())
                .filter(problem -> !problem.nearest().isEmpty()))
        .hasSizeGreaterThan(10);
  }

  private static List<LocatedProblem> located(String name) {
    return Assertions.assertThrows(
            ProblemsException.class,
            () -> PlantFile.of("wrong.yaml", PlantFiles.text("wrong/" + name + ".yaml")))
        .problems();
  }

  static List<String> problems(String name) {
    return located(name).stream().map(LocatedProblem::text).toList();
  }
}
