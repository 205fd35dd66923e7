package hurdline.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What input_plants.csv says follows from runs with each row of the draws by itself. Seven
 * replications over three rows: each row two or three times.
 */
class InputPlantsAuditTest {
  private static final String KEY = "machines.mill.grinding.energy";
  private static final List<String> ENERGIES = List.of("3 kWh/t", "9 kWh/t", "25 kWh/t");

  @TempDir private Path dir;

  /** Its calendar is repeated, without which a yearly cost says nothing. */
  private Path plant() throws IOException {
    return Files.writeString(
        dir.resolve("plant.yaml"),
        Files.readString(Plants.small()).replace("  shifts:\n", "  repeats: yearly\n  shifts:\n"));
  }

  private WrittenAnswer answer(String verb, String out, List<String> flags) throws IOException {
    return WrittenAnswer.of(verb, plant(), dir.resolve(out), flags.toArray(String[]::new));
  }

  /** The answer with draws of a key, and those with each value alone. */
  private void isFollowed(
      String verb, String key, List<String> values, String what, int figures, String... flags)
      throws IOException {
    Path draws = dir.resolve("draws.csv");
    Files.writeString(draws, key + "\n" + String.join("\n", values) + "\n");
    List<String> all = new ArrayList<>(List.of("--replications", "7"));
    all.addAll(List.of(flags));
    List<WrittenAnswer> own = new ArrayList<>();
    for (String value : values) {
      List<String> with = new ArrayList<>(all);
      with.addAll(List.of("--set", key + "=" + value));
      own.add(answer(verb, "own" + own.size(), with));
    }
    all.addAll(List.of("--draws", draws.toString()));
    WrittenAnswer drawn = answer(verb, "drawn", all);
    Audit audit = Audit.ofInputs(own);
    audit.closes(drawn, Map.of(what, figures));
    assertThat(in(drawn))
        .as("some hold and some do not")
        .isGreaterThan(0)
        .isLessThan(3 * rows(drawn));
    for (String column : List.of("in", "plants", "years")) {
      audit.notices(what, drawn, Control.inTable(Tables.INPUT_PLANTS, column));
    }
  }

  private static int rows(WrittenAnswer answer) {
    return (int) answer.table(Tables.INPUT_PLANTS).rows().count();
  }

  private static double in(WrittenAnswer answer) {
    return answer.table(Tables.INPUT_PLANTS).rows().mapToDouble(row -> row.number("in")).sum();
  }

  @Test
  void thePlantsInWhichAnOptionPaysAreThoseOfRunsWithTheirOwnInputs() throws IOException {
    isFollowed(
        "compare",
        KEY,
        ENERGIES,
        InputPlantsCheck.PAYS,
        2 * 5,
        "--service-lives",
        "2",
        "--among",
        "bigger_mill,second_spout");
  }

  @Test
  void thePlantsInWhichALineIsDoneAreThoseOfRunsWithTheirOwnInputs() throws IOException {
    isFollowed(
        "run",
        "lines.stalk_line.steps.feeder.rate",
        List.of("0.3 t/h", "0.5 t/h", "3 t/h"),
        InputPlantsCheck.DONE,
        2 * 5);
  }
}
