package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.web.http.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlantFolderTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: 1\nb: 2\n",
        "a: 1\r\nb: 2\r\n",
        "\uFEFFa: 1\r\nb: 2",
        "\uFEFFa: 1\nb: 2",
        "a: 1"
      })
  void whatIsReadAndSavedUnchangedIsTheSameToTheByte(String text) throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, text);
    PlantFolder plants = new PlantFolder(folder);
    var read = plants.read("p.yaml");
    assertThat(read.text()).doesNotContain("\r", "\uFEFF");
    plants.save("p.yaml", read.text(), read.version(), read.layout());
    assertThat(Files.readString(file)).isEqualTo(text);
  }

  @Test
  void aFileThatWasChangedMeanwhileIsNotWrittenOver() throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, "a: 1\n");
    PlantFolder plants = new PlantFolder(folder);
    var read = plants.read("p.yaml");
    Files.writeString(file, "a: 2\n");
    assertThatThrownBy(() -> plants.save("p.yaml", "a: 3\n", read.version(), read.layout()))
        .isInstanceOfSatisfying(Refusal.class, no -> assertThat(no.status()).isEqualTo(409));
    assertThat(Files.readString(file)).isEqualTo("a: 2\n");
    var now = plants.read("p.yaml");
    var saved = plants.save("p.yaml", "a: 3\n", now.version(), now.layout());
    assertThat(plants.read("p.yaml")).isEqualTo(saved);
  }

  @Test
  void savingKeepsWhoMayReadTheFileAndLeavesNothingBeside() throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, "a: 1\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    PlantFolder plants = new PlantFolder(folder);
    var read = plants.read("p.yaml");
    plants.save("p.yaml", "a: 2\n", read.version(), read.layout());
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
    try (var all = Files.list(folder)) {
      assertThat(all).containsExactly(file);
    }
  }

  @Test
  void aNewFileIsWrittenOverNone() throws IOException {
    PlantFolder plants = new PlantFolder(folder);
    assertThat(plants.create("mine", "a: 1\n")).isEqualTo("mine.yaml");
    assertThatThrownBy(() -> plants.create("mine", "a: 2\n")).hasMessageContaining("already");
    assertThat(Files.readString(folder.resolve("mine.yaml"))).isEqualTo("a: 1\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Gr\u00f6\u00dfe", "two words", "\u05de\u05e4\u05e2\u05dc", "a.yaml", "A.YML"})
  void aNameMayBeOfAnyScript(String wanted) throws IOException {
    PlantFolder plants = new PlantFolder(folder);
    String name = plants.create(wanted, "a: 1\n");
    assertThat(name).matches("[^.]+\\.yaml");
    assertThat(plants.read(name).text()).isEqualTo("a: 1\n");
    assertThat(plants.plants()).containsExactly(name);
  }

  /**
   * An editor shows a lone carriage return as a line's end; what is shown must be what was read.
   */
  @Test
  void linesThatEndAsOnOldMachinesAreLines() throws IOException {
    Files.writeString(folder.resolve("p.yaml"), "a: 1\rb: 2\r");
    assertThat(new PlantFolder(folder).read("p.yaml").text()).isEqualTo("a: 1\nb: 2\n");
  }

  @Test
  void halfASignIsNeverSavedAsSomethingElse() throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, "a: 1\n");
    PlantFolder plants = new PlantFolder(folder);
    var read = plants.read("p.yaml");
    for (String text : new String[] {"# \ud83c\n", "# \udf3e", "\udf3e\ud83c"}) {
      assertThatThrownBy(() -> plants.save("p.yaml", text, read.version(), read.layout()))
          .hasMessageContaining("half of a sign");
      assertThatThrownBy(() -> plants.create("new", text)).hasMessageContaining("half of a sign");
    }
    plants.save("p.yaml", "# \ud83c\udf3e\n", read.version(), read.layout());
    assertThat(file).hasContent("# \ud83c\udf3e");
    assertThat(plants.plants()).containsExactly("p.yaml");
  }

  @Test
  void whatIsNoTextIsSaidAndNotShown() throws IOException {
    Files.write(folder.resolve("p.yaml"), "a: \u00e9".getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(() -> new PlantFolder(folder).read("p.yaml"))
        .hasMessage("The file is not text in UTF-8; save it as UTF-8 first.");
  }

  @Test
  void aKillInTheMiddleOfSavingLeavesAWholeFile() throws Exception {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, SavingLoop.text(0));
    for (int waitMs : new int[] {3, 40, 110, 170}) {
      Process saving =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty("java.class.path"),
                  SavingLoop.class.getName(),
                  folder.toString())
              .start();
      assertThat(saving.inputReader().readLine()).isEqualTo("saving");
      Thread.sleep(waitMs);
      saving.destroyForcibly().waitFor();
      assertThat(Files.readString(file)).isIn(SavingLoop.text(0), SavingLoop.text(1));
    }
  }
}
