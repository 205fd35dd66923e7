package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The size of a yard, from the call to the files. */
class YardCommandTest extends Calls {
  @Test
  void aYardWritesAllItsFilesAndTellsTheAnswer() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(call("yard", plant.toString(), "--out", answer.toString())).isZero();
    assertThat(namesIn(answer))
        .containsExactly(
            "acres.csv",
            "call.txt",
            "charts",
            "cheapest.csv",
            "gain.csv",
            "loads.csv",
            "measures.csv",
            "peaks.csv",
            "plant.yaml",
            "record.json",
            "report.html",
            "summary.csv",
            "yard_levels.csv",
            "yard_sizes.csv");
    assertThat(namesIn(answer.resolve("charts")))
        .hasSize(10)
        .allMatch(name -> name.endsWith(".svg"));
    assertThat(out.toString())
        .startsWith(
            "Sweetgum Bend shared gin, the plant as it stands, yard of stalk with the open\n")
        .endsWith("Report: " + answer.resolve("report.html") + "\n");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aStoppedYardIsKeptAndSaysSo() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                "yard",
                plant.toString(),
                "--crop",
                "stopped",
                "--overflow",
                "12.5%",
                "--acres",
                "90%",
                "--gain",
                "--out",
                answer.toString()))
        .isEqualTo(130);
    assertThat(err.toString())
        .isEqualTo("Stopped: 7 of 40 replications are done; they are saved in " + answer + ".\n");
    assertThat(namesIn(answer)).contains("record.json");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--overflow 5 | hurdline: --overflow \"5\" has no unit; expected a share above 0 % and"
            + " below 100 %, such as 5%",
        "--overflow 0% | hurdline: --overflow \"0%\" is no such share; expected a share above 0 %"
            + " and below 100 %, such as 5%",
        "--overflow NaN% | hurdline: --overflow \"NaN%\" is not a number and a unit; expected a"
            + " share above 0 % and below 100 %, such as 5%",
        "--overflow x% | hurdline: --overflow \"x%\" is not a number and a unit; expected a share"
            + " above 0 % and below 100 %, such as 5%",
        "--acres 100% | hurdline: --acres \"100%\" is no such share; expected a share above 0 % and"
            + " below 100 %, such as 5%",
        "--carry-over 5 | hurdline: --carry-over belongs to --acres; expected both, such as --acres"
            + " 90%",
        "--acres 90% --carry-over -5 | hurdline: --carry-over is -5; expected 0 or more bales",
        "--until yard.stalk.peak:0% | hurdline: --until \"yard.stalk.peak:0%\" can never be"
            + " reached; expected a half-width above 0. See hurdline yard --help",
        "--until yard.stalk.peak:2% --vary calendar.to=2027-06-01..2027-06-29..7d | hurdline:"
            + " --until and --vary do not go together; expected one of them at a time",
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
                new EngineStudies(),
                "yard",
                example.toString(),
                "--replications",
                "4",
                "--out",
                answer.toString()))
        .isZero();
    assertThat(Files.readString(answer.resolve("record.json"))).contains("\"verb\": \"yard\"");
    assertThat(Files.readString(answer.resolve("report.html"))).contains("If it had no limit");
  }
}
