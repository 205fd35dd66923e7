package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import hurdline.service.PreparedChoice;
import hurdline.service.Studies;
import java.io.IOException;
import java.io.PrintWriter;
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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Choices among plans from the plant file to the page, stopped and taken up again. */
class ChooseCommandTest {
  private static final Path SHIPPED = Path.of(System.getProperty("hurdline.root"), "line-configs");

  @TempDir Path dir;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path plant;

  @BeforeEach
  void write() throws IOException {
    plant = dir.resolve("small.yaml");
    String text = Files.readString(SHIPPED.resolve("small.yaml"));
    Files.writeString(
        plant,
        text.replace("2027-05-28", "2027-03-02")
            + """

            choices:
              mill: {title: Mill motor, key: machines.mill.power, values: [15 hp, 40 hp], cost: [0 USD, 45000 USD]}
              rest: {key: calendar.shifts.day.rests.0.lasts, values: [30 min, 20 h]}
              rate: {key: lines.stalk_line.steps.feeder.rate, values: [0.9 t/h, 2.2 t/h]}
              never: [{mill: 15 hp, rate: 0.9 t/h}]
            """);
  }

  private int call(Studies studies, String... args) {
    return Hurdline.call(
        new CommandContext(new PrintWriter(out, true), new PrintWriter(err, true), false, studies),
        args);
  }

  private int choose(Studies studies, String out, String... more) {
    List<String> args =
        new ArrayList<>(List.of("choose", plant.toString(), "--out", dir.resolve(out).toString()));
    args.addAll(List.of("--replications", "4"));
    args.addAll(List.of(more));
    return call(studies, args.toArray(String[]::new));
  }

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

  /** The engine, which is asked to stop once so many years are done. */
  private static Studies stoppingAfter(int years) {
    EngineStudies engine = new EngineStudies();
    return (Studies)
        Proxy.newProxyInstance(
            Studies.class.getClassLoader(),
            new Class<?>[] {Studies.class},
            (proxy, method, args) -> {
              PreparedChoice made = (PreparedChoice) method.invoke(engine, args);
              AtomicInteger asked = new AtomicInteger();
              return new PreparedChoice(
                  made.choose(),
                  (store, progress, stop, timeUp) ->
                      made.simulate(
                          store, progress, () -> asked.incrementAndGet() > years, timeUp));
            });
  }

  @Test
  void theAnswerHasItsTablesChartsAndSentences() throws IOException {
    assertThat(
            choose(
                new EngineStudies(), "a", "--best", "money.margin:300 USD", "--budget", "0,50000"))
        .as(err.toString())
        .isZero();
    Map<String, String> files = filesIn(dir.resolve("a"));
    assertThat(files.keySet())
        .containsExactly(
            "call.txt",
            "charts/effects.svg",
            "charts/frontier.svg",
            "choice.csv",
            "effects.csv",
            "frontier.csv",
            "plant.yaml",
            "record.json",
            "report.html",
            "rounds.csv",
            "screened_out.csv");
    assertThat(said())
        .contains(
            "Of 8 plans this one is named: mill motor 40 hp, rest 30 min, rate 2.2 t/h, which costs"
                + " 45,000 USD. It earns ")
        .contains(
            "If the plant and the years are as the file says: among these 3 plans none earns on"
                + " average over many years more than ")
        .contains(
            "; that is 95 % sure, for all budgets together, the 5 % being the luck of the simulated"
                + " years.")
        .contains("With at most 0 USD: mill motor 15 hp, rest 30 min, rate 2.2 t/h, the only plan");
    assertThat(err.toString())
        .contains(
            "8 plans, 2 of them left out by the file: 120 simulated years until the first round is"
                + " judged")
        .contains("Choosing years: 3 plans left, 30 years simulated.")
        .containsPattern("Round 1 of 6: \\d plans? left, 60 years simulated");
    assertThat(files.get("screened_out.csv").lines())
        .hasSize(9)
        .anyMatch(line -> line.startsWith("2,never,15 hp,20 h,0.9 t/h"))
        .anyMatch(line -> line.startsWith("3,problem,15 hp,20 h,2.2 t/h") && line.contains("rests"))
        .anyMatch(line -> line.startsWith("5,named,40 hp,30 min,2.2 t/h,45000"));
    assertThat(files.get("report.html")).contains("How it was found", "What each budget buys");
    assertThat(
            call(
                new EngineStudies(),
                "page",
                dir.resolve("a/record.json").toString(),
                "--out",
                dir.resolve("again").toString()))
        .isZero();
    assertThat(Files.readString(dir.resolve("again/report.html")))
        .isEqualTo(files.get("report.html"));
  }

