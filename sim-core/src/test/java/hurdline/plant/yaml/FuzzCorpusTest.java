package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.ProblemsException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Inputs that a search has found worth keeping: each is read, or refused in words. */
class FuzzCorpusTest {
  private static final Path CORPUS = Path.of("src/test/resources/hurdline/plant/yaml/fuzz-corpus");

  static List<String> kept() throws IOException {
    try (Stream<Path> files = Files.list(CORPUS)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("kept")
  void whatASearchHasFoundIsReadOrRefusedInWords(String file) throws IOException {
    keepsThePromise(Files.readString(CORPUS.resolve(file), StandardCharsets.ISO_8859_1));
    keepsThePromise(new String(Files.readAllBytes(CORPUS.resolve(file)), StandardCharsets.UTF_8));
  }

  /**
   * Reading ends in a plant or in lines that say what is wrong and what is due.
   *
   * @return whether the text was refused
   */
  static boolean keepsThePromise(String text) {
    try {
      PlantFile.of("f.yaml", text);
      return false;
    } catch (ProblemsException refused) {
      assertThat(refused.lines())
          .isNotEmpty()
          .allSatisfy(
              line ->
                  assertThat(line)
                      .startsWith("f.yaml")
                      .contains("; expected ")
                      .doesNotContain("\n"));
      return true;
    }
  }
}
