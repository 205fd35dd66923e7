package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code backtest} and {@code run --as-of} of a plant whose crop comes in bales and in modules. */
class FormsCommandTest {
  private static final Path EGRET =
      Path.of(System.getProperty("hurdline.root"), "line-configs", "egret-fork.yaml");

  @TempDir private Path dir;
  private Path records;

  @BeforeEach
  void twoWeeks() throws IOException {
    records = Files.createDirectory(dir.resolve("records"));
    StringBuilder shifts = new StringBuilder("date,shift,from,to,rest from,rest to\n");
    StringBuilder made = new StringBuilder("date,shift,what,count\n");
    for (int day = 23; day < 28; day++) {
      shifts.append("2027-08-").append(day).append(",day,06:00,15:30,11:00,11:30\n");
      made.append("2027-08-").append(day).append(",day,stalk fed,48\n");
      made.append("2027-08-").append(day).append(",day,stalk_modules fed,2\n");
    }
    Files.writeString(records.resolve("shifts.csv"), shifts);
    Files.writeString(records.resolve("made.csv"), made);
    Files.writeString(
        records.resolve("yard.csv"),
        "date,place,crop,count\n2027-08-23,,stalk,400\n2027-08-23,row,,12\n");
  }

  private CommandCall call(String... args) {
    CommandCall call = CommandCall.of(args);
    assertThat(call.code()).as(call.err()).isZero();
    return call;
  }

  /** 400 − 5 · 48 and 12 − 5 · 2. */
  @Test
  void aSeasonGoesOnFromTheStockOfEachForm() throws IOException {
    Path out = dir.resolve("rest");
    call(
        "run",
        EGRET.toString(),
        "--as-of",
        LocalDate.of(2027, 8, 28).toString(),
        "--records",
        records.toString(),
        "--replications",
        "2",
        "--out",
        out.toString());
    assertThat(Files.readAllLines(out.resolve("stock_on_hand.csv")))
        .contains(
            "stalk,bales,2027-08-23,400,0,240,160", "stalk_modules,modules,2027-08-23,12,0,10,2");
    assertThat(Files.readString(out.resolve("report.html")))
        .contains("The hurd bin begins empty: no record says what was in it.");
  }

  @Test
  void aBacktestHasARowForEachForm() {
    CommandCall call =
        call(
            "backtest",
            EGRET.toString(),
            records.toString(),
            "--replications",
            "99",
            "--out",
            dir.resolve("backtest").toString());
    assertThat(call.out()).contains("Stalk fed").contains("Stalk in modules fed");
  }
}
