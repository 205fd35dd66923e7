package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleAnswer;
import hurdline.table.RecordFile;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What shows an answer's folder, by a stand-in for the desktop's own program. */
@Timeout(value = 2, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class FolderShownTest {
  private static final String[] NAMES = {"-rf x", "it's \"one\"", "a b;touch c", "$HOME", "plain"};

  @TempDir Path root;

  /** The whole program with a path on which only the stand-in lies, and a screen. */
  private Process open(Path plants, String stub) throws IOException {
    Path bin = Files.createDirectory(root.resolve("bin"));
    if (!stub.isEmpty()) {
      Path starter = bin.resolve("xdg-open");
      Files.writeString(starter, "#!/bin/sh\n" + stub);
      Files.setPosixFilePermissions(starter, PosixFilePermissions.fromString("rwx------"));
    }
    ProcessBuilder program =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            "hurdline.command.Hurdline",
            "open",
            plants.toString(),
            "--no-browser");
    program.environment().put("PATH", bin.toString());
    program.environment().put("DISPLAY", ":9");
    return program.redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }

  private static Raw entered(Process program) throws IOException {
    BufferedReader said = program.inputReader();
    URI address = URI.create(said.readLine().replace("hurdline is open at ", ""));
    Raw raw = new Raw(address.getPort());
    raw.enter(address.getFragment());
    return raw;
  }

  private static void put(Path plants, String name) throws IOException {
    Path answer = Files.createDirectory(plants.resolve(name));
    try (Writer out = Files.newBufferedWriter(answer.resolve("record.json"))) {
      RecordFile.write(SampleAnswer.year(), out);
    }
    Files.writeString(answer.resolve("report.html"), "x");
  }

  private static Raw.Reply show(Raw raw, String name) throws IOException {
    return raw.post("folder", "{\"name\": \"" + name.replace("\"", "\\\"") + "\"}");
  }

  @Test
  void theRightFolderIsShownAndNothingElse() throws Exception {
    Path plants = Files.createDirectory(root.resolve("the plants"));
    Path told = root.resolve("told");
    for (String name : NAMES) {
      put(plants, name);
    }
    // One line with the number of words, then a line for each; the shell's own words alone.
    Process program =
        open(plants, "{ echo $#; for w in \"$@\"; do echo \"$w\"; done; } >> '" + told + "'\n");
    try {
      Raw raw = entered(program);
      for (String name : NAMES) {
        Files.deleteIfExists(told);
        assertThat(show(raw, name).status()).as(name).isEqualTo(200);
        assertThat(lines(told)).containsExactly("1", plants.resolve(name).toString());
      }
      Files.deleteIfExists(told);
      assertThat(show(raw, "..").status()).isEqualTo(404);
      assertThat(told).doesNotExist();
    } finally {
      program.destroy();
      program.waitFor();
    }
  }

  private static List<String> lines(Path told) throws IOException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
    while (!Files.exists(told) || Files.readAllLines(told).size() < 2) {
      assertThat(System.nanoTime()).as("the stand-in is started").isLessThan(end);
      LockSupport.parkNanos(20_000_000L);
    }
    return Files.readAllLines(told);
  }

  @Test
  void whereNothingShowsFoldersOneLineSaysWhereItIs() throws Exception {
    Path plants = Files.createDirectory(root.resolve("plants"));
    put(plants, "plain");
    Process program = open(plants, "");
    try {
      Raw raw = entered(program);
      Raw.Reply none = show(raw, "plain");
      assertThat(none.status()).isEqualTo(409);
      assertThat(none.body())
          .isEqualTo("Nothing here shows folders; the folder is " + plants.resolve("plain"));
      Path starter = root.resolve("bin").resolve("xdg-open");
      Files.writeString(starter, "#!/bin/sh\nexit 3\n");
      Files.setPosixFilePermissions(starter, PosixFilePermissions.fromString("rwx------"));
      assertThat(show(raw, "plain").body()).as("it is there and fails").isEqualTo(none.body());
    } finally {
      program.destroy();
      program.waitFor();
    }
  }
}
