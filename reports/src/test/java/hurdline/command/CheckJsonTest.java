package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import hurdline.answer.CheckAnswer;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code check --json} prints for a program that reads it. */
class CheckJsonTest {
  private static final Path SMALL = Path.of("../line-configs/small.yaml");
  private static final List<String> FIELDS =
      List.of(
          "severity", "file", "line", "column", "path", "found", "expected", "nearest", "change");

  @TempDir Path dir;

  private static JsonObject json(CommandCall call) {
    return JsonParser.parseString(call.out()).getAsJsonObject();
  }

  private CommandCall checked(String file, String text, String... flags) throws IOException {
    Path path = Files.writeString(dir.resolve(file), text);
    List<String> args = new ArrayList<>(List.of("check", path.toString(), "--json"));
    args.addAll(List.of(flags));
    return CommandCall.of(args.toArray(String[]::new));
  }

  private static String lineOf(String text, String key) {
    return Long.toString(text.substring(0, text.indexOf(key)).lines().count());
  }

  @Test
  void aSoundPlantHasNoProblemsAndItsCapacities() throws IOException {
    CommandCall call = CommandCall.of("check", SMALL.toString(), "--json");
    assertThat(call.code()).as(call.err()).isZero();
    JsonObject json = json(call);
    assertThat(json.keySet()).containsExactly("record", "verb", "problems", "answer");
    assertThat(json.get("verb").getAsString()).isEqualTo("check");
    assertThat(json.getAsJsonArray("problems")).isEmpty();
    JsonObject answer = json.getAsJsonObject("answer");
    assertThat(answer.getAsJsonArray("warnings")).isEmpty();
    JsonObject line =
        answer.getAsJsonObject("capacity").getAsJsonArray("lines").get(0).getAsJsonObject();
    JsonObject limits = line.getAsJsonObject("limits");
    assertThat(limits.getAsJsonObject("rated").get("fed_t_per_h").getAsDouble())
        .isGreaterThan(limits.getAsJsonObject("expected").get("fed_t_per_h").getAsDouble());
    assertThat(RecordFile.read("check.json", new StringReader(call.out())))
        .isInstanceOf(CheckAnswer.class);
  }

  @Test
  void everyProblemOfAWrongPlantIsAnEntryWithItsPlace() throws IOException {
    String wrong =
        Files.readString(SMALL)
            .replace("    power: 15 hp", "    powr: 15 hp")
            .replace("count: 1}", "count: one}");
    CommandCall call = checked("wrong.yaml", wrong);
    assertThat(call.code()).isEqualTo(2);
    JsonObject json = json(call);
    assertThat(json.keySet()).containsExactly("record", "verb", "problems");
    JsonArray problems = json.getAsJsonArray("problems");
    assertThat(problems).hasSizeGreaterThan(1);
    assertThat(call.err().lines()).as("the same in words").hasSameSizeAs(problems);
    for (int at = 0; at < problems.size(); at++) {
      JsonObject problem = problems.get(at).getAsJsonObject();
      assertThat(problem.keySet()).containsExactlyElementsOf(FIELDS);
      assertThat(problem.get("severity").getAsString()).isEqualTo("problem");
      assertThat(call.err().lines().skip(at).findFirst().orElseThrow())
          .isEqualTo(
              problem.get("file").getAsString()
                  + ":"
                  + problem.get("line")
                  + ":"
                  + problem.get("column")
                  + " "
                  + problem.get("path").getAsString()
                  + ": "
                  + problem.get("found").getAsString()
                  + "; expected "
                  + problem.get("expected").getAsString());
    }
    JsonObject misspelt =
        problems.asList().stream()
            .map(problem -> problem.getAsJsonObject())
            .filter(problem -> problem.get("path").getAsString().endsWith(".powr"))
            .findFirst()
            .orElseThrow();
    assertThat(misspelt.get("nearest").getAsString()).isEqualTo("power");
    assertThat(misspelt.get("line").toString()).isEqualTo(lineOf(wrong, "powr: 15 hp"));
    assertThat(misspelt.get("column").getAsInt()).isEqualTo(5);
  }

  @Test
  void warningsStandInTheAnswerAndNameNoFolder() throws IOException {
    String weekend =
        Files.readString(SMALL)
            .replace("from: 2027-03-01, to: 2027-05-28", "from: 2027-03-06, to: 2027-03-07");
    CommandCall call = checked("weekend.yaml", weekend);
    assertThat(call.code()).as(call.err()).isZero();
    JsonArray warnings = json(call).getAsJsonObject("answer").getAsJsonArray("warnings");
    assertThat(warnings).isNotEmpty();
    JsonObject warning = warnings.get(0).getAsJsonObject();
    assertThat(warning.keySet()).containsExactlyElementsOf(FIELDS);
    assertThat(warning.get("severity").getAsString()).isEqualTo("warning");
    assertThat(warning.get("file").getAsString()).isEqualTo("weekend.yaml");
    assertThat(warning.get("path").getAsString()).isEqualTo("season.0");
    assertThat(warning.get("line").toString()).isEqualTo(lineOf(weekend, "from: 2027-03-06"));
  }

  @Test
  void aChangeThatMakesTheProblemIsNamed() throws IOException {
    CommandCall call =
        CommandCall.of("check", SMALL.toString(), "--json", "--set", "machines.mill.power=0 hp");
    assertThat(call.code()).isEqualTo(2);
    JsonObject problem = json(call).getAsJsonArray("problems").get(0).getAsJsonObject();
    assertThat(problem.get("change").getAsString()).isEqualTo("machines.mill.power=0 hp");
    assertThat(problem.get("line").getAsInt()).as("no line of the file holds it").isZero();
    assertThat(problem.get("path").getAsString()).isEqualTo("machines.mill.power");
  }

  @Test
  void aFileThatIsNotThereIsAProblemToo() {
    CommandCall call = CommandCall.of("check", dir.resolve("nothing.yaml").toString(), "--json");
    assertThat(call.code()).isEqualTo(2);
    assertThat(json(call).getAsJsonArray("problems")).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"run", "compare", "season", "yard"})
  void otherVerbsSayProblemsInTheSameWay(String verb) {
    CommandCall call =
        CommandCall.of(verb, SMALL.toString(), "--json", "--set", "machines.mill.power=0 hp");
    assertThat(call.code()).isEqualTo(2);
    assertThat(json(call).get("verb").getAsString()).isEqualTo(verb);
    assertThat(json(call).getAsJsonArray("problems")).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"fit", "backtest", "choose"})
  void verbsThatReadMoreThanAPlantDoSoToo(String verb) {
    List<String> args =
        new ArrayList<>(List.of(verb, dir.resolve("nothing.yaml").toString(), "--json"));
    if (verb.equals("choose")) {
      args.addAll(List.of("--best", "money.margin:5000"));
    }
    CommandCall call = CommandCall.of(args.toArray(String[]::new));
    assertThat(call.code()).isEqualTo(2);
    assertThat(json(call).get("verb").getAsString()).isEqualTo(verb);
    assertThat(json(call).getAsJsonArray("problems")).hasSize(1);
  }
}
