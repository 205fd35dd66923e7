package hurdline.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Who watches: whether a person does, in which language, and in colours or not. */
final class Terminal {
  private static final Path STREAMS = Path.of("/proc/self/fd");

  private Terminal() {}

  /** Whether a person watches standard error. */
  static boolean isThere() {
    return isTerminal("2");
  }

  /**
   * Whether standard output is a terminal that shows colours, and nobody has asked for none.
   *
   * @see "no-color.org: NO_COLOR set to anything but the empty text asks for none"
   */
  static boolean showsColours() {
    String none = System.getenv("NO_COLOR");
    boolean wanted = none == null || none.isEmpty();
    return wanted && !"dumb".equals(System.getenv("TERM")) && isTerminal("1");
  }

  /** The system's locale; where that names no country, dates and numbers are those of the tables. */
  static Locale locale() {
    Locale locale = Locale.getDefault(Locale.Category.FORMAT);
    return locale.getCountry().isEmpty() ? Locale.ROOT : locale;
  }

  private static boolean isTerminal(String stream) {
    if (!Files.exists(STREAMS)) {
      // Newer Javas have a console even where there is no terminal, so this alone would not do.
      return System.console() != null && System.getenv("TERM") != null;
    }
    try {
      String device = Files.readSymbolicLink(STREAMS.resolve(stream)).toString();
      return device.startsWith("/dev/pts/")
          || device.startsWith("/dev/tty")
          || device.equals("/dev/console");
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }
}
