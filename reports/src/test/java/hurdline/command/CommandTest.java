package hurdline.command;

import static hurdline.problem.LocatedProblem.Severity.PROBLEM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import hurdline.answer.Header;
import hurdline.answer.RunAnswer;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.problem.LocatedProblem;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import hurdline.service.EngineStudies;
import hurdline.service.PreparedStudy;
import hurdline.service.Studies;
import hurdline.study.PlantChanges;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.TraceWindow;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sun.misc.Signal;

/** What all verbs do alike, seen at a run; and the verbs that simulate nothing. */
class CommandTest extends Calls {
  private static final int SIGINT = 2;

  @Test
  void aRunWritesAllItsFilesAndTellsTheAnswer() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(call("run", plant.toString(), "--out", answer.toString())).isZero();
    assertThat(namesIn(answer))
        .containsExactly(
            "call.txt",
            "charts",
            "measures.csv",
            "months.csv",
            "plant.yaml",
            "record.json",
            "report.html",
            "summary.csv",
            "weeks.csv",
            "yard_levels.csv");
    assertThat(namesIn(answer.resolve("charts")))
        .hasSize(14)
        .allMatch(name -> name.endsWith(".svg"));
    assertThat(out.toString().lines())
        .hasSizeBetween(40, 65)
        .first()
        .isEqualTo("Sweetgum Bend shared gin, the plant as it stands, 2027-01-04 to 2027-12-31,");
    assertThat(out.toString()).endsWith("Report: " + answer.resolve("report.html") + "\n");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void withoutAFolderTheAnswerLiesBesideThePlant() throws IOException {
    assertThat(call("run", plant.toString(), "--quiet")).isZero();
    assertThat(namesIn(dir))
        .hasSize(2)
        .first()
        .asString()
        .matches("plant-answer-\\d{4}-\\d\\d-\\d\\d-\\d{6}");
    assertThat(out.toString() + err).isEmpty();
  }

  @Test
  void anOlderAnswerIsNotWrittenOver() throws IOException {
    Path old = Files.createDirectory(dir.resolve("old"));
    Files.writeString(old.resolve("record.json"), "old");
    assertThat(call("run", plant.toString(), "--out", old.toString())).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo(
            "hurdline: "
                + old
                + " holds something already and is not written over; name a new or an empty folder"
                + " with --out\n");
    assertThat(old.resolve("record.json")).hasContent("old");
  }

  @Test
  void jsonStandsAloneOnStandardOutput() throws IOException {
    assertThat(call("run", plant.toString(), "--json")).isZero();
    assertThat(RecordFile.read("record.json", new StringReader(out.toString())))
        .isInstanceOf(RunAnswer.class);
    assertThat(err.toString()).startsWith("Sweetgum Bend shared gin");
  }

  @Test
  void allProblemsOfAFileAreToldAndNothingIsWritten() throws IOException {
    Studies wrong =
        new Simulating(
            null,
            (chosen, effort) -> {
              throw new ProblemsException(
                  List.of(
                      new LocatedProblem(
                          PROBLEM, "plant.yaml", 1, 1, "plant", "is missing", "a name", "", ""),
                      new LocatedProblem(
                          PROBLEM,
                          "plant.yaml",
                          2,
                          3,
                          "crops.stak",
                          "is wrong",
                          "\"stalk\"",
                          "stalk",
                          "")));
            });
    assertThat(call(wrong, "run", plant.toString())).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo(
            "plant.yaml:1:1 plant: is missing; expected a name\n"
                + "plant.yaml:2:3 crops.stak: is wrong; expected \"stalk\"\n");
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
  }

  @Test
  void aFaultIsOneLineWithoutATraceAndLeavesNoFolder() throws IOException {
    PreparedStudy.Simulation<RunAnswer> broken =
        (done, stop) -> {
          throw new IllegalStateException("balance of hurd is off\nby 3 kg");
        };
    assertThat(call(broken, "run", plant.toString())).isEqualTo(1);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(err.toString())
        .startsWith(
            "hurdline failed (IllegalStateException: balance of hurd is off by 3 kg at"
                + " hurdline.command.CommandTest")
        .contains("please report this line");
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
  }

