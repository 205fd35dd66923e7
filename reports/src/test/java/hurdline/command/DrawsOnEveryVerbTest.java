package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code --draws} under every command that simulates; a grid refuses it in words. */
class DrawsOnEveryVerbTest {
  private static final Path SMALL =
      Path.of(System.getProperty("hurdline.root"), "line-configs", "small.yaml");

  @TempDir private Path dir;
  private Path plant;
  private Path draws;

  private record Said(int code, String out, String err) {}

  private static Said call(List<String> args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Hurdline.call(
            new CommandContext(
                new PrintWriter(out, true), new PrintWriter(err, true), false, new EngineStudies()),
            args.toArray(String[]::new));
    return new Said(code, out.toString().replaceAll("\\s+", " "), err.toString());
  }

  @BeforeEach
  void write() throws IOException {
    plant =
        Files.writeString(
            dir.resolve("plant.yaml"),
            Files.readString(SMALL).replace("2027-05-28", "2027-03-12")
                + """

                plans:
                  dear_wage: {with: {money: {wage: 99 USD/h}}}
                choices:
                  mill: {title: Mill motor, key: machines.mill.power, values: [15 hp, 40 hp], cost: [0 USD, 45000 USD]}
                """);
    StringBuilder rows = new StringBuilder("machines.mill.grinding.energy\n");
    for (int row = 0; row < 100; row++) {
      rows.append(String.format(Locale.ROOT, "%.2f kWh/t%n", 9 + 0.04 * row));
    }
    draws = Files.writeString(dir.resolve("draws.csv"), rows);
    Path records = Files.createDirectory(dir.resolve("records"));
    StringBuilder shifts = new StringBuilder("date,shift,from,to,rest from,rest to\n");
    StringBuilder made = new StringBuilder("date,shift,what,count\n");
    LocalDate first = LocalDate.of(2027, 3, 1);
    for (int day = 0; day < 5; day++) {
      shifts.append(first.plusDays(day)).append(",day,07:00,15:30,11:00,11:30\n");
      made.append(first.plusDays(day)).append(",day,stalk fed,14\n");
    }
    Files.writeString(records.resolve("shifts.csv"), shifts);
    Files.writeString(records.resolve("made.csv"), made);
    Files.writeString(records.resolve("yard.csv"), "date,crop,count\n2027-03-01,stalk,1400\n");
  }

  /** Every answer says what inputs make, and none that intervals are of the simulation alone. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "run        | --replications 24                       | by the inputs",
        "run        | --replications 8 --as-of 2027-03-06     | cover chance and the drawn inputs",
        "compare    | --replications 24 --service-lives 2     | plants that your records allow",
        "season     | --replications 24 --plans dear_wage     | by the inputs",
        "yard       | --replications 24                       | by the inputs",
        "choose     | --replications 4 --best money.margin:300 | over what is not known of them",
        "backtest   | --replications 99                       | "
      })
  void theAnswerCoversTheInputs(String verb, String flags, String said) throws IOException {
    Said answer =
        call(
            java.util.stream.Stream.of(
                    verb
                        + " "
                        + plant
                        + " "
                        + flags
                        + " --draws "
                        + draws
                        + " --out "
                        + dir.resolve("out"))
                .flatMap(all -> java.util.stream.Stream.of(all.split(" +")))
                .toList());
    assertThat(answer.code()).as(answer.err()).isZero();
    assertThat(answer.out()).contains(said == null ? "" : said);
    assertThat(answer.out()).doesNotContain("Intervals cover the simulation alone");
    assertThat(Files.readString(dir.resolve("out").resolve("report.html")))
        .doesNotContain("at the figures of the file");
  }

  /** Each verb refuses the same wrong file in the same words, before anything is simulated. */
  @ParameterizedTest
  @CsvSource({
    "run",
    "compare",
    "season",
    "yard",
    "choose --best money.margin:300",
    "backtest --replications 99"
  })
  void aWrongFileIsRefusedByEach(String verb) throws IOException {
    Files.writeString(draws, "machines.mil.power\n" + "20 hp\n21 hp\n".repeat(40));
    List<String> words = new java.util.ArrayList<>(List.of(verb.split(" ")));
    words.addAll(1, List.of(plant.toString(), "--draws", draws.toString()));
    Said answer = call(words);
    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).contains("machines.mil.power is not in the plant");
  }

  @Test
  void aGridRefusesThem() {
    Said answer =
        call(
            List.of(
                "run",
                plant.toString(),
                "--draws",
                draws.toString(),
                "--vary",
                "machines.mill.power=15hp..20hp..5hp"));
    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).contains("--draws and --vary do not go together");
  }
}
