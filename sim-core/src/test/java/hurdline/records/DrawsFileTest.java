package hurdline.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.plant.InputDraws;
import hurdline.plant.ProblemsException;
import hurdline.unit.AmountsInText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code draws.csv} read, and what is refused. */
class DrawsFileTest {
  @TempDir private Path folder;

  private InputDraws read(String text) throws IOException {
    return DrawsFile.read(Files.writeString(folder.resolve("draws.csv"), text));
  }

  @Test
  void replicationKTakesRowKAndBeginsAgainBehindTheLast() throws IOException {
    InputDraws draws =
        read(
            "machines.saw.stops.choke.every,machines.mill.power\n"
                + "{exponential: {mean: 8 h}},20 hp\n\"{exponential: {mean: 9.5 h}}\",21 hp\n");
    assertThat(draws.keys())
        .containsExactly("machines.saw.stops.choke.every", "machines.mill.power");
    assertThat(draws.row(1)).isZero();
    assertThat(draws.row(2)).isEqualTo(1);
    assertThat(draws.row(3)).isZero();
    assertThat(AmountsInText.numbers(draws.rows().get(1).get(0))).containsExactly(9.5);
  }

  @Test
  void aListCountsAsItsMeanAndFormsLeaveNumbersOut() {
    assertThat(AmountsInText.numbers("{observed: [1 min, 3 min]}")).containsExactly(2);
    assertThat(AmountsInText.numbers("x1.25")).containsExactly(1.25);
    assertThat(AmountsInText.form("{weibull: {shape: 1.5, scale: 9 h}}"))
        .isEqualTo(AmountsInText.form("{weibull: {shape: 2, scale: 10.25 h}}"))
        .isNotEqualTo(AmountsInText.form("{weibull: {shape: 2, scale: 10.25 min}}"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a.b,a.b;1 h,2 h|draws.csv:1: a key is missing or stands twice",
        "a.b,c.d|draws.csv:1: no draw follows the head",
        "a.b,c.d;1 h|draws.csv:2: it has not a value for each of the 2 keys",
        "a.b;1 h;60 min|draws.csv:3: a.b is \"60 min\" here and \"1 h\" in the first row"
      })
  void whatCannotBeIsRefusedWithItsLine(String text, String message) {
    assertThatThrownBy(() -> read(text.replace(";", "\n") + "\n"))
        .isInstanceOf(ProblemsException.class)
        .satisfies(
            e ->
                assertThat(((ProblemsException) e).lines().get(0))
                    .contains(message)
                    .contains("expected"));
  }
}
