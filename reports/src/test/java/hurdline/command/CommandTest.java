package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.CompareAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleYard;
import hurdline.study.Aim;
import hurdline.study.Chosen;
import hurdline.study.CompareAsk;
import hurdline.study.Effort;
import hurdline.study.SeasonAsk;
import hurdline.study.Span;
import hurdline.study.YardAsk;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sun.misc.Signal;

class CommandTest {
  @TempDir Path dir;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path plant;

  @BeforeEach
  void aPlantFileLiesThere() throws IOException {
    plant = Files.writeString(dir.resolve("plant.yaml"), "hurdline: 1\n");
  }

  private int call(Studies studies, String... args) {
    return Hurdline.call(
        new Setting(new PrintWriter(out, true), new PrintWriter(err, true), false, studies), args);
  }

  private int call(Studies.Study<RunAnswer> engine, String... args) {
    return call(studies(engine), args);
  }

  private int call(String... args) {
    return call((done, stop) -> Optional.of(SampleAnswer.year()), args);
  }

  /** An engine that takes any plant and effort and plays as it is told. */
  private static Studies studies(Studies.Study<RunAnswer> engine) {
    return new Playing(engine, (chosen, effort) -> {});
  }

  private record Playing(Studies.Study<RunAnswer> engine, BiConsumer<Chosen, Effort> asked)
      implements Studies {
    @Override
    public PaperAnswer onPaper(Path file, Chosen chosen) {
      asked.accept(chosen, null);
      return SampleAnswer.paper();
    }

    @Override
    public Studies.Waiting<RunAnswer> run(Path file, Chosen chosen, Effort effort) {
      asked.accept(chosen, effort);
      return new Studies.Waiting<>(effort.replications(), engine);
    }

    @Override
    public Studies.Waiting<SeasonAnswer> season(
        List<Path> files, SeasonAsk ask, Chosen chosen, Effort effort) {
      throw new UnsupportedOperationException("SeasonCommandTest asks for seasons");
    }

    @Override
    public Studies.Gridding grid(Path file, Chosen chosen, List<GridKey> keys, Effort effort) {
      throw new AssertionError("no grid is asked for");
    }

    @Override
    public Studies.Gridding grid(
        List<Path> files, List<String> plans, Chosen chosen, List<GridKey> keys, Effort effort) {
      throw new AssertionError("no grid is asked for");
    }

    @Override
    public Studies.Gridding grid(
        Path file, Chosen chosen, YardAsk ask, List<GridKey> keys, Effort effort) {
      throw new AssertionError("no grid is asked for");
    }

    @Override
    public Studies.Gridding grid(
        Path file, Chosen base, CompareAsk ask, List<GridKey> keys, Effort effort) {
      throw new AssertionError("no grid is asked for");
    }

    @Override
    public Studies.Waiting<YardAnswer> yard(
        Path file, Chosen chosen, Effort effort, YardAsk ask) {
      asked.accept(chosen, effort);
      boolean stops = ask.equals(
              new YardAsk(Optional.of("stopped"), 0.125, java.util.OptionalDouble.of(0.9), true));
      YardAnswer answer = stops ? SampleYard.stopped() : SampleYard.tooSmall();
      return new Studies.Waiting<>(15, (progress, stop) -> Optional.of(answer));
    }

    @Override
    public Studies.Waiting<CompareAnswer> compare(
        Path file, Chosen base, CompareAsk ask, Effort effort) {
      asked.accept(base, effort);
      CompareAnswer answer = ask.among().contains("stopped") ? SampleCompare.stopped() : SampleCompare.two();
      return new Studies.Waiting<>(
          3 * effort.replications(),
          (progress, stop) ->
              ask.among().contains("nothing") ? Optional.empty() : Optional.of(answer));
    }
  }

  private List<String> namesIn(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aRunWritesAllItsFilesAndTellsTheAnswer() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(call("run", plant.toString(), "--out", answer.toString())).isZero();
    assertThat(namesIn(answer))
        .containsExactly(
            "charts",
            "levels.csv",
            "measures.csv",
            "months.csv",
            "record.json",
            "report.html",
            "summary.csv",
            "weeks.csv");
    assertThat(namesIn(answer.resolve("charts")))
        .hasSize(14)
        .allMatch(name -> name.endsWith(".svg"));
    assertThat(out.toString().lines())
        .hasSizeBetween(13, 26)
        .first()
        .isEqualTo("Sweetgum Bend shared gin, base, 2027-01-04 to 2027-12-31, 40 replications,");
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
    assertThat(RecordFile.read(new StringReader(out.toString()))).isInstanceOf(RunAnswer.class);
    assertThat(err.toString()).startsWith("Sweetgum Bend shared gin");
  }

