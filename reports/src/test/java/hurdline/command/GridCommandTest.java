package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.GridAnswer;
import hurdline.service.EngineStudies;
import hurdline.service.PreparedGrid;
import hurdline.service.Studies;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grids from the plant file to the page, stopped and taken up again. */
class GridCommandTest {
  private static final Path SHIPPED = Path.of(System.getProperty("hurdline.root"), "line-configs");
  private static final Path NIGHTS = SHIPPED.resolve("exact/cut_night.yaml");
  private static final Path SMALL = SHIPPED.resolve("small.yaml");

  @TempDir Path dir;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int call(Studies studies, String... args) {
    return Hurdline.call(
        new CommandContext(new PrintWriter(out, true), new PrintWriter(err, true), false, studies),
        args);
  }

  private int call(String... args) {
    return call(new EngineStudies(), args);
  }

  /** The engine, whose grids are asked to stop once so many simulates are done. */
  private static Studies stoppingAfter(int simulations) {
    EngineStudies engine = new EngineStudies();
    return (Studies)
        Proxy.newProxyInstance(
            Studies.class.getClassLoader(),
            new Class<?>[] {Studies.class},
            (proxy, method, args) -> {
              Object made = method.invoke(engine, args);
              return made instanceof PreparedGrid grid ? stopping(grid, simulations) : made;
            });
  }

  private static PreparedGrid stopping(PreparedGrid grid, int after) {
    return new PreparedGrid(
        grid.grid(),
        (store, progress, stop) -> {
          AtomicInteger done = new AtomicInteger();
          return grid.simulate(
              store, (calendars, of) -> done.incrementAndGet(), () -> done.get() >= after);
        });
  }

  /** What was told, each line whole again. */
  private String said() {
    return out.toString().replaceAll("\n +", " ");
  }

