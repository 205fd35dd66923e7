package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.plant.Change;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Variants;
import hurdline.plant.yaml.PlantFile;
import hurdline.service.EngineStudies;
import hurdline.unit.FileUnit;
import hurdline.unit.Level;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** A number is written alike in the plant file and in every flag. */
class NumberGrammarTest extends Calls {
  private static final Path SMALL =
      Path.of(System.getProperty("hurdline.root")).resolve("line-configs/small.yaml");
  private static final Variants VARIANTS = PlantFile.read(SMALL).variants();

  /** All of one value, 25. */
  private static final List<String> TWENTY_FIVE =
      List.of("25", "+25", "25.", "25.0", "2.5e1", "2.5E+1", "250e-1", "025", ".25e2");

  private static final List<String> NONE =
      List.of(
          "0x1p3",
          "0x19",
          "25d",
          "25f",
          "2,5",
          "1,000",
          "1_000",
          "NaN",
          "Infinity",
          "-Infinity",
          "2.5.1",
          "2e",
          "e2",
          "2e1e1",
          "1e400",
          "٢٥",
          "twenty",
          "",
          "2 5",
          "2\u00a05",
          "25\u00a0");

  /** Every place that takes a number, as what it reads. */
  private static Map<String, ToDoubleFunction<String>> places() {
    Map<String, ToDoubleFunction<String>> places = new LinkedHashMap<>();
    places.put("a quantity of the file", n -> powerHp(n + " hp"));
    places.put("a bare number of the file", n -> exponent(n));
    places.put("--set with a factor", n -> powerHp("x" + n) / powerHp("1 hp") / 15);
    places.put(
        "--vary with a unit",
        n -> VaryReader.of("k=0hp.. " + n + "hp.. " + n + "hp").values().get(1).number());
    places.put(
        "--vary without a unit",
        n -> VaryReader.of("k=0 .. " + n + " .. " + n).values().get(1).number());
    places.put(
        "--vary with a factor",
        n -> VaryReader.of("k=x0..x" + n + " ..x" + n).values().get(1).number());
    places.put("--tornado with two ends", n -> high("k=0 hp.. " + n + " hp"));
    places.put("--tornado with two factors", n -> high("k=x0..x" + n));
    places.put("--tornado with a share", n -> 100 * (high("k=" + n + "%") - 1));
    places.put("--until with a unit", n -> AimReader.of("mass.stalk.fed:" + n + " t").halfWidth());
    places.put("--until without a unit", n -> AimReader.of("mass.stalk.fed:" + n).halfWidth());
    places.put(
        "--until with a share", n -> 100 * AimReader.of("mass.stalk.fed:" + n + "%").halfWidth());
    places.put(
        "--best",
        n ->
            flags(new AskFlags(), "--best", "money.margin:" + n)
                .ask(List.of(), List.of())
                .best()
                .orElseThrow()
                .width());
    places.put(
        "--within",
        n ->
            flags(new AskFlags(), "--within", n + " yr")
                .ask(List.of(), List.of())
                .withinYr()
                .orElseThrow());
    places.put(
        "--overflow", n -> 100 * flags(new YardFlags(), "--overflow", n + "%").ask().overflow());
    places.put(
        "--acres",
        n -> 100 * flags(new YardFlags(), "--acres", n + " %").ask().acres().orElseThrow());
    return places;
  }

  private static <F> F flags(F flags, String... args) {
    new CommandLine(
            CommandLine.Model.CommandSpec.create()
                .addMixin("flags", CommandLine.Model.CommandSpec.forAnnotatedObject(flags)))
        .parseArgs(args);
    return flags;
  }

  private static double high(String input) {
    return Level.read(SwingReader.of(input).get(0).high()).number().doubleValue();
  }

  private static Machine.HammerMill mill(String path, String value) {
    Plant plant = VARIANTS.with(new Change.Value("machines.mill." + path, value));
    return (Machine.HammerMill)
        plant.machines().stream().filter(m -> m.name().equals("mill")).findFirst().orElseThrow();
  }

