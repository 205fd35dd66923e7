package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.ProblemsException;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** However large or odd a plant file is, reading it comes to an end soon. */
class ReadingTimeTest {
  private static final String SMALL = PlantFiles.withoutTitles("small.yaml");

  /**
   * Of processor time, so that other work beside the test does not count; most take a tenth of it.
   */
  private static final double MOST_S = 10;

  private static final int MANY = 1_990;

  private static String many(int count, IntFunction<String> text) {
    return IntStream.range(0, count).mapToObj(text).collect(Collectors.joining());
  }

  /** The small plant with more lines behind the first that begins so. */
  private static String with(String line, String more) {
    int end = SMALL.indexOf('\n', SMALL.indexOf("\n" + line) + 1) + 1;
    return SMALL.substring(0, end) + more + SMALL.substring(end);
  }

  private static String steps() {
    String steps = many(MANY, i -> "      m" + i + ": {rate: 1 t/h, to: m" + (i + 1) + "}\n");
    int end = SMALL.indexOf('\n', SMALL.indexOf("\n    steps:") + 1) + 1;
    String text = SMALL.substring(0, end) + steps + SMALL.substring(end);
    return text.replace(
        "\nmachines:", "\nmachines:\n" + many(MANY, i -> "  m" + i + ": {kind: press}\n") + "#");
  }

  static Stream<Arguments> files() {
    return Stream.of(
        Arguments.of("one word", "x".repeat(2_000_000)),
        Arguments.of("one key", "x".repeat(2_000_000) + ": 1\n"),
        Arguments.of("one value", "plant: " + "x".repeat(2_000_000) + "\n"),
        Arguments.of("one text", "plant: \"" + "x".repeat(2_000_000) + "\"\n"),
        Arguments.of("one comment", "# " + "x".repeat(2_000_000) + "\n" + SMALL),
        Arguments.of("lines as long as may be", ("plant: " + "x".repeat(99_900) + "\n").repeat(40)),
        Arguments.of("old line ends", ("plant: " + "x".repeat(99_900) + "\r").repeat(40)),
        Arguments.of("keys", many(49_000, i -> "k" + i + ": 1\n")),
        Arguments.of("a text of many lines", "plant: |\n" + "  xxxx xxx\n".repeat(360_000)),
        Arguments.of(
            "machines", with("machines:", many(MANY, i -> "  m" + i + ": {kind: prss}\n"))),
        Arguments.of(
            "campaigns",
            with(
                "season:",
                "  - {line: stalk_line, from: 2027-03-01, to: 2027-05-28, shifts: [day]}\n"
                    .repeat(MANY))),
        Arguments.of(
            "options",
            with(
                "options:",
                many(
                    195,
                    i -> "  o" + i + ": {with: {products: {p" + i + ": {price: 1 USD/t}}}}\n"))),
        Arguments.of(
            "options on one name",
            with(
                "options:",
                many(
                    195,
                    i -> "  o" + i + ": {with: {products: {p: {price: " + i + " USD/t}}}}\n"))),
        Arguments.of(
            "jobs",
            with(
                "resources:",
                many(MANY, i -> "  r" + i + ": {count: 1, priority: [x" + i + "]}\n"))),
        Arguments.of("steps", steps()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("files")
  void readingEndsSoon(String kind, String text) {
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    try {
      PlantFile.of("p.yaml", text);
    } catch (ProblemsException e) {
      assertThat(e.lines()).hasSizeLessThanOrEqualTo(1001);
    }
    assertThat((ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e9)
        .isLessThan(MOST_S);
  }

  private static List<String> problems(String text) {
    return new Edited(text).problems();
  }

  @Test
  void aLineOfMoreThanAHundredThousandCharactersIsRefusedAtItsPlace() {
    assertThat(problems(SMALL + "# " + "x".repeat(99_998))).isEmpty();
    assertThat(problems(SMALL + "# " + "x".repeat(99_999)))
        .containsExactly(
            "p.yaml:"
                + (SMALL.lines().count() + 1)
                + ":1: the line is longer than 100,000 characters; expected lines that a person can read");
  }

  @Test
  void moreThanAnyPlantHasIsToldInOneLine() {
    assertThat(problems(with("machines:", many(2_001, i -> "  m" + i + ": {kind: press}\n"))))
        .containsExactly(
            "p.yaml:22:1 machines: it holds 2007 entries; expected at most 2000, more than any plant has");
    assertThat(
            problems(
                with(
                    "options:",
                    many(
                        199,
                        i -> "  o" + i + ": {with: {money: {wage: " + (30 + i) + " USD/h}}}\n"))))
        .singleElement()
        .asString()
        .endsWith(
            "it has 201 options and plans; expected at most 200, each of which is a plant to check");
  }
}
