package hurdline.command;

import picocli.CommandLine.Help.Ansi;

/** Bold and colours on a terminal that shows them, else the plain text. */
final class AnsiStyle {
  private static final String BOLD = "\u001b[1m";
  private static final String YELLOW = "\u001b[33m";
  private static final String PLAIN = "\u001b[0m";

  private final boolean inColour;

  AnsiStyle(boolean inColour) {
    this.inColour = inColour;
  }

  String bold(String text) {
    return inColour ? BOLD + text + PLAIN : text;
  }

  String warning(String text) {
    return inColour ? YELLOW + text + PLAIN : text;
  }

  /** The name that a line begins with, up to its colon, stands out. */
  String head(String line) {
    int colon = line.indexOf(": ");
    boolean named = colon > 0 && !line.startsWith(" ") && line.indexOf(' ') > colon;
    return named ? bold(line.substring(0, colon + 1)) + line.substring(colon + 1) : line;
  }

  /** For help pages. */
  Ansi ansi() {
    return inColour ? Ansi.ON : Ansi.OFF;
  }
}
