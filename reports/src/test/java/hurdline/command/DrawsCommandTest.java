package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code --draws} and {@code doubt} as a user meets them. */
class DrawsCommandTest {
  private static final Path SMALL =
      Path.of(System.getProperty("hurdline.root"), "line-configs", "small.yaml");
  private static final String[] SHORT = {
    "--set", "calendar.to=2027-03-12", "--set", "season.0.to=2027-03-12", "--replications", "24"
  };

  @TempDir private Path folder;

  private record Said(int code, String out, String err) {}

  private Said run(String... more) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] args = new String[2 + SHORT.length + more.length];
    args[0] = "run";
    args[1] = SMALL.toString();
    System.arraycopy(SHORT, 0, args, 2, SHORT.length);
    System.arraycopy(more, 0, args, 2 + SHORT.length, more.length);
    int code =
        Hurdline.call(
            new CommandContext(
                new PrintWriter(out, true), new PrintWriter(err, true), false, new EngineStudies()),
            args);
    return new Said(code, out.toString().replaceAll("\\s+", " "), err.toString());
  }

  private Path draws(String... rows) throws IOException {
    return Files.writeString(folder.resolve("draws.csv"), String.join("\n", rows) + "\n");
  }

  @Test
  void withoutDrawsTerminalAndPageSayThatIntervalsAreOfTheSimulationAlone() throws IOException {
    Path out = folder.resolve("out");
    Said said = run("--out", out.toString());
    String sentence =
        "Intervals cover the simulation alone, not how well the figures of the plant file are known;";
    assertThat(said.out()).contains(sentence);
    assertThat(Files.readString(out.resolve("report.html"))).contains(sentence);
    assertThat(out.resolve("input_uncertainty.csv")).doesNotExist();
  }

  @Test
  void withDrawsTheIntervalIsSplitAndTheLargestInputNamed() throws IOException {
    String[] rows = new String[13];
    rows[0] = "machines.mill.grinding.energy";
    for (int row = 1; row < rows.length; row++) {
      rows[row] = 9 + row * 0.3 + " kWh/t";
    }
    Path out = folder.resolve("out");
    Said said = run("--draws", draws(rows).toString(), "--out", out.toString());
    assertThat(said.code()).as(said.err()).isZero();
    assertThat(said.out())
        .containsPattern("Stalk fed .*: give or take .* ton by chance and .* ton by the inputs")
        .contains("most by grinding energy of the hammer mill")
        .doesNotContain("simulation alone");
    assertThat(Files.readString(out.resolve("report.html")))
        .contains("To be surer, measure first: grinding energy of the hammer mill.")
        .contains("--draws draws.csv");
    assertThat(Files.readString(out.resolve("input_uncertainty.csv")))
        .startsWith("alternative,against,measure,unit,mean,chance,inputs,low_95,high_95,bound,");
    assertThat(Files.readString(out.resolve("input_shares.csv")))
        .contains("base,,mass.stalk.fed,machines.mill.grinding.energy,");
  }

  @Test
  void whatIsNoFileOfDrawsEndsWithTwo() throws IOException {
    Said none = run("--draws", folder.resolve("none.csv").toString());
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.err()).contains("none.csv: there is no such file; expected");
    Said astray = run("--draws", draws("machines.mil.power", "20 hp", "21 hp").toString());
    assertThat(astray.code()).isEqualTo(2);
    assertThat(astray.err()).contains("machines.mil.power is not in the plant");
    Said grid =
        run(
            "--draws",
            draws("machines.mill.power", "15 hp").toString(),
            "--vary",
            "machines.mill.power=15hp..20hp..5hp");
    assertThat(grid.code()).isEqualTo(2);
    assertThat(grid.err()).contains("--draws and --vary do not go together");
  }
}
