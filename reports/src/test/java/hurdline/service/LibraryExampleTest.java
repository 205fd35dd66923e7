package hurdline.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class LibraryExampleTest {
  private static final Path SMALL = Path.of("../line-configs/small.yaml");

  @Test
  void theExampleListsProblemsCapacityProgressAndAnswers() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    new LibraryExample(new PrintStream(bytes, true, StandardCharsets.UTF_8))
        .show(Files.readString(SMALL));
    List<String> lines = bytes.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(lines.get(0)).isEqualTo("problems or warnings: 1");
    assertThat(lines.get(1))
        .matches(
            "  line 20, column 5, key crops\\.stalk\\.moistrue: unknown key \"moistrue\"; nearest word moisture");
    assertThat(lines.get(2)).isEqualTo("problems or warnings: 0");
    assertThat(lines.get(3)).matches("stalk_line: rated 1\\.21\\d t/h, expected 0\\.8\\d+ t/h");
    assertThat(lines.get(4))
        .as("the feeder limits it with twice the motor")
        .matches("stalk_line: rated 2\\.\\d+ t/h, expected .*");
    assertThat(lines.subList(5, 15)).first().isEqualTo("  1 of 40");
    assertThat(lines).contains("  10 of 40").doesNotContain("  13 of 40");
    assertThat(lines.get(lines.size() - 2))
        .matches("margin over 1[01] of 40 replications: .* USD, 95 % interval .*");
    assertThat(lines.get(lines.size() - 1))
        .matches("margin over 40 of 40 replications: .* USD, 95 % interval .*");
  }
}
