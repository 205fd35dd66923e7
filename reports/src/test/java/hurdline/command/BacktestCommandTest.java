package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code hurdline backtest} on a few days of the small plant, and what it refuses. */
class BacktestCommandTest {
  @TempDir private static Path shared;
  private static Path plant;
  private static Path records;
  private static Path out;
  private static Said said;

  private record Said(int code, String out, String err) {}

  private static Said call(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Hurdline.call(
            new CommandContext(
                new PrintWriter(out, true), new PrintWriter(err, true), false, new EngineStudies()),
            args);
    return new Said(code, out.toString(), err.toString());
  }

  @BeforeAll
  static void backtest() throws IOException {
    plant = SmallSeason.plant(shared);
    records = SmallSeason.fed(shared.resolve("last-year"));
    out = shared.resolve("out");
    said =
        call(
            "backtest",
            plant.toString(),
            records.toString(),
            "--replications",
            "99",
            "--out",
            out.toString());
  }

  @Test
  void theTerminalSaysWhatIsOffAndByHowMuch() {
    assertThat(said.code()).as(said.err()).isZero();
    String told = said.out().replaceAll("\\s+", " ");
    assertThat(told)
        .containsPattern(
            "Stalk fed: [56][0-9] % less than simulated, and chance explains [0-9.]+ % at most")
        .contains("With --draws the answer says which input would have to move")
        .contains("that it agrees is no test: fit on one season and test on another.");
  }

  @Test
  void pageTablesAndRecordAreWrittenAndThePageIsMadeAgain() throws IOException {
    assertThat(Files.readString(out.resolve("series.csv")))
        .startsWith("kind,of,unit,seen,mean,sd,off,low_95,high_95,tolerance,chance,")
        .contains("fed,stalk,bales,")
        .contains(",misses");
    assertThat(Files.readAllLines(out.resolve("periods.csv"))).hasSize(3);
    String page = Files.readString(out.resolve("report.html"));
    assertThat(page).contains("against a season that has been").contains("Stalk fed");
    Path again = shared.resolve("again");
    Said made = call("page", out.resolve("record.json").toString(), "--out", again.toString());
    assertThat(made.code()).as(made.err()).isZero();
    assertThat(Files.readString(again.resolve("report.html"))).isEqualTo(page);
  }

  @Test
  void whatCannotBeEndsWithTwo() {
    Said few = call("backtest", plant.toString(), records.toString(), "--replications", "20");
    assertThat(few.code()).isEqualTo(2);
    assertThat(few.err())
        .contains("--replications 20 is too few; expected a whole number from 99 on");
    Said none = call("backtest", plant.toString(), shared.resolve("none").toString());
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.err()).contains("none").contains("expected");
  }
}
