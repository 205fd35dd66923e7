package hurdline.plant.yaml.tree;

import hurdline.unit.Amount;
import java.util.OptionalInt;

/** The lines of a text as somebody sees them in an editor. */
final class FileLines {
  private final String text;
  private final String[] lines;

  FileLines(String text) {
    this.text = text;
    this.lines = text.split("\\r\\n|[\\n\\r\\u0085\\u2028\\u2029]", -1);
  }

  String text() {
    return text;
  }

  /**
   * A line without its end; empty where there is none.
   *
   * @param number from 1
   */
  String line(int number) {
    return number >= 1 && number <= lines.length ? lines[number - 1] : "";
  }

  /** The last line before this one that says something; 0 where none does. */
  int before(int number) {
    int at = Math.min(number, lines.length + 1) - 1;
    while (at >= 1 && (line(at).isBlank() || line(at).stripLeading().startsWith("#"))) {
      at--;
    }
    return Math.max(at, 0);
  }

  /** How far a line is indented. */
  static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }

  /** Where the character at a spot lies in the text. */
  int offset(SourcePosition spot) {
    int at = 0;
    for (int line = 1; line < spot.line() && line <= lines.length; line++) {
      at += lines[line - 1].length();
      at += text.startsWith("\r\n", at) ? 2 : 1;
    }
    String line = line(spot.line());
    int column = Math.min(spot.column() - 1, line.codePointCount(0, line.length()));
    return Math.min(at + line.offsetByCodePoints(0, column), text.length());
  }

  /** The spot of a character of the text. */
  SourcePosition spot(int offset) {
    int line = 1;
    int begin = 0;
    while (line < lines.length) {
      int next = begin + lines[line - 1].length();
      next += text.startsWith("\r\n", next) ? 2 : 1;
      if (next > offset) {
        break;
      }
      begin = next;
      line++;
    }
    return new SourcePosition(
        line, text.codePointCount(begin, Math.min(offset, text.length())) + 1);
  }

  /** Where the line holds a space that is none to a program; nowhere if it holds none. */
  SourcePosition oddSpace(int number) {
    OptionalInt found = Amount.oddSpace(line(number));
    return found.isPresent()
        ? new SourcePosition(number, line(number).codePointCount(0, found.getAsInt()) + 1)
        : SourcePosition.NOWHERE;
  }
}
