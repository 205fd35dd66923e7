package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The plant with every key, one thing of it changed. */
record Edited(String text) {
  static Edited plantFile() {
    try (InputStream in = Edited.class.getResourceAsStream("every-key.yaml")) {
      return new Edited(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts the new text where the old one stands, which must be in one place only. */
  static Edited with(String old, String now) {
    return plantFile().and(old, now);
  }

  Edited and(String old, String now) {
    int at = text.indexOf(old);
    assertThat(at).as("the file has \"%s\"", old).isNotNegative();
    assertThat(text.indexOf(old, at + 1)).as("\"%s\" stands there once", old).isNegative();
    return new Edited(text.replace(old, now));
  }

  PlantFile read() {
    return PlantFile.of("p.yaml", text);
  }

  Plant plant() {
    return read().plant();
  }

  List<String> problems() {
    try {
      read();
      return List.of();
    } catch (ProblemsException e) {
      return e.lines();
    }
  }

  /** The only problem, its place left out. */
  void saysOnly(String problem) {
    List<String> said =
        problems().stream()
            .map(line -> line.replaceFirst("^p\\.yaml(:[0-9]+:[0-9]+)? ?", ""))
            .toList();
    assertThat(said).containsExactly(problem);
  }

  /** The only problem, at the line that holds this text. */
  void saysOnlyAt(String held, String problem) {
    saysOnly(problem);
    int line =
        1 + (int) text.substring(0, text.indexOf(held)).chars().filter(c -> c == '\n').count();
    assertThat(problems()).allSatisfy(said -> assertThat(said).startsWith("p.yaml:" + line + ":"));
  }
}
