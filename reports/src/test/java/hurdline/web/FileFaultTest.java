package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.EngineStudies;
import hurdline.service.Template;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the machine refuses is told in a sentence, and nothing is half done. */
class FileFaultTest {
  @TempDir Path root;

  private static String said(IOException fault) {
    return FileFault.refusal("p.yaml is not saved", fault).getMessage();
  }

  @Test
  void eachFaultIsASentence() {
    assertThat(said(new FileSystemException("/a/p.yaml", null, "No space left on device")))
        .isEqualTo("p.yaml is not saved: the disk is full. Make room, then try again.");
    assertThat(said(new IOException("Disk quota exceeded"))).contains("the disk is full");
    assertThat(said(new FileSystemException("/a/p.yaml", null, "Read-only file system")))
        .isEqualTo(
            "p.yaml is not saved: the folder lies on a disk that can only be read. Copy it first.");
    assertThat(said(new AccessDeniedException("/a/.saving-1.part")))
        .isEqualTo("p.yaml is not saved: the file or its folder is not yours to read and write.");
    assertThat(said(new IOException("File too large")))
        .isEqualTo("p.yaml is not saved: File too large.");
  }

  @Test
  void aFolderThatIsTakenAwayWhileItIsOpenIsToldAndComesBack() throws IOException {
    Path folder = Files.createDirectory(root.resolve("plants"));
    Files.writeString(folder.resolve("small.yaml"), Template.SMALL.text());
    PageServer server = PageServer.start(folder, 0, new EngineStudies());
    try {
      URI address = URI.create(server.newAddress());
      Raw raw = new Raw(address.getPort());
      raw.enter(address.getFragment());
      Path away = root.resolve("away");
      Files.move(folder, away);
      String save = "{\"name\": \"small.yaml\", \"text\": \"x\", \"version\": \"\"}";
      for (Raw.Reply reply :
          new Raw.Reply[] {
            raw.get("/api/files"),
            raw.post("answers", "{}"),
            raw.post("read", "{\"name\": \"small.yaml\"}"),
            raw.body("PUT", "plant", "application/json", save),
            raw.post("create", "{\"name\": \"other\", \"text\": \"x\"}")
          }) {
        assertThat(reply.status()).as(reply.body()).isEqualTo(404);
        assertThat(reply.body()).contains("is no longer there");
      }
      assertThat(raw.post("check", "{\"name\": \"small.yaml\", \"text\": \"a: 1\"}").body())
          .as("what is typed is still checked")
          .contains("\"problems\":[{");
      Files.move(away, folder);
      assertThat(raw.get("/api/files").body()).contains("small.yaml");
    } finally {
      server.close();
    }
  }

  /** No file may grow beyond 32 kB there, which fails as a full disk does: in the middle. */
  @Test
  void aWriteThatFailsHalfWayLeavesTheOldFileAndNoHalfOne() throws Exception {
    Files.writeString(root.resolve("p.yaml"), "a: 1\n");
    Process limited =
        new ProcessBuilder(
                "bash",
                "-c",
                "ulimit -f 32; exec \"$@\"",
                "bash",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-cp",
                System.getProperty("java.class.path"),
                HalfWritten.class.getName(),
                root.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(limited.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(limited.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(said)
        .contains("p.yaml is not saved: File too large.", "new.yaml is not made: File too large.");
    assertThat(root.resolve("p.yaml")).hasContent("a: 1");
    try (Stream<Path> all = Files.list(root)) {
      assertThat(all).containsExactly(root.resolve("p.yaml"));
    }
  }
}