  @Test
  void aChoiceTakenUpAgainIsTheSameToTheByteAsOneThatWasNot() throws IOException {
    String[] best = {"--best", "money.margin:100 USD", "--worth", "--quiet"};
    assertThat(choose(new EngineStudies(), "whole", with(best, "--threads", "1"))).isZero();
    assertThat(choose(stoppingAfter(50), "parts", with(best, "--threads", "2"))).isEqualTo(130);
    assertThat(err.toString())
        .containsPattern(
            "(1 block of years is|blocks of years are) done and kept; the same call with --out");
    Map<String, String> kept = filesIn(dir.resolve("parts"));
    assertThat(kept).containsKey("blocks/settings.txt").containsKey("blocks/stage-1-block-1.json");
    assertThat(choose(new EngineStudies(), "parts", with(best, "--seed", "2"))).isEqualTo(2);
    assertThat(err.toString())
        .contains("holds a choice that was begun otherwise (there seed: 1; here seed: 2)");
    assertThat(filesIn(dir.resolve("parts"))).isEqualTo(kept);
    Files.writeString(dir.resolve("parts/blocks/stage-1-block-1.json"), "{\"stage\": 0");
    assertThat(choose(new EngineStudies(), "parts", with(best, "--threads", "3"))).isZero();
    assertThat(filesIn(dir.resolve("parts"))).isEqualTo(filesIn(dir.resolve("whole")));
  }

  private static String[] with(String[] args, String... more) {
    return Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void inTwoStagesTheBandIsStatedAndTheFolderGoesOnToo() throws IOException {
    String[] stages = {"--best", "money.margin:400 USD", "--procedure", "independent"};
    assertThat(choose(stoppingAfter(50), "stages", with(stages, "--threads", "2"))).isEqualTo(130);
    assertThat(choose(new EngineStudies(), "stages", stages)).as(err.toString()).isZero();
    assertThat(choose(new EngineStudies(), "again", stages)).isZero();
    assertThat(filesIn(dir.resolve("stages"))).isEqualTo(filesIn(dir.resolve("again")));
    assertThat(err.toString())
        .contains("simulated years in the first stage, then as many of each plan");
    assertThat(said())
        .contains("among these 3 plans none earns on average over many years more than 400 USD")
        .contains("That is the band that was asked for, after two stages and ");
    assertThat(filesIn(dir.resolve("again")).get("report.html"))
        .contains("Each plan was simulated on draws of its own, 20 years first");
    assertThat(Files.readString(dir.resolve("again/rounds.csv")).lines()).hasSize(1);
  }

  @Test
  void whenTheTimeIsUpBeforeARoundNothingIsStated() throws IOException {
    assertThat(
            choose(new EngineStudies(), "late", "--best", "money.margin:100", "--most", "1e-6 s"))
        .isEqualTo(130);
    assertThat(err.toString()).contains("Stopped before the first block of years was done");
    assertThat(dir.resolve("late")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--best money.margin:2% | has a share for its band; expected an amount",
        "--best money.margin:100 --choice mill | --choice \"mill\" is no choice; expected"
            + " KEY=A|B|C",
        "--best money.margin:100 --choice mill=45hp | --choice \"45hp\" is no value of choice"
            + " \"mill\"",
        "--best money.margin:100 --budget 5t | --budget \"5t\" is no amount of money",
        "--best money.margin:100 --at-most yard.stalk.peak:400bales:900% | has no share of years",
        "--best money.margin:100 --each-gap --budget 0 | --each-gap and --budget do not go"
            + " together",
        "--best money.margin:100 --procedure all | --procedure \"all\" is no procedure; expected"
            + " rounds or independent",
        "--best money.margin:100 --procedure independent --budget 0 | --procedure independent and"
            + " --budget do not go together",
        "--best money.margin:100 --years 5 | --years 5 ends before the first round is judged",
        "--best money.margin:100 --most soon | --most:",
        "--best mass.stalk.fed:1t --worth | which is no money",
        "--best mass.stalks.fed:1t | the plant has no measure \"mass.stalks.fed\"; expected a"
            + " measure, perhaps",
        "--worth | --best",
      })
  void aWrongCallIsToldInOneLine(String flags, String said) {
    assertThat(choose(new EngineStudies(), "none", flags.split(" "))).isEqualTo(2);
    assertThat(err.toString()).contains(said.strip());
    assertThat(dir.resolve("none")).doesNotExist();
  }
}
