package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import hurdline.service.EngineStudies;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The answer as a terminal or a script gets it. */
class TerminalTest {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));

  @TempDir Path dir;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private void call(boolean inColour, Locale locale, String... args) {
    List<String> all = new ArrayList<>(List.of(args));
    if (args[0].equals("run")) {
      all.addAll(List.of("--replications", "2", "--out", dir.resolve("answer").toString()));
      all.add(1, ROOT.resolve("line-configs/small.yaml").toString());
    }
    CommandContext setting =
        new CommandContext(
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            inColour,
            new EngineStudies(),
            locale,
            inColour,
            80);
    assertThat(Hurdline.call(setting, all.toArray(String[]::new))).as(err.toString()).isZero();
  }

  @Test
  void theAnswerFitsEightyColumns() {
    call(false, Locale.ROOT, "run");
    List<String> lines = out.toString().lines().toList();
    assertThat(lines).hasSizeGreaterThan(6);
    // The last line has the folder, which is as long as it is.
    assertThat(lines.subList(0, lines.size() - 1))
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(80));
    assertThat(lines).anyMatch(line -> line.startsWith("            "));
  }

  @Test
  void aLineIsAsWideAsTheTerminalButFromSixtyToAHundredColumns() {
    assertThat(Terminal.columns("24 132\n")).isEqualTo(132);
    assertThat(Terminal.columns("72")).isEqualTo(72);
    assertThat(Terminal.columns("stty: no terminal")).isZero();
    assertThat(
            List.of(
                Terminal.within(20), Terminal.within(72), Terminal.within(132), Terminal.within(0)))
        .containsExactly(60, 72, 100, 80);
  }

  @Test
  void coloursAreForTerminalsOnly() throws Exception {
    call(false, Locale.ROOT, "run");
    assertThat(out.toString() + err).doesNotContain("\u001b");
    out.getBuffer().setLength(0);
    Files.move(dir.resolve("answer"), dir.resolve("before"));
    call(true, Locale.ROOT, "run");
    assertThat(out.toString()).contains("\u001b[1m").contains("\u001b[0m");
    assertThat(Files.readString(dir.resolve("answer/report.html")))
        .isEqualTo(Files.readString(dir.resolve("before/report.html")));
  }

  @Test
  void jsonOnStandardOutputIsNothingButJson() {
    call(true, Locale.GERMANY, "run", "--json");
    assertThat(JsonParser.parseString(out.toString()).getAsJsonObject().keySet())
        .contains("answer");
    assertThat(out.toString()).doesNotContain("\u001b");
    assertThat(err.toString()).contains("Report: ");
  }

  @Test
  void quietSaysNothing() {
    call(false, Locale.ROOT, "run", "--quiet");
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void theSystemsLocaleOrdersDatesAndMarksNumbersOnTerminalAndPage() throws Exception {
    call(false, Locale.GERMANY, "run", "--units", "metric");
    assertThat(out.toString())
        .contains("1 Mar 2027 to 28 May 2027")
        .containsPattern("\\d\\.\\d{3} ");
    assertThat(Files.readString(dir.resolve("answer/report.html")))
        .contains("1 Mar 2027 to 28 May 2027");
    String weeks = Files.readString(dir.resolve("answer/weeks.csv"), StandardCharsets.UTF_8);
    assertThat(weeks).contains("2027-03-01").containsPattern("\\d\\.\\d{3}");
  }

  @Test
  void aNamedLocaleGoesBeforeTheSystems() {
    call(false, Locale.GERMANY, "run", "--locale", "en-US");
    assertThat(out.toString())
        .contains("Mar 1, 2027 to May 28, 2027")
        .containsPattern("\\d,\\d{3} ");
  }

  @Test
  void aLongLineGoesOnUnderItsText() {
    String label = "  made      ";
    List<String> lines = LineWrapper.broken(label + "lint 4,270 ton, ".repeat(7).strip(), 80);
    assertThat(lines).hasSize(2);
    assertThat(lines.get(1)).startsWith(" ".repeat(label.length()) + "l");
    assertThat(LineWrapper.broken("short", 80)).containsExactly("short");
    assertThat(LineWrapper.broken("x".repeat(100), 80)).containsExactly("x".repeat(100));
  }

  @Test
  void aNumberStaysWithItsUnitAndABracketTogether() {
    String line =
        "  pays  " + "x".repeat(60) + " after 0.8 yr (0.4 to 1.1) (discounted 0.8 yr (0.4 to 1.2))";
    assertThat(LineWrapper.broken(line, 80))
        .containsExactly(
            "  pays  " + "x".repeat(60) + " after",
            "        0.8 yr (0.4 to 1.1) (discounted 0.8 yr (0.4 to 1.2))");
    assertThat(
            LineWrapper.broken("y".repeat(69) + " in 22 of 40 % (20.1 to 31.1 %) of hours", 80)
                .get(0))
        .endsWith("y in 22 of");
  }

  @Test
  void whatGoesOnUnderAnIndentedLineStandsFurtherInThanItsName() {
    assertThat(
            LineWrapper.broken("  stalk_line: " + "lint 4,270 ton, ".repeat(7).strip(), 80).get(1))
        .startsWith("    lint");
  }

  static Stream<List<String>> calls() {
    String small = ROOT.resolve("line-configs/small.yaml").toString();
    String stalk = ROOT.resolve("line-configs/stalk.yaml").toString();
    String shortYear =
        ROOT.resolve("reports/src/test/resources/hurdline/audit/alder-landing.yaml").toString();
    String seasons = ROOT.resolve("line-configs/seasons/beside_cotton.yaml").toString();
    return Stream.of(
        List.of("check", ROOT.resolve("line-configs/sweetgum-bend.yaml").toString()),
        List.of("run", stalk),
        List.of("compare", small, "--gain", "--service-lives", "2"),
        List.of(
            "compare", shortYear, "--tornado", "--service-lives", "2", "--among", "bigger_mill"),
        List.of("season", seasons, "--changeovers"),
        List.of("yard", shortYear, "--gain", "--acres", "90%"),
        List.of("run", small, "--vary", "machines.mill.power=10 hp..30 hp..10 hp"),
        List.of("compare", small, "--vary", "machines.mill.power=x0.8..x1.2..x0.2"));
  }

  /** Each call with a width, all widths in turn. */
  static Stream<Arguments> callsByWidth() {
    List<List<String>> calls = calls().toList();
    return IntStream.range(0, calls.size())
        .mapToObj(at -> Arguments.of(calls.get(at), List.of(60, 80, 100).get(at % 3)));
  }

  @ParameterizedTest
  @MethodSource("callsByWidth")
  void everyVerbsAnswerFitsTheTerminalAndTiesNumbersToUnits(List<String> call, int width) {
    List<String> all = new ArrayList<>(call);
    if (!call.contains("check")) {
      all.addAll(List.of("--replications", "2"));
    }
    all.addAll(List.of("--locale", "fr-CA", "--out", dir.resolve("answer").toString()));
    CommandContext setting =
        new CommandContext(
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            false,
            new EngineStudies(),
            Locale.ROOT,
            false,
            width);
    assertThat(Hurdline.call(setting, all.toArray(String[]::new))).as(err.toString()).isZero();
    assertThat(out.toString().lines().filter(line -> !line.startsWith("Report: ")))
        .hasSizeGreaterThan(6)
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width))
        .noneMatch(line -> line.matches("\\s*(%|ton|ton/h|USD|bales|yr|h|hp|kWh)\\b.*"));
    assertThat(said(out.toString()))
        .hasSizeBetween(2, 5)
        .allSatisfy(
            sentence ->
                assertThat(sentence).matches("[A-Z0-9].*").doesNotContainPattern("[()\\[\\]_]"));
  }

  /**
   * The sentences between the title, which ends with the seed or with a date, and the first empty
   * line.
   */
  private static List<String> said(String answer) {
    String head = answer.substring(0, answer.indexOf("\n\n")).replaceAll("\\s+", " ");
    String title = head.contains(", seed 1 ") ? ", seed 1 " : "2027-12-31 ";
    return List.of(
        head.substring(head.indexOf(title) + title.length()).split("(?<=\\.) (?=[A-Z0-9])"));
  }

  @Test
  void theCompletionScriptCompletesVerbsAndOptions() throws Exception {
    call(false, Locale.ROOT, "--completion");
    Path script = Files.writeString(dir.resolve("completion.bash"), out.toString());
    assertThat(completed(script, "hurdline", "ru")).containsExactly("run");
    assertThat(completed(script, "hurdline", "run", "--see")).containsExactly("--seed");
  }

  private static List<String> completed(Path script, String... words) throws Exception {
    String last = words[words.length - 1];
    String call =
        "source '"
            + script
            + "'; COMP_WORDS=("
            + String.join(" ", words)
            + "); COMP_CWORD="
            + (words.length - 1)
            + "; COMP_LINE='"
            + String.join(" ", words)
            + "'; COMP_POINT=${#COMP_LINE}; _complete_hurdline hurdline '"
            + last
            + "' ''; printf '%s\\n' \"${COMPREPLY[@]}\"";
    Process bash = new ProcessBuilder("bash", "-c", call).start();
    return new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
        .lines()
        .map(String::strip)
        .toList();
  }
}
