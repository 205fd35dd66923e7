package hurdline.command;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines broken at 80 columns. What goes on under a line stands where its text began: behind the
 * label of an indented line, else two columns in.
 */
final class Column {
  private static final int WIDTH = 80;
  private static final int RAGGED = 20;

  private Column() {}

  static List<String> broken(String line) {
    String indent = " ".repeat(textBegins(line));
    List<String> lines = new ArrayList<>();
    String rest = line;
    while (rest.length() > WIDTH) {
      int at = gap(rest, indent.length());
      if (at < 0) {
        break;
      }
      lines.add(rest.substring(0, at).stripTrailing());
      rest = indent + rest.substring(at + 1);
    }
    lines.add(rest);
    return lines;
  }

  /** Behind the last comma or semicolon that has not much room behind it, else at the last blank. */
  private static int gap(String text, int indent) {
    for (int at = WIDTH; at > WIDTH - RAGGED; at--) {
      if (text.charAt(at) == ' ' && ",;:".indexOf(text.charAt(at - 1)) >= 0) {
        return at;
      }
    }
    int at = text.lastIndexOf(' ', WIDTH);
    return at > indent ? at : text.indexOf(' ', WIDTH);
  }

  /** Behind two blanks that follow a label, as in {@code "  made      lint"}. */
  private static int textBegins(String line) {
    int label = 0;
    while (label < line.length() && line.charAt(label) == ' ') {
      label++;
    }
    int gap = line.indexOf("  ", label);
    if (gap < 0 || gap > WIDTH / 4) {
      return 2;
    }
    int text = gap;
    while (text < line.length() && line.charAt(text) == ' ') {
      text++;
    }
    return text;
  }
}
