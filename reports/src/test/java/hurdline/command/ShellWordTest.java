package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ShellWordTest {
  @Test
  void aPathThatAShellWouldPartStandsInQuotes() {
    assertThat(ShellWord.of(Path.of("my plants/small.yaml"))).isEqualTo("\"my plants/small.yaml\"");
    assertThat(ShellWord.of(Path.of("Wörk/small-2.yaml"))).isEqualTo("Wörk/small-2.yaml");
  }
}