  private static Map<String, String> filesIn(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path path : inside.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(path).toString(), Files.readString(path));
      }
    }
    return files;
  }

  @Test
  void aGridOverAnExactPlantGivesExactMeansInTheTable() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                "run",
                NIGHTS.toString(),
                "--vary",
                "lines.stalk_line.steps.feeder.rate=1t/h..3t/h..1t/h",
                "--vary",
                "crews.stalk_line.night=1..2..1",
                "--replications",
                "2",
                "--out",
                answer.toString()))
        .isZero();
    assertThat(filesIn(answer).keySet())
        .containsExactly(
            "call.txt",
            "charts/tiles-mass.stalk.fed.svg",
            "charts/tiles-money.margin.svg",
            "charts/tiles-season.stalk_line.left_over.svg",
            "charts/tiles-yard.stalk.peak.svg",
            "grid.csv",
            "plant.yaml",
            "record.json",
            "report.html");
    List<String> lines = Files.readAllLines(answer.resolve("grid.csv"));
    assertThat(lines)
        .startsWith(
            "lines.stalk_line.steps.feeder.rate,crews.stalk_line.night,alternative,measure,unit,mean,"
                + "low_95,high_95,replications,interval")
        .contains("1 t/h,1,base,mass.stalk.fed,t,9,9,9,2,student")
        .contains("3 t/h,1,base,mass.stalk.fed,t,27,27,27,2,student")
        .contains("3 t/h,2,base,money.wages,USD,200,200,200,2,student")
        .contains("2 t/h,2,base,mass.stalk.fed,t,18,18,18,2,student");
    assertThat(err.toString().lines())
        .hasSize(2)
        .first()
        .isEqualTo(
            "Grid of 6 cells x 1 plant x 2 replications: 12 simulation runs of the calendar.");
    assertThat(err.toString())
        .containsPattern("About \\d+ s on \\d+ threads?, by the first runs\\.\n");
    assertThat(said()).contains("Margin: highest at rate 1 t/h, night 1, -100.0 USD");
    assertThat(
            RecordFile.read(
                "record.json", new StringReader(Files.readString(answer.resolve("record.json")))))
        .isInstanceOf(GridAnswer.class);
  }

  @Test
  void aGridTakenUpAgainIsTheSameToTheByteAsOneThatWasNot() throws IOException {
    List<String> args =
        List.of(
            "compare",
            SMALL.toString(),
            "--among",
            "second_spout",
            "--set",
            "calendar.to=2027-03-12",
            "--set",
            "season.0.to=2027-03-12",
            "--vary",
            "machines.mill.power=x0.8..x1.4..x0.2",
            "--replications",
            "5");
    Path whole = dir.resolve("whole");
    Path parts = dir.resolve("parts");
    assertThat(call(with(args, "--threads", "1", "--quiet", "--out", whole.toString()))).isZero();
    assertThat(out + err.toString()).isEmpty();
    // Two threads may end cells in any order, and at 22 of 40 replications at least one is done.
    assertThat(call(stoppingAfter(22), with(args, "--threads", "2", "--out", parts.toString())))
        .isEqualTo(130);
    assertThat(err.toString())
        .contains("of 4 cells are done and kept; the same call with --out " + parts + " goes on");
    Map<String, String> kept = filesIn(parts);
    assertThat(kept).containsKey("cells/settings.txt").hasSizeBetween(2, 4);
    assertThat(kept.keySet())
        .allMatch(file -> file.matches("cells/(settings.txt|cell-[1-4].json)"));

    assertThat(call(with(args, "--seed", "2", "--out", parts.toString()))).isEqualTo(2);
    assertThat(err.toString())
        .endsWith(
            "hurdline: "
                + parts
                + " holds a grid that was begun otherwise (there seed: 1; here seed: 2) and is not"
                + " written over; expected the same call, or a new or an empty folder\n");
    assertThat(filesIn(parts)).isEqualTo(kept);

    assertThat(call(with(args, "--threads", "3", "--out", parts.toString()))).isZero();
    assertThat(err.toString())
        .contains(
            kept.size() - 1 + " of 4 cells are finished in " + parts + " and are not simulated");
    assertThat(filesIn(parts)).isEqualTo(filesIn(whole));
    assertThat(call(with(args, "--out", parts.toString()))).as("it is whole now").isEqualTo(2);
    assertThat(err.toString()).endsWith("name a new or an empty folder with --out\n");
  }

  private static String[] with(List<String> args, String... more) {
    List<String> all = new ArrayList<>(args);
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  @Test
  void aGridThatWasStoppedBeforeItsFirstCellLeavesNothing() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                stoppingAfter(1),
                "run",
                NIGHTS.toString(),
                "--vary",
                "crews.stalk_line.night=1..3..1",
                "--quiet",
                "--threads",
                "1",
                "--out",
                answer.toString()))
        .isEqualTo(130);
    assertThat(err.toString())
        .isEqualTo("Stopped before the first cell was done; nothing is written.\n");
    assertThat(answer).doesNotExist();
  }

  @Test
  void aCellWithProblemsIsToldBeforeItStartsAndInTheAnswer() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                "run",
                NIGHTS.toString(),
                "--vary",
                "lines.stalk_line.steps.feeder.rate=0t/h..2t/h..1t/h",
                "--replications",
                "1",
                "--out",
                answer.toString()))
        .isZero();
    assertThat(err.toString())
        .startsWith(
            "left out: cut_night.yaml lines.stalk_line.steps.feeder.rate: \"0 t/h\" is 0, which"
                + " cannot be; expected a rate such as \"3.6 t/h\", above 0 (with"
                + " lines.stalk_line.steps.feeder.rate=0 t/h)\n"
                + "Grid of 3 cells x 1 plant x 1 replication, less 1 left out: 2 simulation runs of"
                + " the calendar.\n");
    assertThat(said())
        .contains("Left out, since the plant has problems there: 0 t/h\n")
        .contains("one replication says nothing about the spread");
    assertThat(Files.readString(answer.resolve("record.json"))).doesNotContain(dir.toString());
  }

  /** By 9 t more a price p pays 100 USD for one hand more where p is above 100/9. */
  @Test
  void seasonPlansAreVariedWithTheirNamesInTheTable() throws IOException {
    Path file =
        Files.writeString(
            dir.resolve("nights.yaml"),
            Files.readString(NIGHTS).replace("tow: {}", "tow: {price: 10 USD/t}")
                + "plans:\n  more:\n    with: {crews: {stalk_line: {night: 4}}, lines: {stalk_line:"
                + " {steps: {feeder: {rate: 3 t/h}}}}}\n");
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                "season",
                file.toString(),
                "--vary",
                "products.tow.price=x0.5..x2..x0.5",
                "--replications",
                "2",
                "--out",
                answer.toString()))
        .isZero();
    assertThat(Files.readAllLines(answer.resolve("grid.csv")))
        .startsWith(
            "products.tow.price,alternative,measure,unit,mean,low_95,high_95,replications,interval")
        .contains(
            "x0.5,more,mass.stalk.fed,t,27,27,27,2,student",
            "x2,base,money.wages,USD,300,300,300,2,student");
    assertThat(said())
        .contains(
            "Best by margin: the season as it stands at x0.5 and x1, more at x1.5 and x2; it"
                + " changes from the season as it stands to more near x1.11, significantly between"
                + " x1 and x1.5\n");
    assertThat(Files.readString(answer.resolve("report.html")))
        .contains("Where the best plan changes");
  }

  @Test
  void aYardIsVariedAsItStandsAndWithoutLimit() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                "yard",
                SHIPPED.resolve("exact/gate.yaml").toString(),
                "--vary",
                "yard.on_hand.stalk=2bales..8bales..3bales",
                "--replications",
                "1",
                "--out",
                answer.toString()))
        .isZero();
    assertThat(Files.readString(answer.resolve("grid.csv")))
        .contains("8 bales,base,yard.stalk.peak,bales,10,,,1,\n")
        .containsPattern("8 bales,yard_without_limit,yard.stalk.peak,bales,1[1-9],,,1,\n");
  }

  @Test
  void anOptionWhosePartIsVariedAwayIsRefused() throws IOException {
    assertThat(
            call(
                "compare",
                SMALL.toString(),
                "--among",
                "bigger_mill",
                "--vary",
                "machines.mill.power=10hp..30hp..10hp",
                "--out",
                dir.resolve("answer").toString()))
        .isEqualTo(2);
    assertThat(err.toString())
        .isEqualTo(
            "small.yaml: \"base\" and \"bigger_mill\" are the same plant at every value, for the"
                + " varied values take the place of what makes them different; expected another"
                + " key, factors such as x0.8, or only one of the two\n");
    assertThat(dir.resolve("answer")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--vary a=1..2..1 --vary a=1..3..1 | hurdline: --vary names \"a\" twice; expected two"
            + " different keys",
        "--vary a=1..2..1 --vary b=1..2..1 --vary c=1..2..1 | hurdline: --vary is given 3 times;"
            + " expected once or twice",
        "--vary a=1..30..1 --vary b=1..30..1 | hurdline: --vary makes a grid of 900 cells; expected"
            + " at most 400, so take longer steps",
        "--vary a=1..2..1 --until money.margin:2% | hurdline: --until and --vary do not go"
            + " together; expected one of them at a time",
        "--vary a=1..2..1 --trace 2027-03-01..2027-03-02 | hurdline: --trace and --vary do not go"
            + " together; expected one of them at a time",
        "--vary crews.stalk_lin.night=1..2..1 | NIGHTS crews.stalk_lin.night: there is no"
            + " \"stalk_lin\" in crews; expected a name or key, perhaps \"stalk_line\"",
        "--vary machines.feeder.pwer=x1..x2..x1 | NIGHTS machines.feeder.pwer: the file does not"
            + " say \"machines.feeder.pwer\", so there is nothing to scale; expected a name or key,"
            + " perhaps \"power\"",
      })
  void aWrongGridIsOneLineAndLeavesNothing(String args, String message) throws IOException {
    List<String> all =
        new ArrayList<>(List.of("run", NIGHTS.toString(), "--out", dir.resolve("a").toString()));
    all.addAll(List.of(args.strip().split(" ")));
    assertThat(call(all.toArray(String[]::new))).isEqualTo(2);
    assertThat(err.toString()).isEqualTo(message.replace("NIGHTS", NIGHTS.toString()) + "\n");
    assertThat(dir.resolve("a")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({"0.2,1 s", "40,40 s", "200,3 min", "9000,2.5 h"})
  void timeIsRoundedAsOneSaysIt(double seconds, String said) {
    assertThat(SimulationTime.inWords(seconds)).isEqualTo(said);
  }
}
