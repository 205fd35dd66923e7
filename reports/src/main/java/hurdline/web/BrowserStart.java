package hurdline.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Opens the user's browser at an address that others must not learn.
 *
 * <p>Who else is on the machine can see the words of every command, so the browser is given a file
 * that only its owner can read and that leads on to the address. The file lies in the plants'
 * folder under a plain name: browsers that are packed apart from the system may read neither hidden
 * nor temporary folders.
 */
public final class BrowserStart implements AutoCloseable {
  private static final String NAME = "open-hurdline.html";
  private static final long FAILS_WITHIN_MS = 1500;

  private final Path file;

  private BrowserStart(Path file) {
    this.file = file;
  }

  /** Whether the machine has a screen to show a browser on. */
  public static boolean isPossible(Map<String, String> environment) {
    boolean screen =
        environment.containsKey("DISPLAY") || environment.containsKey("WAYLAND_DISPLAY");
    return !command("").get(0).equals("xdg-open") || screen;
  }

  /** Starts the browser; what is given back takes the file away when the page has opened. */
  public static BrowserStart at(Path folder, String address) throws IOException {
    Path file = folder.resolve(NAME);
    Files.deleteIfExists(file);
    Files.createFile(file);
    if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    }
    Files.writeString(
        file,
        "<!DOCTYPE html><meta charset=\"utf-8\"><title>hurdline</title><meta"
            + " http-equiv=\"refresh\" content=\"0; url="
            + address
            + "\"><p><a href=\""
            + address
            + "\">Open hurdline</a></p>\n",
        StandardCharsets.US_ASCII,
        StandardOpenOption.TRUNCATE_EXISTING);
    BrowserStart start = new BrowserStart(file);
    try {
      new ProcessBuilder(command(file.toAbsolutePath().toUri().toString()))
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      return start;
    } catch (IOException none) {
      start.close();
      throw none;
    }
  }

  /**
   * Shows a folder as the machine shows folders.
   *
   * @throws IOException if nothing can be started that does, or what was started says so at once
   */
  static void show(Path folder) throws IOException {
    List<String> words = command(folder.toAbsolutePath().toString());
    Process showing =
        new ProcessBuilder(words)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      boolean over = showing.waitFor(FAILS_WITHIN_MS, TimeUnit.MILLISECONDS);
      // The number with which Windows ends such a call means nothing.
      if (over && showing.exitValue() != 0 && words.size() == 2) {
        throw new IOException(words.get(0) + " ended with " + showing.exitValue());
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  private static List<String> command(String address) {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    List<String> words = new ArrayList<>();
    if (system.contains("windows")) {
      words.addAll(List.of("rundll32", "url.dll,FileProtocolHandler"));
    } else {
      words.add(system.contains("mac") ? "open" : "xdg-open");
    }
    words.add(address);
    return words;
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(file);
  }
}