  private static double powerHp(String value) {
    return FileUnit.HORSEPOWER.fromSi(mill("power", value).common().powerW());
  }

  private static double exponent(String value) {
    return mill("grinding.exponent", value).grinding().exponent();
  }

  static Stream<Arguments> good() {
    return places().entrySet().stream()
        .flatMap(place -> TWENTY_FIVE.stream().map(number -> Arguments.of(place.getKey(), number)));
  }

  static Stream<Arguments> bad() {
    return places().entrySet().stream()
        .flatMap(place -> NONE.stream().map(number -> Arguments.of(place.getKey(), number)));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("good")
  void everySpellingOfANumberIsReadEverywhere(String place, String number) {
    assertThat(places().get(place).applyAsDouble(number)).isEqualTo(25, within(1e-9));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("bad")
  void whatIsNoNumberIsRefusedEverywhereInWords(String place, String number) {
    assertThatThrownBy(() -> places().get(place).applyAsDouble(number))
        .satisfies(
            thrown ->
                assertThat(said(thrown)).contains("expected").doesNotContain("Invalid value"));
  }

  /** What the user reads of it. */
  private static String said(Throwable thrown) {
    if (thrown instanceof ProblemsException problems) {
      return String.join("\n", problems.lines());
    }
    Throwable own = thrown instanceof CommandLine.ParameterException ? thrown.getCause() : thrown;
    assertThat(own).isInstanceOf(CallException.class);
    return own.getMessage();
  }

  @ParameterizedTest
  @ValueSource(strings = {"--replications", "--seed", "--threads", "--replication"})
  void aCountIsReadInOurOwnWords(String flag) {
    for (String number : List.of("ten", "1,000", "1e3", "0x10", "1.0", "")) {
      err.getBuffer().setLength(0);
      assertThat(call("run", plant.toString(), flag, number)).isEqualTo(2);
      assertThat(err.toString())
          .isEqualTo(
              "hurdline: "
                  + flag
                  + " \""
                  + number
                  + "\" is no whole number; expected digits only, such as 40. See hurdline run --help\n");
    }
    err.getBuffer().setLength(0);
    assertThat(call("run", plant.toString(), flag, "99999999999999999999")).isEqualTo(2);
    assertThat(err.toString()).startsWith("hurdline: " + flag + " \"99999999999999999999\" ");
  }

  @Test
  void aTornadoSaysTheEndsThatItSimulated() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                new EngineStudies(),
                "compare",
                SMALL.toString(),
                "--among=second_spout",
                "--tornado=machines.mill.power=2e1 hp..3e1 hp",
                "--replications=2",
                "--service-lives=2",
                "--out=" + answer))
        .as("%s", err)
        .isZero();
    assertThat(Files.readAllLines(answer.resolve("tornado.csv")).get(1))
        .startsWith("second_spout,machines.mill.power,20,30,hp,");
  }

  @Test
  void anAimInMoneyIsInThePlantsCurrency() throws IOException {
    for (String verb : List.of("run", "compare", "yard", "season")) {
      err.getBuffer().setLength(0);
      String example = verb.equals("season") ? "seasons/one_or_two_shifts.yaml" : "small.yaml";
      assertThat(
              call(
                  new EngineStudies(),
                  verb,
                  SMALL.resolveSibling(example).toString(),
                  "--until=money.margin:500 EUR",
                  "--out=" + dir.resolve(verb)))
          .isEqualTo(2);
      assertThat(err.toString())
          .contains(
              "the aim \"money.margin:500 EUR\" is in EUR, and the plant's money is in USD; expected an amount in USD");
    }
    err.getBuffer().setLength(0);
    assertThat(
            call(
                new EngineStudies(),
                "compare",
                SMALL.toString(),
                "--best=money.margin:500 EUR:least",
                "--out=" + dir.resolve("best")))
        .isEqualTo(2);
    assertThat(err.toString())
        .contains(
            "the band \"money.margin:500 EUR:least\" is in EUR, and the plant's money is in USD");
  }
}
