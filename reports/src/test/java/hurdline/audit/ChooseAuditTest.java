package hurdline.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.command.CommandCall;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A plan that went out, by runs of its own: its mean, its difference and the limit, from the years
 * that {@code run} gives of it and of the leader.
 */
class ChooseAuditTest {
  private static final String OPEN =
      """

      choices:
        mill: {key: machines.mill.power, values: [15 hp, 25 hp, 40 hp]}
        loader: {key: resources.loader.count, values: [1, 2], cost: [0 USD, 9000 USD]}
      """;
  private static final int CHOOSING = 10;
  private static final int ROUND = 10;
  private static final double ALPHA = 0.05 / 6;

  @TempDir Path dir;

  private double[] years(Path plant, String mill, String loader) throws IOException {
    Path out = dir.resolve(mill.replace(" ", "") + loader);
    CommandCall call =
        CommandCall.of(
            "run",
            plant.toString(),
            "--set",
            "machines.mill.power=" + mill,
            "--set",
            "resources.loader.count=" + loader,
            "--replications",
            "" + (CHOOSING + ROUND),
            "--quiet",
            "--out",
            out.toString());
    assertThat(call.code()).as(call.err()).isZero();
    Table measures = Table.read(out.resolve("measures.csv"));
    int measure = measures.columns().indexOf("measure");
    int value = measures.columns().indexOf("value");
    return measures.cells().stream()
        .filter(row -> row.get(measure).equals("money.margin"))
        .mapToDouble(row -> Double.parseDouble(row.get(value)))
        .toArray();
  }

  /** The greater of Student's limit and Hall's, written down once more. */
  private static double limit(double[] d) {
    double n = d.length;
    double mean = Arrays.stream(d).sum() / n;
    double s2 = Arrays.stream(d).map(x -> (x - mean) * (x - mean)).sum() / (n - 1);
    double s = Math.sqrt(s2);
    double g =
        n / ((n - 1) * (n - 2)) * Arrays.stream(d).map(x -> Math.pow((x - mean) / s, 3)).sum();
    double q = TDistribution.of(n - 1).inverseSurvivalProbability(ALPHA) / Math.sqrt(n);
    double hall = -s * 3 / g * (Math.cbrt(1 + g * (-q - g / (6 * n))) - 1);
    return mean + Math.max(q * s, hall);
  }

  private Path twoDays() throws IOException {
    Path plant = dir.resolve("small.yaml");
    String small = Files.readString(Plants.shipped("small.yaml"));
    return Files.writeString(plant, small.replace("2027-05-28", "2027-03-02") + OPEN);
  }

  @Test
  void everyTableIsThatOfTheLastYearsAndOfTheOthers() throws IOException {
    Path plant = twoDays();
    WrittenAnswer answer =
        WrittenAnswer.of(
            "choose",
            plant,
            dir.resolve("all"),
            "--best",
            "money.margin:300 USD",
            "--worth",
            "--budget",
            "0",
            "--replications",
            "6");
    Audit audit = Audit.ofChoice(plant);
    audit.closes(answer, Audit.kindsOfChoice(), 50);
    audit.notices(ChoiceCheck.CHOSEN, answer, of -> changed(of, Tables.CHOICE, Columns.P05));
    audit.notices(ChoiceCheck.EFFECTS, answer, of -> changed(of, Tables.EFFECTS, "low_95"));
    audit.notices(ChoiceCheck.ROUNDS, answer, of -> changed(of, Tables.ROUNDS, "left"));
    audit.notices(ChoiceCheck.FRONTIER, answer, of -> changed(of, Tables.FRONTIER, "mean"));
    audit.notices(TerminalCheck.TERMINAL, answer, of -> changed(of, Tables.CHOICE, "high_95"));
    audit.notices(PageBook.PAGE, answer, of -> changed(of, Tables.ROUNDS, "years"));
  }

  private static WrittenAnswer changed(WrittenAnswer of, String table, String column) {
    Table.Row first = of.table(table).rows().findFirst().orElseThrow();
    for (Table.Row row : of.table(table).rows().toList()) {
      first = row.has(Columns.STATUS) && row.is(Columns.STATUS, "named") ? row : first;
    }
    return of.with(of.table(table).with(first, column, "" + (3 + 2 * first.number(column))));
  }

  @Test
  void aPlanThatWentOutIsBelowTheLeaderByItsOwnYears() throws IOException {
    Path plant = twoDays();
    Path out = dir.resolve("chosen");
    CommandCall call =
        CommandCall.of(
            "choose",
            plant.toString(),
            "--best",
            "money.margin:300 USD",
            "--replications",
            "2",
            "--quiet",
            "--out",
            out.toString());
    assertThat(call.code()).as(call.err()).isZero();
    Table all = Table.read(out.resolve("screened_out.csv"));
    Table.Row gone =
        all.rows()
            .filter(row -> row.text("status").equals("out") && row.number("round") == 1)
            .findFirst()
            .orElseThrow();
    Table.Row leader =
        all.rows()
            .filter(row -> row.number("plan") == gone.number("against"))
            .findFirst()
            .orElseThrow();
    double[] own = years(plant, gone.text("choice.mill"), gone.text("choice.loader"));
    double[] first = years(plant, leader.text("choice.mill"), leader.text("choice.loader"));
    double[] d = new double[ROUND];
    Arrays.setAll(d, year -> own[CHOOSING + year] - first[CHOOSING + year]);
    assertThat(gone.number("mean"))
        .isCloseTo(Arrays.stream(own).average().orElseThrow(), within(1e-6));
    assertThat(gone.number("difference"))
        .isCloseTo(Arrays.stream(d).average().orElseThrow(), within(1e-6));
    assertThat(gone.number("limit")).isCloseTo(limit(d), within(1e-6));
  }
}