  @Test
  void allProblemsOfAFileAreToldAndNothingIsWritten() throws IOException {
    Studies wrong =
        new Playing(
            null,
            (chosen, effort) -> {
              throw new ProblemsException(
                  List.of(
                      "plant.yaml:1:1 plant: is missing; expected a name",
                      "plant.yaml:2:3 crops.stak: is wrong; expected \"stalk\""));
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
    Studies.Study<RunAnswer> broken =
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

  @Test
  void ctrlCKeepsWhatIsDoneAndSaysSo() throws IOException, InterruptedException {
    Studies.Study<RunAnswer> interrupted =
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
    assertThat(out.toString()).containsPattern("7\\s+replications \\(stopped; 40 were asked for\\)");
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
    RunAnswer b = SampleAnswer.bare();
    var h = b.header();
    var header =
        new hurdline.answer.Header(
            h.plant(),
            h.file(),
            h.contentHash(),
            h.version(),
            h.option(),
            h.changes(),
            h.seed(),
            40,
            7,
            "",
            true,
            "",
            h.from(),
            h.to());
    return new RunAnswer(
        header,
        b.outline(),
        b.summary(),
        b.holders(),
        b.machines(),
        b.weeks(),
        b.months(),
        b.levels(),
        b.flows(),
        b.assumptions(),
        b.cautions(),
        b.warnings(),
        b.samples(),
        b.trace());
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
    List<Effort> efforts = new ArrayList<>();
    List<Chosen> choices = new ArrayList<>();
    Studies recording =
        new Playing(
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
            new Effort(
                12,
                Optional.of(new Aim("mass.stalk.fed", 500, false, "mass.stalk.fed:500t")),
                -9,
                2,
                Optional.of(
                    new Span(
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
            + " played; expected 1 to 3",
        "--set power | --set \"power\" is no change; expected KEY=VALUE such as"
            + " machines.mill.power=\"50 hp\"",
        "--option a++b | --option \"a++b\" has an empty name; expected names of options such as"
            + " bigger_mill or bigger_mill+second_bag_hand",
        "--locale ? | --locale \"?\" is no language tag; expected one such as de or fr-CA",
        "--until fed:2% | Invalid value for option '--until': --until \"fed:2%\" names no measure;"
            + " expected a measure, one of",
        "--until mass.stalk.fed:3kWh | Invalid value for option '--until': --until"
            + " \"mass.stalk.fed:3kWh\" has another unit than its measure; expected % or t. See",
        "--until mass.stalk.fed:0% | Invalid value for option '--until': --until"
            + " \"mass.stalk.fed:0%\" can never be reached; expected a half-width above 0.",
        "--trace tomorrow | Invalid value for option '--trace': --trace \"tomorrow\" is no span;"
            + " expected FROM..TO such as",
        "--units imperial | Invalid value for option '--units': \"imperial\" is no system of units;"
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
  void anAimInTonsIsTurnedIntoTonnes() {
    assertThat(AimReader.of("mass.stalk.fed:500ton").halfWidth())
        .isCloseTo(453.59237, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(AimReader.of("money.margin:5000 USD"))
        .isEqualTo(new Aim("money.margin", 5000, false, "money.margin:5000 USD"));
    assertThat(AimReader.of("money.margin:2%"))
        .isEqualTo(new Aim("money.margin", 0.02, true, "money.margin:2%"));
  }

  @Test
  void checkTellsThePaperCapacityAndWritesOnlyWhereItIsTold() throws IOException {
    assertThat(call("check", plant.toString())).isZero();
    assertThat(out.toString()).contains("on paper mill holds stalk_line at 2.13 ton/h fed");
    assertThat(err.toString())
        .isEqualTo(
            "warning: sweetgum-bend.yaml:12:3 resources.loader.count: is 0 and never serves;"
                + " expected at least 1\n");
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
    assertThat(call("check", plant.toString(), "--out", dir.resolve("paper").toString())).isZero();
    assertThat(namesIn(dir.resolve("paper"))).containsExactly("record.json", "report.html");
  }

  @ParameterizedTest
  @CsvSource({"small, small.yaml", "shared, sweetgum-bend.yaml", "stalk, stalk.yaml"})
  void newWritesAPlantFileAndNeverOverOne(String shape, String file) throws IOException {
    Path folder = dir.resolve("mine/plants");
    assertThat(call("new", folder.toString(), "--shape", shape)).isZero();
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
    assertThat(call("new", folder.toString(), "--shape", shape)).isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo("hurdline: " + written + " is there already and is not written over\n");
    assertThat(written).hasContent("mine");
  }

  @Test
  void aComparisonWritesAllItsFilesAndTellsTheAnswer() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(call("compare", plant.toString(), "--out", answer.toString())).isZero();
    assertThat(namesIn(answer))
        .containsExactly(
            "best.csv",
            "break_even.csv",
            "cash.csv",
            "charts",
            "differences.csv",
            "gain.csv",
            "holders.csv",
            "lives.csv",
            "measures.csv",
            "months.csv",
            "payback.csv",
            "record.json",
            "report.html",
            "summary.csv",
            "tornado.csv");
    assertThat(namesIn(answer.resolve("charts")))
        .hasSize(11)
        .allMatch(name -> name.endsWith(".svg"));
    assertThat(out.toString().lines())
        .hasSizeBetween(12, 44)
        .first()
        .asString()
        .startsWith("Sweetgum Bend shared gin, base against bigger_mill, bigger_mill+hand,");
    assertThat(out.toString()).endsWith("Report: " + answer.resolve("report.html") + "\n");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aComparisonAsJsonStandsAlone() throws IOException {
    assertThat(call("compare", plant.toString(), "--json", "--quiet")).isZero();
    assertThat(RecordFile.read(new StringReader(out.toString()))).isInstanceOf(CompareAnswer.class);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aStoppedComparisonIsKeptAndSaysSo() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(call("compare", plant.toString(), "--among", "stopped", "--out", answer.toString()))
        .isEqualTo(130);
    assertThat(err.toString())
        .isEqualTo("Stopped: 7 of 40 replications are done; they are saved in " + answer + ".\n");
    assertThat(namesIn(answer)).contains("record.json");
    assertThat(call("compare", plant.toString(), "--among", "nothing")).isEqualTo(130);
    assertThat(err.toString()).contains("nothing is written");
    assertThat(namesIn(dir)).containsExactly("answer", "plant.yaml");
  }

  @Test
  void settingsOfAComparisonReachTheEngine() {
    List<Chosen> bases = new ArrayList<>();
    List<Effort> efforts = new ArrayList<>();
    Studies studies =
        new Playing(
            null,
            (base, effort) -> {
              bases.add(base);
              efforts.add(effort);
            });
    assertThat(
            call(
                studies, "compare", plant.toString(), "--among", "a,b, a+b", "--set", "yard.x=1",
                "--replications", "7", "--seed", "3", "--threads", "2", "--quiet"))
        .isZero();
    assertThat(bases)
        .containsExactly(
            new Chosen("base", List.of("yard.x=1"), List.of(new Change.Value("yard.x", "1"))));
    assertThat(efforts).containsExactly(new Effort(7, Optional.empty(), 3, 2, Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--among a,,b | hurdline: --among \"a,,b\" has an empty name; expected names of options such as"
            + " bigger_mill,second_bag_hand or bigger_mill+second_bag_hand",
        "--replications 0 | hurdline: --replications 0 is too few; expected a whole number from 1 on",
        "--threads 0 | hurdline: --threads 0 is too few; expected a whole number from 1 on",
        "--within 5 | hurdline: Invalid value for option '--within': \"5\" has no unit; expected a time such as"
            + " 5yr. See hurdline compare --help",
        "--within 0yr | hurdline: Invalid value for option '--within': \"0yr\" is no time to pay back in;"
            + " expected a time above 0 such as 5yr. See hurdline compare --help",
        "--tornado a | hurdline: --tornado \"a\" is no input; expected KEY=20% or KEY=LOW..HIGH, such as"
            + " products.fiber.price=20% or money.wage=20USD/h..30USD/h",
        "--tornado a=1..2USD | hurdline: --tornado \"a=1..2USD\" has no two ends in one unit; expected KEY=20%"
            + " or KEY=LOW..HIGH, such as products.fiber.price=20% or money.wage=20USD/h..30USD/h",
        "--tornado a=120% | hurdline: --tornado \"a=120%\" has no share between 0 and 100 %; expected KEY=20%"
            + " or KEY=LOW..HIGH, such as products.fiber.price=20% or money.wage=20USD/h..30USD/h",
        "--best money.margin:2% | hurdline: --best \"money.margin:2%\" has a share for its band; expected an amount,"
            + " settled before anything is known",
        "--best money.mragin:2 | hurdline: --best \"money.mragin:2\" names no measure; expected a measure, perhaps"
            + " \"money.margin\"",
        "--amomg=a | hurdline: Unknown option: '--amomg=a'. Perhaps --among? See hurdline compare --help",
      })
  void aWrongComparisonIsOneLine(String args, String message) throws IOException {
    List<String> all = new ArrayList<>(List.of("compare", plant.toString()));
    all.addAll(List.of(args.strip().split(" ")));
    assertThat(call(all.toArray(String[]::new))).isEqualTo(2);
    assertThat(err.toString()).isEqualTo(message + "\n");
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
  }

  @Test
  void anUnknownOptionIsToldByTheEngineWithTheNearestWord() throws IOException {
    Path example = Path.of(System.getProperty("hurdline.root"), "line-configs", "small.yaml");
    assertThat(call(new EngineStudies(), "compare", example.toString(), "--among", "biger_mill"))
        .isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo(
            "small.yaml: \"biger_mill\" is no option of this file; expected an option, perhaps"
                + " \"bigger_mill\"\n");
  }

  @Test
  void aSmallPlantIsComparedFromFileToPage() throws IOException {
    Path example = Path.of(System.getProperty("hurdline.root"), "line-configs", "small.yaml");
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                new EngineStudies(), "compare", example.toString(), "--replications", "12", "--out",
                answer.toString()))
        .isZero();
    assertThat(Files.readString(answer.resolve("payback.csv")).lines()).hasSize(13);
    assertThat(Files.readString(answer.resolve("record.json"))).contains("\"verb\": \"compare\"");
    assertThat(Files.readString(answer.resolve("report.html"))).contains("Does it pay");
  }

  @Test
  void aYardWritesAllItsFilesAndTellsTheAnswer() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(call("yard", plant.toString(), "--out", answer.toString())).isZero();
    assertThat(namesIn(answer))
        .containsExactly(
            "acres.csv", "capacity.csv", "charts", "cheapest.csv", "gain.csv", "levels.csv", "loads.csv", "measures.csv", "peaks.csv", "record.json",
            "report.html", "summary.csv");
    assertThat(namesIn(answer.resolve("charts"))).hasSize(10).allMatch(name -> name.endsWith(".svg"));
    assertThat(out.toString())
        .startsWith("Sweetgum Bend shared gin, base, yard of stalk, ")
        .endsWith("Report: " + answer.resolve("report.html") + "\n");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aStoppedYardIsKeptAndSaysSo() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call("yard", plant.toString(), "--crop", "stopped", "--overflow", "12.5%", "--acres", "90%", "--gain",
                "--out", answer.toString()))
        .isEqualTo(130);
    assertThat(err.toString())
        .isEqualTo("Stopped: 7 of 40 replications are done; they are saved in " + answer + ".\n");
    assertThat(namesIn(answer)).contains("record.json");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--overflow 5 | hurdline: --overflow \"5\" is no such share; expected one above 0 % and below 100 %, such as 5%",
        "--overflow 0% | hurdline: --overflow \"0%\" is no such share; expected one above 0 % and below 100 %, such as 5%",
        "--overflow NaN% | hurdline: --overflow \"NaN%\" is no such share; expected one above 0 % and below 100 %, such as 5%",
        "--overflow x% | hurdline: --overflow \"x%\" is no such share; expected one above 0 % and below 100 %, such as 5%",
        "--acres 100% | hurdline: --acres \"100%\" is no such share; expected one above 0 % and below 100 %, such as 5%",
        "--until mass.stalk.fed:2% | hurdline: --until is not there for yard; expected --replications N",
      })
  void aWrongYardIsOneLine(String args, String message) throws IOException {
    List<String> all = new ArrayList<>(List.of("yard", plant.toString()));
    all.addAll(List.of(args.strip().split(" ")));
    assertThat(call(all.toArray(String[]::new))).isEqualTo(2);
    assertThat(err.toString()).isEqualTo(message + "\n");
    assertThat(namesIn(dir)).containsExactly("plant.yaml");
  }

  @Test
  void theYardOfASmallPlantIsSizedFromFileToPage() throws IOException {
    Path example = Path.of(System.getProperty("hurdline.root"), "line-configs", "small.yaml");
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                new EngineStudies(), "yard", example.toString(), "--replications", "4", "--out", answer.toString()))
        .isZero();
    assertThat(Files.readString(answer.resolve("record.json"))).contains("\"verb\": \"yard\"");
    assertThat(Files.readString(answer.resolve("report.html"))).contains("If it had no limit");
  }
}