  /** Whoever began this program may have it ignore Ctrl-C, as a shell does in the background. */
  private static boolean ctrlCIsIgnored() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.isReadable(status)) {
      return false;
    }
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("SigIgn:"))
        .map(line -> line.replaceFirst("SigIgn:\\s*", ""))
        .anyMatch(mask -> (Long.parseUnsignedLong(mask, 16) & 1L << SIGINT - 1) != 0);
  }

  @Test
  void ctrlCKeepsWhatIsDoneAndSaysSo() throws IOException, InterruptedException {
    assumeFalse(ctrlCIsIgnored(), "what began these tests has them ignore SIGINT");
    PreparedStudy.Simulation<RunAnswer> interrupted =
        (done, stop) -> {
          Signal.raise(new Signal("INT"));
          for (int waited = 0; waited < 500 && !stop.getAsBoolean(); waited++) {
            pause();
          }
          return Optional.of(stopped());
        };
    Path answer = dir.resolve("answer");
    assertThat(call(interrupted, "run", plant.toString(), "--out", answer.toString()))
        .isEqualTo(130);
    assertThat(err.toString())
        .isEqualTo(
            "Stopping; what is done is kept. Ctrl-C again ends at once.\n"
                + "Stopped: 7 of 40 replications are done; they are saved in "
                + answer
                + ".\n");
    assertThat(out.toString())
        .containsPattern("7\\s+replications \\(stopped; 40 were asked for\\)");
    assertThat(namesIn(answer)).contains("record.json");
  }

  private static void pause() {
    try {
      Thread.sleep(10);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static RunAnswer stopped() {
    RunAnswer bare = SampleAnswer.bare();
    Header header =
        Draft.from(bare.header())
            .with(Header::replicationsAsked, 40)
            .with(Header::replications, 7)
            .with(Header::stopped, true)
            .made();
    return Draft.from(bare).with(RunAnswer::header, header).made();
  }

  @Test
  void stoppedBeforeAnythingIsDoneNothingIsWritten() throws IOException {
    assertThat(call((done, stop) -> Optional.empty(), "run", plant.toString())).isEqualTo(130);
    assertThat(err.toString())
        .isEqualTo("Stopped before the first replication was done; nothing is written.\n");
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
  }

  @Test
  void settingsReachTheEngine() {
    List<RunSettings> efforts = new ArrayList<>();
    List<PlantChanges> choices = new ArrayList<>();
    Studies recording =
        new Simulating(
            (done, stop) -> Optional.of(SampleAnswer.bare()),
            (chosen, effort) -> {
              choices.add(chosen);
              efforts.add(effort);
            });
    assertThat(
            call(
                recording,
                "run",
                plant.toString(),
                "--option",
                "a+b",
                "--set",
                "machines.mill.power=50 hp",
                "--set",
                "season.2.changeover=3 d",
                "--replications",
                "12",
                "--until",
                "mass.stalk.fed:500t",
                "--seed",
                "-9",
                "--threads",
                "2",
                "--trace",
                "2027-06-07..2027-06-08",
                "--replication",
                "3"))
        .isZero();
    assertThat(efforts)
        .containsExactly(
            new RunSettings(
                12,
                Optional.of(new Precision("mass.stalk.fed", 500, false, "mass.stalk.fed:500t")),
                -9,
                2,
                Optional.of(
                    new TraceWindow(
                        3,
                        LocalDateTime.of(2027, 6, 7, 0, 0),
                        LocalDateTime.of(2027, 6, 9, 0, 0)))));
    assertThat(choices.get(0).option()).isEqualTo("a+b");
    assertThat(choices.get(0).sets())
        .containsExactly("machines.mill.power=50 hp", "season.2.changeover=3 d");
    assertThat(choices.get(0).changes())
        .containsExactly(
            new Change.Named("a"),
            new Change.Named("b"),
            new Change.Value("machines.mill.power", "50 hp"),
            new Change.Value("season.2.changeover", "3 d"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--replications 0 | --replications 0 is too few; expected a whole number from 1 on",
        "--threads 0 | --threads 0 is too few; expected a whole number from 1 on",
        "--replication 2 | --replication says which one --trace shows; expected --trace FROM..TO"
            + " beside it",
        "--replications 3 --trace 2027-01-05..2027-01-06 --replication 4 | --replication 4 is not"
            + " simulated; expected 1 to 3",
        "--set power | --set \"power\" is no change; expected KEY=VALUE such as"
            + " machines.mill.power=\"50 hp\"",
        "--option a++b | --option \"a++b\" has an empty name; expected names of options such as"
            + " bigger_mill or bigger_mill+second_bag_hand",
        "--locale ? | --locale \"?\" is no language tag; expected one such as en-US, de or fr-CA",
        "--locale xx | --locale \"xx\" is no language that is known here; expected one such as"
            + " en-US, de or fr-CA",
        "--locale en-XX | --locale \"en-XX\" names no country that is known here; expected one such"
            + " as en-US, de or fr-CA",
        "--locale de_DE.UTF-8 | --locale \"de_DE.UTF-8\" is no language tag; expected perhaps"
            + " \"de-DE\"",
        "--locale german | --locale \"german\" is no language that is known here; expected perhaps"
            + " \"de\"",
        "--until fed:2% | --until \"fed:2%\" names no measure;" + " expected a measure, one of",
        "--until mass.stalk.fed:3kWh | --until"
            + " \"mass.stalk.fed:3kWh\" has another unit than its measure; expected % or t. See",
        "--until mass.stalk.fed:0% | --until"
            + " \"mass.stalk.fed:0%\" can never be reached; expected a half-width above 0.",
        "--trace tomorrow | --trace \"tomorrow\" is no span;" + " expected a day such as",
        "--units imperial | --units \"imperial\" is no system of units;"
            + " expected us or metric.",
        "--replicatoins 3 | Unknown options: '--replicatoins', '3'. Perhaps --replications?"
      })
  void aWrongCallIsOneLine(String args, String message) throws IOException {
    List<String> call = new ArrayList<>(List.of("run", plant.toString()));
    call.addAll(List.of(args.split(" ")));
    assertThat(call(call.toArray(String[]::new))).isEqualTo(2);
    assertThat(err.toString()).startsWith("hurdline: " + message);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
  }

  @Test
  void everyLocaleOfThisJavaIsKnown() {
    for (String tag : List.of("en-US", "de", "fr-CA", "es-419", "pt-BR", "zh-Hans-CN", "en-DE")) {
      assertThat(call("check", plant.toString(), "--locale", tag)).as(tag).isZero();
    }
  }

  @Test
  void aShapeThatThereIsNotIsTold() {
    assertThat(call("new", dir.resolve("mine").toString(), "--template", "large")).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo(
            "hurdline: --template \"large\" is no template; expected small, shared or stalk. See"
                + " hurdline new --help\n");
  }

  @ParameterizedTest
  @CsvSource({"2027-02-01..2027-02-28", "2027-05-29", "2026-03-02..2026-03-03", "2028-03-02"})
  void aTraceOutsideTheCalendarIsRefused(String span) throws IOException {
    Path small = Path.of(System.getProperty("hurdline.root")).resolve("line-configs/small.yaml");
    Files.copy(small, dir.resolve("small.yaml"));
    assertThat(
            call(new EngineStudies(), "run", dir.resolve("small.yaml").toString(), "--trace", span))
        .isEqualTo(2);
    assertThat(err.toString())
        .startsWith("small.yaml: the trace from ")
        .endsWith(" lies outside the calendar; expected dates from 2027-03-01 to 2027-05-28\n");
    assertThat(namesIn(dir)).containsExactly("plant.yaml", "small.yaml");
  }

  @Test
  void checkTellsCapacityAndWritesOnlyWhereItIsTold() throws IOException {
    assertThat(call("check", plant.toString())).isZero();
    assertThat(out.toString())
        .contains("  rated     2.13 ton/h by the mill: 3,915 ton in 1,840 scheduled hours,\n");
    assertThat(err.toString())
        .isEqualTo(
            "warning: sweetgum-bend.yaml:12:3 resources.loader.count: is 0 and never serves;"
                + " expected at least 1\n"
                + "warning: orders for coarse hurd and fine hurd, 454.7 ton: take 140 % of what the"
                + " mean crop can make and 70.0 % of what the scheduled hours can; they cannot all"
                + " be met, some 130 ton will be missing\n");
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
    assertThat(call("check", plant.toString(), "--out", dir.resolve("paper").toString())).isZero();
    assertThat(namesIn(dir.resolve("paper"))).containsExactly("record.json", "report.html");
  }

  @ParameterizedTest
  @CsvSource({"small, small.yaml", "shared, sweetgum-bend.yaml", "stalk, stalk.yaml"})
  void newWritesAPlantFileAndNeverOverOne(String shape, String file) throws IOException {
    Path folder = dir.resolve("mine/plants");
    assertThat(call("new", folder.toString(), "--template", shape)).isZero();
    Path written = folder.resolve(file);
    assertThat(written).content().startsWith("#").contains("hurdline: 1");
    assertThat(PlantFile.read(written).contentHash()).hasSize(64);
    assertThat(out.toString())
        .isEqualTo(
            "Wrote "
                + written
                + ". Edit it with any text editor, then: hurdline check "
                + written
                + "\n");
    Files.writeString(written, "mine");
    assertThat(call("new", folder.toString(), "--template", shape)).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo("hurdline: " + written + " is there already and is not written over\n");
    assertThat(written).hasContent("mine");
  }

  @ParameterizedTest
  @CsvSource({"small, small.yaml", "shared, sweetgum-bend.yaml", "stalk, stalk.yaml"})
  void whatNewWritesIsRightAndRunsAtOnce(String shape, String file) {
    Path folder = dir.resolve("mine");
    assertThat(call("new", folder.toString(), "--template", shape)).isZero();
    String written = folder.resolve(file).toString();
    CommandContext simulated =
        new CommandContext(
            new PrintWriter(out, true), new PrintWriter(err, true), false, new EngineStudies());
    assertThat(Hurdline.call(simulated, "check", written)).as("%s", err).isZero();
    assertThat(err.toString()).as("a first file needs no warning").isEmpty();
    assertThat(
            Hurdline.call(
                simulated,
                "run",
                written,
                "--replications",
                "2",
                "--out",
                dir.resolve("first").toString()))
        .as("%s", err)
        .isZero();
    assertThat(dir.resolve("first/report.html")).isNotEmptyFile();
  }
}
