package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.RunAnswer;
import hurdline.sample.SampleAnswer;
import hurdline.service.PreparedStudy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** A disk that fills up takes no answer away. */
class FullDiskTest extends Calls {
  private static final Path FULL = Path.of("/dev/full");

  /**
   * An engine while which the disk fills up: from then on that file of the answer cannot be
   * written.
   */
  private PreparedStudy.Simulation<RunAnswer> fillingUp(Path answer, String file) {
    return (done, stop) -> {
      try {
        Files.createSymbolicLink(answer.resolve(file + ".part"), FULL);
        return Optional.of(SampleAnswer.year());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    };
  }

  @Test
  void theAnswerIsToldAndWhatIsThereIsNamed() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                fillingUp(answer, "weeks.csv"),
                "run",
                plant.toString(),
                "--out",
                answer.toString()))
        .isEqualTo(2);
    assertThat(out.toString())
        .startsWith("Sweetgum Bend shared gin, the plant as it stands")
        .contains("margin")
        .doesNotContain("Report: ");
    assertThat(err.toString())
        .isEqualTo(
            "hurdline: writing failed (No space left on device): "
                + answer
                + " holds measures.csv, summary.csv, but not weeks.csv and what follows it; make"
                + " room and ask again, or name another folder with --out\n");
    assertThat(namesIn(answer)).containsExactly("measures.csv", "summary.csv");
  }

  @Test
  void theRecordIsWrittenLastAndChartsAreCounted() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                fillingUp(answer, "record.json"),
                "run",
                plant.toString(),
                "--out",
                answer.toString(),
                "--json"))
        .isEqualTo(2);
    assertThat(out.toString()).startsWith("{");
    assertThat(err.toString())
        .contains(
            "report.html, plant.yaml, call.txt, 14 charts, but not record.json and what follows"
                + " it");
    assertThat(namesIn(answer))
        .contains("report.html")
        .doesNotContain("record.json", "record.json.part");
  }

  @Test
  void aFolderWithoutAnythingIsTakenAwayAgain() throws IOException {
    Path answer = dir.resolve("answer");
    assertThat(
            call(
                fillingUp(answer, "measures.csv"),
                "run",
                plant.toString(),
                "--out",
                answer.toString()))
        .isEqualTo(2);
    assertThat(err.toString()).contains(" holds nothing, but not measures.csv");
    assertThat(answer).doesNotExist();
  }

  /** The words on a full disk are lost; that they are is told. */
  @Test
  void anAnswerThatCannotBePrintedIsNotPassedOverInSilence() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "hurdline.command.Hurdline",
                "--help")
            .redirectOutput(FULL.toFile())
            .start();
    String told = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(told)
        .contains(
            "hurdline: printing failed: No space left on device; print to a terminal or a file with"
                + " room");
    assertThat(process.exitValue()).isEqualTo(2);
  }
}
