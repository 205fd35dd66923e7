package hurdline.command;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines broken at so many columns. What goes on under a line stands where its text began: behind
 * the label of an indented line, else two columns further in.
 */
final class LineWrapper {
  private static final int RAGGED = 20;

  private LineWrapper() {}

  static List<String> broken(String line, int width) {
    String indent = " ".repeat(textBegins(line, width));
    List<String> lines = new ArrayList<>();
    String rest = line;
    while (rest.length() > width) {
      int at = gap(rest, indent.length(), width);
      if (at < 0) {
        break;
      }
      lines.add(rest.substring(0, at).stripTrailing());
      rest = indent + rest.substring(at + 1);
    }
    lines.add(rest);
    return lines;
  }

  /**
   * Behind the last comma or semicolon that has not much room behind it, else where it hurts least.
   */
  private static int gap(String text, int indent, int width) {
    for (int at = width; at > width - RAGGED; at--) {
      if (text.charAt(at) == ' ' && ",;:".indexOf(text.charAt(at - 1)) >= 0) {
        return at;
      }
    }
    for (int at = width; at > Math.max(indent, width - 2 * RAGGED); at--) {
      if (text.charAt(at) == ' ' && !isTied(text, at)) {
        return at;
      }
    }
    int at = text.lastIndexOf(' ', width);
    return at > indent ? at : text.indexOf(' ', width);
  }

  /** A number stays with its unit, and what is in brackets together. */
  private static boolean isTied(String text, int at) {
    return Character.isDigit(text.charAt(at - 1))
        || text.lastIndexOf('(', at) > text.lastIndexOf(')', at);
  }

  /** Behind two blanks that follow a label, as in {@code " made lint"}. */
  private static int textBegins(String line, int width) {
    int label = 0;
    while (label < line.length() && line.charAt(label) == ' ') {
      label++;
    }
    int gap = line.indexOf("  ", label);
    if (gap < 0 || gap > width / 4) {
      return label + 2;
    }
    int text = gap;
    while (text < line.length() && line.charAt(text) == ' ') {
      text++;
    }
    return text;
  }
}
