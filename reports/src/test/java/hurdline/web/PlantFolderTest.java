package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.web.http.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Random;
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
        "a: 1\r\nb: 2\nc: 3\r\n",
        "a: 1\n\r\n\n\r\nb: 2",
        "a: 1\rb: 2\r\n\rc: 3",
        "a: 1",
        ""
      })
  void whatIsReadAndSavedUnchangedIsTheSameToTheByte(String text) throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, text);
    PlantFolder plants = new PlantFolder(folder);
    var read = plants.read("p.yaml");
    assertThat(read.text()).doesNotContain("\r", "\uFEFF");
    plants.save("p.yaml", read.text(), read.version());
    assertThat(Files.readString(file)).isEqualTo(text);
  }

  @Test
  void aLineThatNobodyHasEditedEndsAsBeforeAndANewOneAsThatAboveIt() throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, "\uFEFFa: 1\r\n\nb: 2\n\r\nc: 3\rd: 4");
    PlantFolder plants = new PlantFolder(folder);
    var read = plants.read("p.yaml");
    assertThat(read.text()).isEqualTo("a: 1\n\nb: 2\n\nc: 3\nd: 4");
    String now = "a: 1\n# new\n\nb: 2\n\nc: 3\nd: 5\n";
    plants.save("p.yaml", now, read.version());
    assertThat(Files.readString(file)).isEqualTo("\uFEFFa: 1\r\n# new\r\n\nb: 2\n\r\nc: 3\rd: 5\r");
  }

  /** Every tenth line or so goes or is new. */
  @Test
  void howManyEditsThereMayBeEachOtherLineKeepsItsEnd() {
    Random random = new Random(4);
    for (int lines : new int[] {3, 40, 2_000}) {
      StringBuilder was = new StringBuilder();
      StringBuilder now = new StringBuilder();
      StringBuilder due = new StringBuilder();
      String end = "";
      for (int line = 0; line < lines; line++) {
        end = random.nextBoolean() ? "\n" : "\r\n";
        String text = "key_" + line + ": " + line;
        was.append(text).append(end);
        int lot = line == 0 ? 9 : random.nextInt(10);
        if (lot > 0) {
          now.append(text).append('\n');
          due.append(text).append(end);
        }
        if (lot == 1) {
          now.append("new: ").append(line).append('\n');
          due.append("new: ").append(line).append(end);
        }
      }
      assertThat(LineEnds.asIn(was.toString(), now.toString()).replaceAll("new: .*\\r?\\n", ""))
          .isEqualTo(due.toString().replaceAll("new: .*\\r?\\n", ""));
    }
  }

  @Test
  void aTextThatIsAnotherKeepsTheEndsOfWhatStandsAboveAndBelow() {
    StringBuilder was = new StringBuilder("a: 1\r\n");
    StringBuilder now = new StringBuilder("a: 1\n");
    for (int line = 0; line < 3_000; line++) {
      was.append("was: ").append(line).append("\n");
      now.append("now: ").append(line).append("\n");
    }
    was.append("b: 2\r\nc: 3\n");
    now.append("b: 2\nc: 3\n");
    assertThat(LineEnds.asIn(was.toString(), now.toString()))
        .startsWith("a: 1\r\nnow: 0\r\n")
        .endsWith("now: 2999\r\nb: 2\r\nc: 3\n");
  }

  @Test
  void aFileThatWasChangedMeanwhileIsNotWrittenOver() throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, "a: 1\n");
    PlantFolder plants = new PlantFolder(folder);
    var read = plants.read("p.yaml");
    Files.writeString(file, "a: 2\n");
    assertThatThrownBy(() -> plants.save("p.yaml", "a: 3\n", read.version()))
        .isInstanceOfSatisfying(Refusal.class, no -> assertThat(no.status()).isEqualTo(409));
    assertThat(Files.readString(file)).isEqualTo("a: 2\n");
    var now = plants.read("p.yaml");
    var saved = plants.save("p.yaml", "a: 3\n", now.version());
    assertThat(plants.read("p.yaml")).isEqualTo(saved);
  }

  @Test
  void savingKeepsWhoMayReadTheFileAndLeavesNothingBeside() throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, "a: 1\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    PlantFolder plants = new PlantFolder(folder);
    var read = plants.read("p.yaml");
    plants.save("p.yaml", "a: 2\n", read.version());
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
      assertThatThrownBy(() -> plants.save("p.yaml", text, read.version()))
          .hasMessageContaining("half of a sign");
      assertThatThrownBy(() -> plants.create("new", text)).hasMessageContaining("half of a sign");
    }
    plants.save("p.yaml", "# \ud83c\udf3e\n", read.version());
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
