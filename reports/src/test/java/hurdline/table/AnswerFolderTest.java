package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnswerFolderTest {
  private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 25, 15, 30, 12);

  @TempDir Path dir;

  @Test
  void theFolderIsDatedAndLiesBesideThePlantFile() throws IOException {
    assertThat(AnswerFolder.beside(dir.resolve("sweetgum-bend.yaml"), NOW).path())
        .isEqualTo(dir.resolve("sweetgum-bend-answer-2026-11-25-153012"))
        .isDirectory();
  }

  @Test
  void twoAnswersOfOneSecondGetTwoFolders() throws IOException {
    AnswerFolder.beside(dir.resolve("a.yaml"), NOW);
    assertThat(AnswerFolder.beside(dir.resolve("a.yaml"), NOW).path())
        .hasFileName("a-answer-2026-11-25-153012-2");
  }

  @Test
  void anOlderAnswerIsNeverWrittenOver() throws IOException {
    Path old = dir.resolve("old");
    AnswerFolder.named(old).write("record.json", out -> out.write("old"));
    assertThatThrownBy(() -> AnswerFolder.named(old))
        .isInstanceOf(DirectoryNotEmptyException.class);
    assertThat(old.resolve("record.json")).hasContent("old");
  }

  @Test
  void anEmptyFolderMayBeNamedAndAFileMayNot() throws IOException {
    assertThat(AnswerFolder.named(dir).path()).isEqualTo(dir);
    Path file = Files.writeString(dir.resolve("file"), "x");
    assertThatThrownBy(() -> AnswerFolder.named(file)).isInstanceOf(NotDirectoryException.class);
  }

  @Test
  void aFileThatFailsHalfwayHasNotItsName() throws IOException {
    AnswerFolder folder = AnswerFolder.named(dir.resolve("new"));
    assertThatThrownBy(
            () ->
                folder.write(
                    "charts/a.svg",
                    out -> {
                      out.write("half");
                      throw new IOException("disk full");
                    }))
        .hasMessage("disk full");
    assertThat(folder.path().resolve("charts/a.svg")).doesNotExist();
  }

  @Test
  void anUnusedFolderIsTakenAwayAgain() throws IOException {
    AnswerFolder folder = AnswerFolder.beside(dir.resolve("a.yaml"), NOW);
    folder.giveBack();
    try (Stream<Path> inside = Files.list(dir)) {
      assertThat(inside).isEmpty();
    }
  }
}
