package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Answer;
import hurdline.page.ReportPage;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleChoose;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleDay;
import hurdline.sample.SampleGrid;
import hurdline.sample.SampleSeason;
import hurdline.sample.SampleYard;
import hurdline.table.RecordFile;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pages that are made again from a record. */
class PageCommandTest {
  private static final Path SMALL =
      Path.of(System.getProperty("hurdline.root"), "line-configs/small.yaml");

  @TempDir Path dir;

  static List<Answer> answers() {
    return List.of(
        SampleAnswer.year(),
        SampleDay.traced(),
        SampleAnswer.paper(),
        SampleCompare.two(),
        SampleSeason.two(),
        SampleYard.tooSmall(),
        SampleYard.stopped(),
        SampleGrid.line(),
        SampleGrid.tiles(),
        SampleChoose.budgets(),
        SampleChoose.ended());
  }

  private Path recordOf(Answer answer) throws IOException {
    Path record = Files.createDirectory(dir.resolve("answer")).resolve("record.json");
    StringWriter text = new StringWriter();
    RecordFile.write(answer, text);
    return Files.writeString(record, text.toString());
  }

  private static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        found.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return found;
  }

  @ParameterizedTest
  @MethodSource("answers")
  void thePageOfARecordIsThatOfItsAnswerInAnyUnitsAndMarks(Answer answer) throws IOException {
    Path out = dir.resolve("again");
    CommandCall call =
        CommandCall.of(
            "page",
            recordOf(answer).toString(),
            "--units",
            "metric",
            "--locale",
            "de",
            "--out",
            out.toString());
    assertThat(call.err()).isEmpty();
    assertThat(call.code()).isZero();
    assertThat(call.out()).isEqualTo("Report: " + out.resolve("report.html") + "\n");
    assertThat(out.resolve("report.html"))
        .hasContent(ReportPage.html(answer, new Wording(UnitSystem.METRIC, Locale.GERMAN)));
    assertThat(files(out).keySet())
        .allMatch(name -> name.equals("report.html") || name.matches("charts/.*\\.svg"));
  }

  /** Charts and page as if they had been asked for at once, the day of a trace among them. */
  @ParameterizedTest
  @MethodSource("calls")
  void aRealAnswerLosesNoPicture(List<String> asked) throws IOException {
    Path us = dir.resolve("us");
    Path metric = dir.resolve("metric");
    Path again = dir.resolve("again");
    assertThat(call(asked, "--units", "us", "--locale", "en-US", "--out", us.toString())).isZero();
    assertThat(call(asked, "--units", "metric", "--locale", "de", "--out", metric.toString()))
        .isZero();
    String record = us.resolve("record.json").toString();
    assertThat(
            call(
                List.of("page", record),
                "--units",
                "metric",
                "--locale",
                "de",
                "--out",
                again.toString()))
        .isZero();
    Map<String, String> wanted = files(metric);
    wanted
        .keySet()
        .removeIf(name -> name.endsWith(".csv") || name.matches("record.json|plant.yaml|call.txt"));
    assertThat(files(again)).isEqualTo(wanted);
    assertThat(metric.resolve("record.json")).hasSameTextualContentAs(us.resolve("record.json"));
  }

  static List<List<String>> calls() {
    String plant = SMALL.toString();
    return List.of(
        List.of(
            "run", plant, "--replications", "2", "--trace", "2027-03-02..2027-03-02", "--quiet"),
        List.of(
            "run",
            plant,
            "--replications",
            "2",
            "--vary",
            "machines.mill.power=15hp..20hp..5hp",
            "--quiet"),
        List.of("compare", plant, "--replications", "2", "--service-lives", "2", "--quiet"));
  }

  private static int call(List<String> asked, String... more) {
    return CommandCall.of(Stream.concat(asked.stream(), Stream.of(more)).toArray(String[]::new))
        .code();
  }

  @Test
  void withoutAFolderItMakesADatedOneAndNothingIsWrittenOver() throws IOException {
    Path record = recordOf(SampleAnswer.bare());
    String before = Files.readString(record);
    assertThat(CommandCall.of("page", record.toString()).code()).isZero();
    assertThat(CommandCall.of("page", record.toString()).code()).isZero();
    assertThat(
            files(record.getParent()).keySet().stream()
                .filter(name -> name.matches("record-page-[0-9-]+/report\\.html")))
        .hasSize(2);
    assertThat(record).hasContent(before.strip());
    CommandCall full =
        CommandCall.of("page", record.toString(), "--out", record.getParent().toString());
    assertThat(full.code()).isEqualTo(2);
    assertThat(full.err()).contains("holds something already and is not written over");
  }

  @Test
  void whatIsNoRecordIsToldWithItsPlaceAndLeavesNothing() throws IOException {
    Path record = recordOf(SampleAnswer.year());
    String whole = Files.readString(record);
    Path out = dir.resolve("out");
    Files.writeString(record, whole.substring(0, whole.length() / 2));
    assertThat(told(record, out))
        .matches("\\S+record\\.json:\\d+:\\d+: it is no JSON or ends too soon; expected .*\\R");
    Files.writeString(record, whole.replace("\"record\": 3", "\"record\": 1"));
    assertThat(told(record, out))
        .isEqualTo(
            record
                + ": record is of format 1; expected 3. Ask the plant file again, or use the"
                + " version of hurdline that wrote it\n");
    Files.write(record, new byte[] {(byte) 0xff, (byte) 0xfe, 0x10});
    assertThat(told(record, out)).startsWith(record + ": it is no JSON");
    assertThat(told(dir.resolve("none.json"), out))
        .isEqualTo(
            "hurdline: "
                + dir.resolve("none.json")
                + " is not there; expected the record.json of an answer\n");
    assertThat(told(dir, out)).contains("is a folder; expected the record.json of an answer");
    assertThat(told(SMALL, out))
        .contains("expected the record.json that run")
        .doesNotContain("Exception");
    assertThat(out).doesNotExist();
  }

  private static String told(Path record, Path out) {
    CommandCall call = CommandCall.of("page", record.toString(), "--out", out.toString());
    assertThat(call.code()).isEqualTo(2);
    return call.err();
  }

  /**
   * The limit stands in the file's warning; the caution says what to do and names none of its own.
   */
  @Test
  void aReportHasOneLimitOfSafeMoisture() throws IOException {
    Path out = dir.resolve("wet");
    int code =
        call(
            List.of("run", SMALL.toString(), "--replications", "1", "--quiet"),
            "--set",
            "crops.stalk.moisture={normal: {mean: 17 %, sd: 1 %}}",
            "--out",
            out.toString());
    assertThat(code).isZero();
    String page = Files.readString(out.resolve("report.html"));
    String cautions =
        page.substring(
            page.indexOf("<section id=\"cautions\">"), page.indexOf("<section id=\"proof\">"));
    assertThat(cautions)
        .contains("<dt>Wet bales</dt>")
        .containsOnlyOnce("15 % moisture or more")
        .doesNotContain("18 %");
  }
}
