package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import hurdline.plant.ProblemsException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Which files are read: the plant file, if it is a file, and what it names in its own folder and
 * below.
 */
class FilesReadTest {
  private static final String OUTSIDE =
      " lies outside the folder of the plant file and is not opened; expected a CSV of past years' daily rain that begins"
          + " with \"date,rain_mm\", its path from the folder of the plant file";
  private static final String SECRET = "root:x:0:0";

  @TempDir private Path dir;
  private Path folder;

  @BeforeEach
  void aSecretLiesBesideTheFolder() throws IOException {
    folder = Files.createDirectory(dir.resolve("plants"));
    Files.writeString(dir.resolve("secret"), SECRET + "\n");
    rain(folder.resolve("rain.csv"));
    rain(dir.resolve("rain.csv"));
  }

  private static void rain(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, PlantFiles.text("exact/past_rain.csv"));
  }

  private Path plantWithRain(String name) throws IOException {
    String text =
        PlantFiles.text("exact/past_rain.yaml")
            .replace("file: past_rain.csv", "file: \"" + name + "\"");
    return Files.writeString(folder.resolve("plant.yaml"), text);
  }

  private static List<String> refused(Path file) {
    return assertThrows(ProblemsException.class, () -> PlantFile.read(file)).lines();
  }

  private static Path pipe(Path at) throws Exception {
    assertThat(new ProcessBuilder("mkfifo", at.toString()).start().waitFor()).isZero();
    return at;
  }

  @Test
  void aNamedPipeIsRefusedAndNotWaitedFor() throws Exception {
    Path pipe = pipe(folder.resolve("plant.yaml"));
    List<String> lines = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> refused(pipe));
    assertThat(lines)
        .containsExactly(pipe + ": it is a pipe, a device or a socket; expected a file on a disk");
  }

  @Test
  void aDeviceIsRefused() {
    assertThat(refused(Path.of("/dev/zero")))
        .containsExactly(
            "/dev/zero: it is a pipe, a device or a socket; expected a file on a disk");
  }

  @Test
  void aRainFileThatIsAPipeIsNotWaitedFor() throws Exception {
    pipe(folder.resolve("pipe.csv"));
    Path plant = plantWithRain("pipe.csv");
    assertThat(assertTimeoutPreemptively(Duration.ofSeconds(60), () -> refused(plant)))
        .singleElement()
        .asString()
        .contains("\"pipe.csv\" cannot be used: it is a pipe, a device or a socket");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret",
        "../rain.csv",
        "../../../../../../../../etc/passwd",
        "/etc/passwd",
        "below/../../secret",
        "../none.csv"
      })
  void aFileOutsideThePlantsFolderIsNotOpened(String name) throws IOException {
    assertThat(refused(plantWithRain(name)))
        .singleElement()
        .asString()
        .contains("deliveries.stalk.weather.file: \"" + name + "\"" + OUTSIDE)
        .doesNotContain("root:");
  }

  @Test
  void aLinkThatLeadsOutIsFollowedAndRefused() throws IOException {
    Files.createSymbolicLink(folder.resolve("link.csv"), dir.resolve("secret"));
    Files.createSymbolicLink(folder.resolve("out"), dir);
    for (String name : List.of("link.csv", "out/rain.csv")) {
      assertThat(refused(plantWithRain(name)))
          .singleElement()
          .asString()
          .contains("\"" + name + "\"" + OUTSIDE)
          .doesNotContain(SECRET);
    }
  }

  @Test
  void whatLiesInTheFolderOrBelowIsRead() throws IOException {
    rain(folder.resolve("years/past.csv"));
    Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("years/past.csv"));
    for (String name :
        List.of(
            "rain.csv",
            "years/past.csv",
            "./years/../rain.csv",
            "link.csv",
            folder.resolve("rain.csv").toString())) {
      assertThat(PlantFile.read(plantWithRain(name)).plant().name()).as(name).isNotEmpty();
    }
  }

  @Test
  void aPlantThatIsReachedByALinkToItsFolderIsRead() throws IOException {
    plantWithRain("rain.csv");
    Path link = Files.createSymbolicLink(dir.resolve("link"), folder);
    assertThat(PlantFile.read(link.resolve("plant.yaml")).plant().name()).isNotEmpty();
  }

  @Test
  void aByteOrderMarkIsReadOver() throws IOException {
    String text = Edited.plantFile().text();
    Path marked =
        Files.write(
            folder.resolve("marked.yaml"), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8));
    assertThat(PlantFile.read(marked).plant()).isEqualTo(Edited.plantFile().plant());
    assertThat(PlantFile.of("p.yaml", "\uFEFF" + text).plant())
        .isEqualTo(Edited.plantFile().plant());
    assertThat(refused(Files.writeString(marked, "\uFEFFhurdlne: 1\n")).get(0))
        .startsWith(marked + ":1:1 hurdlne: unknown key");
  }
}
