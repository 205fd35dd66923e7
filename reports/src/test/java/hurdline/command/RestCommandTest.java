package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code hurdline run --as-of} on the small plant, five weeks of whose season have been. */
class RestCommandTest {
  private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);

  @TempDir private static Path shared;
  private static Path plant;
  private static Path out;
  private static Said said;

  private record Said(int code, String out, String err) {
    String told() {
      return out.replaceAll("\\s+", " ");
    }
  }

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

  private static Said run(String... more) {
    List<String> args =
        new ArrayList<>(List.of("run", plant.toString(), "--replications", "6", "--quiet"));
    args.addAll(List.of(more));
    return call(args.toArray(String[]::new));
  }

  @BeforeAll
  static void fiveWeeks() throws IOException {
    Path small = Path.of(System.getProperty("hurdline.root"), "line-configs", "small.yaml");
    String text = Files.readString(small);
    plant =
        Files.writeString(
            shared.resolve("plant.yaml"),
            text.replace(
                    "price: 280 USD/ton}",
                    "price: 280 USD/ton, orders: [{mass: 60 t, due: 2027-04-30}]}")
                .replace(
                    "rests: [{at: \"11:00\", lasts: 30 min}]}",
                    "rests: [{at: \"11:00\", lasts: 30 min}]}\n"
                        + "    late: {days: [Mon, Tue, Wed, Thu, Fri], from: \"15:30\", to:"
                        + " \"23:00\"}"));
    Path records = Files.createDirectory(shared.resolve("records"));
    StringBuilder shifts = new StringBuilder("date,shift,from,to,rest from,rest to\n");
    StringBuilder made = new StringBuilder("date,shift,what,count,mass,unit\n");
    for (LocalDate day = FIRST; day.isBefore(LocalDate.of(2027, 4, 3)); day = day.plusDays(1)) {
      if (day.getDayOfWeek().getValue() < 6) {
        shifts.append(day).append(",day,07:00,15:30,11:00,11:30\n");
        made.append(day).append(",day,stalk fed,14,,\n");
        made.append(day).append(",day,hurd,,2000,kg\n");
      }
    }
    Files.writeString(records.resolve("shifts.csv"), shifts);
    Files.writeString(records.resolve("made.csv"), made);
    Files.writeString(records.resolve("yard.csv"), "date,crop,count\n2027-03-01,stalk,1400\n");
    Files.writeString(
        records.resolve("records.yaml"), "records: 1\nfrom: 2027-03-01\nto: 2027-04-04\n");
    out = shared.resolve("out");
    said =
        call(
            "run",
            plant.toString(),
            "--as-of",
            "2027-04-05",
            "--replications",
            "6",
            "--out",
            out.toString());
  }

  /** 25 days of 14 bales are 350; 1,050 are left of 1,400. */
  @Test
  void theTerminalSaysWhatHasBeenAndWhetherAShiftIsNeeded() {
    assertThat(said.code()).as(said.err()).isZero();
    assertThat(said.told())
        .contains(
            "Before 2027-04-05 350 bales of stalk were fed by the records; all else here is of the"
                + " rest of the season.")
        .containsPattern(
            "The stalk line is not done by 2027-05-28 in any of 6 replications: [0-9]{3} bales of"
                + " stalk are left on average")
        .contains("With the shift late the stalk line is ")
        .contains("cover chance only: how well inputs are known is not in them.");
  }

  @Test
  void pageTablesAndRecordAreWrittenAndThePageIsMadeAgain() throws IOException {
    assertThat(Files.readAllLines(out.resolve("finish.csv")))
        .hasSize(3)
        .anyMatch(row -> row.startsWith("stalk_line,stalk,as_planned,,2027-05-28,6,0,0,"))
        .anyMatch(row -> row.startsWith("stalk_line,stalk,with_shift,late,2027-05-28,6,"));
    assertThat(Files.readString(out.resolve("stock_on_hand.csv")))
        .contains("stalk,bales,2027-03-01,1400,0,350,1050");
    assertThat(Files.readString(out.resolve("open_orders.csv")))
        .contains("hurd,2027-04-30,60,50,10");
    assertThat(Files.readString(out.resolve("stop_ages.csv"))).contains("saw,choke,running,");
    assertThat(Files.readString(out.resolve("whole_season.csv"))).contains("fed,stalk,bales,350,");
    String page = Files.readString(out.resolve("report.html"));
    assertThat(page)
        .contains("The rest of the season")
        .contains("when each line is done")
        .contains("--records records --as-of 2027-04-05");
    Path again = shared.resolve("again");
    Said made = call("page", out.resolve("record.json").toString(), "--out", again.toString());
    assertThat(made.code()).as(made.err()).isZero();
    assertThat(Files.readString(again.resolve("report.html"))).isEqualTo(page);
  }

  @Test
  void whatCannotBeEndsWithTwo() {
    assertThat(run("--as-of", "soon").err())
        .contains("--as-of soon is no date; expected one such as 2027-08-01");
    assertThat(run("--records", "records").err())
        .contains("--records is for a season that is under way; expected --as-of with a date too");
    assertThat(run("--as-of", "2027-04-05", "--vary", "machines.mill.power=x1..x2..x1").err())
        .contains("--as-of and --vary do not go together");
    Said late = run("--as-of", "2027-05-01");
    assertThat(late.code()).isEqualTo(2);
    assertThat(late.err())
        .contains(
            "records covers 2027-03-01 to 2027-04-04 and nothing up to 2027-05-01; expected a date"
                + " from 2027-03-01 to 2027-04-05");
  }
}
