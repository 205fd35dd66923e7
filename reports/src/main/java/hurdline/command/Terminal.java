package hurdline.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Who watches: whether a person does, in which language, in colours or not, and in how many
 * columns.
 */
final class Terminal {
  private static final Path STREAMS = Path.of("/proc/self/fd");

  private static final Path TTY = Path.of("/dev/tty");
  private static final int NARROWEST = 60;
  private static final int USUAL = 80;
  private static final int WIDEST = 100;

  private Terminal() {}

  /** How wide a line may be where no terminal is that has a width. */
  static int usualColumns() {
    return USUAL;
  }

  /**
   * How wide a line on standard output may be: the terminal's width, but from 60 to 100 columns.
   */
  static int columns() {
    int said = columns(String.valueOf(System.getenv("COLUMNS")));
    return said > 0
        ? within(said)
        : isTerminal("1") && Files.isReadable(TTY) ? within(columns(sizeOfTerminal())) : USUAL;
  }

  /** The number that a text ends with; 0 where it has none. */
  static int columns(String said) {
    String last = said.strip().replaceFirst(".*\\s", "");
    return last.matches("[1-9]\\d{0,4}") ? Integer.parseInt(last) : 0;
  }

  static int within(int columns) {
    return columns <= 0 ? USUAL : Math.max(NARROWEST, Math.min(WIDEST, columns));
  }

  /**
   * {@code 24 80}: rows and columns of the terminal that this was called from, by the system's own
   * command.
   */
  private static String sizeOfTerminal() {
    try {
      Process size =
          new ProcessBuilder("stty", "size")
              .redirectInput(TTY.toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      String said = new String(size.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
      return size.waitFor() == 0 ? said : "";
    } catch (IOException none) {
      return "";
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      return "";
    }
  }

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

  /**
   * The system's locale; where that names no country, dates and numbers are those of the tables.
   */
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
