package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.CompareAnswer;
import hurdline.plant.Change;
import hurdline.service.EngineStudies;
import hurdline.service.Studies;
import hurdline.study.PlantChanges;
import hurdline.study.replicate.RunSettings;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Options against the plant as it stands, from the call to the files. */
class CompareCommandTest extends Calls {
  @Test
  void aComparisonWritesAllItsFilesAndTellsTheAnswer() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(call("compare", plant.toString(), "--out", answer.toString())).isZero();
    assertThat(namesIn(answer))
        .containsExactly(
            "bottlenecks.csv",
            "break_even.csv",
            "call.txt",
            "cash.csv",
            "charts",
            "differences.csv",
            "gain.csv",
            "measures.csv",
            "months.csv",
            "payback.csv",
            "plant.yaml",
            "record.json",
            "report.html",
            "selection.csv",
            "service_lives.csv",
            "summary.csv",
            "tornado.csv");
    assertThat(namesIn(answer.resolve("charts")))
        .hasSize(12)
        .allMatch(name -> name.endsWith(".svg"));
    assertThat(out.toString().lines())
        .hasSizeBetween(50, 80)
        .first()
        .asString()
        .startsWith("Sweetgum Bend shared gin, the plant as it stands against bigger mill,");
    assertThat(out.toString()).endsWith("Report: " + answer.resolve("report.html") + "\n");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aComparisonAsJsonStandsAlone() throws IOException {
    assertThat(call("compare", plant.toString(), "--json", "--quiet")).isZero();
    assertThat(RecordFile.read("record.json", new StringReader(out.toString())))
        .isInstanceOf(CompareAnswer.class);
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
    List<PlantChanges> bases = new ArrayList<>();
    List<RunSettings> efforts = new ArrayList<>();
    Studies studies =
        new Simulating(
            null,
            (base, effort) -> {
              bases.add(base);
              efforts.add(effort);
            });
    assertThat(
            call(
                studies,
                "compare",
                plant.toString(),
                "--among",
                "a,b, a+b",
                "--set",
                "yard.x=1",
                "--replications",
                "7",
                "--seed",
                "3",
                "--threads",
                "2",
                "--quiet"))
        .isZero();
    assertThat(bases)
        .containsExactly(
            new PlantChanges(
                "base", List.of("yard.x=1"), List.of(new Change.Value("yard.x", "1"))));
    assertThat(efforts)
        .containsExactly(new RunSettings(7, Optional.empty(), 3, 2, Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--among a,,b | hurdline: --among \"a,,b\" has an empty name; expected names of options"
            + " such as bigger_mill,second_bag_hand or bigger_mill+second_bag_hand",
        "--replications 0 | hurdline: --replications 0 is too few; expected a whole number from 1"
            + " on",
        "--threads 0 | hurdline: --threads 0 is too few; expected a whole number from 1 on",
        "--within 5 | hurdline: --within \"5\" has no unit; expected a time such as"
            + " 5yr. See hurdline compare --help",
        "--within 0yr | hurdline: --within \"0yr\" is no time to pay back in;"
            + " expected a time above 0 such as 5yr. See hurdline compare --help",
        "--tornado a | hurdline: --tornado \"a\" is no input; expected KEY=20% or KEY=LOW..HIGH,"
            + " such as products.fiber.price=20% or money.wage=20USD/h..30USD/h",
        "--tornado a=1..2USD | hurdline: --tornado \"a=1..2USD\" has no two ends in one unit;"
            + " expected KEY=20% or KEY=LOW..HIGH, such as products.fiber.price=20% or"
            + " money.wage=20USD/h..30USD/h",
        "--tornado a=1,000USD..2,000USD | hurdline: --tornado \"a=1,000USD..2,000USD\" has a comma"
            + " that no further KEY= follows, and numbers have none; expected KEY=20% or"
            + " KEY=LOW..HIGH, such as products.fiber.price=20% or money.wage=20USD/h..30USD/h",
        "--tornado a=0x10hp..30hp | hurdline: --tornado \"a=0x10hp..30hp\": \"0x10hp\" does not"
            + " begin with a plain number; expected KEY=20% or KEY=LOW..HIGH, such as"
            + " products.fiber.price=20% or money.wage=20USD/h..30USD/h",
        "--tornado a=120% | hurdline: --tornado \"a=120%\" has no share between 0 and 100 %;"
            + " expected KEY=20% or KEY=LOW..HIGH, such as products.fiber.price=20% or"
            + " money.wage=20USD/h..30USD/h",
        "--best money.margin:2% | hurdline: --best \"money.margin:2%\" has a share for its band;"
            + " expected an amount, settled before anything is known",
        "--best money.mragin:2 | hurdline: --best \"money.mragin:2\" names no measure; expected a"
            + " measure, perhaps \"money.margin\"",
        "--amomg=a | hurdline: Unknown option: '--amomg=a'. Perhaps --among? See hurdline compare"
            + " --help",
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
                new EngineStudies(),
                "compare",
                example.toString(),
                "--replications",
                "12",
                "--service-lives",
                "3",
                "--out",
                answer.toString()))
        .isZero();
    assertThat(Files.readString(answer.resolve("payback.csv")).lines()).hasSize(1 + 2 * 8);
    assertThat(Files.readString(answer.resolve("record.json"))).contains("\"verb\": \"compare\"");
    assertThat(Files.readString(answer.resolve("report.html"))).contains("Does it pay");
  }
}
