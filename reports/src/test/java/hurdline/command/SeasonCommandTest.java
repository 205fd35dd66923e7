package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SeasonAnswer;
import hurdline.service.EngineStudies;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verb on a small plant with plans, from file to page. */
class SeasonCommandTest {
  private static final Path SMALL =
      Path.of(System.getProperty("hurdline.root"), "line-configs", "small.yaml");

  @TempDir Path dir;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int call(String... args) {
    return Hurdline.call(
        new CommandContext(
            new PrintWriter(out, true), new PrintWriter(err, true), false, new EngineStudies()),
        args);
  }

  private Path plant(String name, String from, String to, String more) throws IOException {
    String text = Files.readString(SMALL);
    assertThat(text).contains(from);
    return Files.writeString(dir.resolve(name), text.replace(from, to) + more);
  }

  private Path withPlans() throws IOException {
    String plans =
        "\n"
            + "plans:\n"
            + "  dear_wage: {description: as if a hand cost more, with: {money: {wage: 99"
            + " USD/h}}}\n";
    return plant("plant.yaml", "plant:", "plant:", plans);
  }

  private static List<String> namesIn(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void plansOfOneFileAreComparedFromFileToPage() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                "season",
                withPlans().toString(),
                "--replications",
                "4",
                "--out",
                answer.toString()))
        .isZero();
    assertThat(namesIn(answer))
        .containsExactly(
            "call.txt",
            "changeovers.csv",
            "charts",
            "differences.csv",
            "machine_weeks.csv",
            "measures.csv",
            "months.csv",
            "plans.csv",
            "plant.yaml",
            "record.json",
            "report.html",
            "summary.csv");
    assertThat(Files.readString(answer.resolve("differences.csv")))
        .startsWith("alternative,against,measure,unit,base_mean,alternative_mean,difference,")
        .contains("\ndear_wage,base,money.margin,USD,");
    assertThat(out.toString())
        .contains(", season plans the season as it stands, dear wage,")
        .contains("\nBest margin: the season as it stands, +")
        .endsWith("Report: " + answer.resolve("report.html") + "\n");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void severalFilesAreNamedWithoutTheirEndings() throws IOException {
    Path one = plant("one.yaml", "plant:", "plant:", "");
    Path other = plant("other.yml", "plant:", "plant:", "");
    assertThat(
            call(
                "season",
                one.toString(),
                other.toString(),
                "--replications",
                "2",
                "--json",
                "--quiet"))
        .isZero();
    SeasonAnswer answer =
        (SeasonAnswer) RecordFile.read("record.json", new StringReader(out.toString()));
    assertThat(answer.plans()).extracting(SeasonAnswer.Plan::name).containsExactly("one", "other");
    assertThat(answer.header().file()).isEqualTo("one.yaml, other.yml");
    assertThat(answer.differences())
        .isNotEmpty()
        .allMatch(pair -> !(pair.row().difference() > 0) && !(pair.row().difference() < 0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--plans late | plant.yaml: \"late\" is no plan of this file; expected a plan, one of base,"
            + " dear_wage",
        "--plans dear_wag | plant.yaml: \"dear_wag\" is no plan of this file; expected a plan,"
            + " perhaps \"dear_wage\"",
        "--plans base,base | two plans are named \"base\"; expected each plan once, and files whose"
            + " names differ without their folder and ending",
        "--plans base, | hurdline: --plans \"base,\" has an empty name; expected names of plans"
            + " such as base,late_cotton",
        "--option small+ | hurdline: --option \"small+\" has an empty name; expected names of"
            + " options such as bigger_mill or bigger_mill+second_bag_hand",
        "--plan base | hurdline: Unknown option: '--plan'. Perhaps --plans? See hurdline season"
            + " --help"
      })
  void aWrongCallIsOneLine(String args, String message) throws IOException {
    List<String> all =
        Stream.concat(
                Stream.of("season", withPlans().toString()), Stream.of(args.strip().split(" ")))
            .toList();
    assertThat(call(all.toArray(String[]::new))).isEqualTo(2);
    assertThat(err.toString()).startsWith(message);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
  }

  @Test
  void aFileWithoutPlansHasNothingToCompareButItsOwnSeason() throws IOException {
    Path alone = plant("alone.yaml", "plant:", "plant:", "");
    assertThat(call("season", alone.toString())).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo(
            "alone.yaml: the file has no plans to compare; expected an entry under plans, several"
                + " files, or --plans base for the season as it stands\n");
    assertThat(call("season", alone.toString(), "--plans", "base", "--replications", "2")).isZero();
    assertThat(out.toString())
        .contains(", season plan the season as it stands,")
        .doesNotContain("Best margin");
  }

  @Test
  void plantsThatCannotBeSetSideBySideAreRefused() throws IOException {
    Path usd = plant("usd.yaml", "plant:", "plant:", "");
    Path euro =
        Files.writeString(dir.resolve("euro.yaml"), Files.readString(usd).replace("USD", "EUR"));
    assertThat(call("season", usd.toString(), euro.toString())).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo(
            "plan \"euro\" has money in EUR and plan \"usd\" has money in USD; expected one"
                + " currency for all plans\n");
  }

  @Test
  void yearsOfDifferentLengthAreRefused() throws IOException {
    Path whole = plant("whole.yaml", "plant:", "plant:", "");
    String text = Files.readString(whole);
    String to =
        text.lines().filter(line -> line.strip().startsWith("to: 2")).findFirst().orElseThrow();
    Path longer =
        Files.writeString(dir.resolve("longer.yaml"), text.replace(to, "  to: 2028-02-29"));
    assertThat(call("season", whole.toString(), longer.toString())).isEqualTo(2);
    assertThat(err.toString())
        .startsWith("plan \"longer\" covers ")
        .endsWith("; expected one calendar from and to for all plans\n");
  }

  @Test
  void filesOfOneNameAndPlansPickedAmongFilesAreRefused() throws IOException {
    Path one = plant("one.yaml", "plant:", "plant:", "");
    Path same = Files.copy(one, Files.createDirectory(dir.resolve("b")).resolve("one.yaml"));
    assertThat(call("season", one.toString(), same.toString())).isEqualTo(2);
    assertThat(err.toString()).startsWith("two plans are named \"one\"; expected each plan once");
    assertThat(call("season", one.toString(), same.toString(), "--plans", "a")).isEqualTo(2);
    assertThat(err.toString())
        .endsWith(
            "hurdline: --plans picks plans of one file and 2 were given; expected one FILE, or"
                + " --plans left out\n");
  }

  @Test
  void campaignsOfAPlanThatOverlapAreTold() throws IOException {
    String line =
        Files.readString(SMALL)
            .lines()
            .filter(l -> l.startsWith("  - {line:"))
            .findFirst()
            .orElseThrow();
    String plans =
        "\nplans:\n  twice:\n    with:\n      season:\n      " + line + "\n      " + line + "\n";
    Path twice = plant("twice.yaml", "plant:", "plant:", plans);
    assertThat(call("season", twice.toString())).isEqualTo(2);
    assertThat(err.toString())
        .contains("the campaign overlaps that of season.0, and both use ")
        .contains("(with plan twice)");
  }
}
