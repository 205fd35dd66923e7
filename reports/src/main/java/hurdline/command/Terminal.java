package hurdline.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether a person watches standard error. */
final class Terminal {
  private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

  private Terminal() {}

  static boolean isThere() {
    if (!Files.exists(STANDARD_ERROR.getParent())) {
      // Newer Javas have a console even where there is no terminal, so this alone would not do.
      return System.console() != null && System.getenv("TERM") != null;
    }
    try {
      String device = Files.readSymbolicLink(STANDARD_ERROR).toString();
      return device.startsWith("/dev/pts/")
          || device.startsWith("/dev/tty")
          || device.equals("/dev/console");
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }
}
