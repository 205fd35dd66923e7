package hurdline.plant.yaml.tree;

import java.util.ArrayDeque;
import java.util.Deque;

/** Follows brackets, quotation marks and comments through a text, to say which is left open. */
final class EnclosedFile {
  private static final String OPENING = "[{";
  private static final String CLOSING = "]}";

  private final String text;
  private final Deque<Integer> open = new ArrayDeque<>();
  private int at;
  private int quoteFrom = -1;
  private int quoteTo = -1;
  private int wrongFrom = -1;
  private int extra = -1;

  private EnclosedFile(String text, int from) {
    this.text = text;
    this.at = from;
  }

  /** What becomes of the bracket that opens at a place. */
  static EnclosedFile bracket(String text, int opening) {
    EnclosedFile enclosed = new EnclosedFile(text, opening);
    do {
      enclosed.step();
    } while (!enclosed.open.isEmpty()
        && enclosed.wrongFrom < 0
        && enclosed.extra < 0
        && enclosed.at < text.length());
    return enclosed;
  }

  /** What is open, and what was quoted last, at a place of the text. */
  static EnclosedFile upTo(String text, int to) {
    EnclosedFile enclosed = new EnclosedFile(text, 0);
    while (enclosed.at < to) {
      enclosed.step();
    }
    return enclosed;
  }

  /**
   * Where the innermost bracket opens that is never closed, or is closed by one of the other kind;
   * -1 if all are.
   */
  int leftOpen() {
    return wrongFrom >= 0 ? wrongFrom : open.isEmpty() ? -1 : open.peek();
  }

  /** Where a bracket closes that none has opened; -1 if none does. */
  int extra() {
    return extra;
  }

  /** Where the last quoted text begins; -1 if there is none. */
  int quoteFrom() {
    return quoteFrom;
  }

  /** Where the last quoted text ends, its mark included. */
  int quoteTo() {
    return quoteTo;
  }

  private void step() {
    char c = text.charAt(at);
    if (c == '#' && (at == 0 || Character.isWhitespace(text.charAt(at - 1)))) {
      while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
        at++;
      }
      return;
    }
    if ((c == '"' || c == '\'') && beginsAValue()) {
      quote(c);
      return;
    }
    if (OPENING.indexOf(c) >= 0 && (!open.isEmpty() || beginsAValue())) {
      open.push(at);
    } else if (CLOSING.indexOf(c) >= 0 && !open.isEmpty()) {
      close(c);
    }
    at++;
  }

  private void close(char c) {
    if (OPENING.indexOf(text.charAt(open.peek())) == CLOSING.indexOf(c)) {
      open.pop();
    } else if (isClosedInThisLine(text.charAt(open.peek()))) {
      extra = at;
    } else {
      wrongFrom = open.peek();
    }
  }

  private boolean isClosedInThisLine(char opening) {
    int end = text.indexOf('\n', at);
    String rest = text.substring(at, end < 0 ? text.length() : end);
    return rest.indexOf(CLOSING.charAt(OPENING.indexOf(opening))) >= 0;
  }

  private void quote(char mark) {
    quoteFrom = at++;
    while (at < text.length() && text.charAt(at) != mark) {
      at += mark == '"' && text.charAt(at) == '\\' ? 2 : 1;
    }
    at = Math.min(at + 1, text.length());
    quoteTo = at;
  }

  /**
   * Whether a value may begin here; within one a bracket or a mark is a character like any other.
   */
  private boolean beginsAValue() {
    int before = at - 1;
    while (before >= 0 && text.charAt(before) == ' ') {
      before--;
    }
    if (before < 0) {
      return true;
    }
    char c = text.charAt(before);
    boolean spaced = before < at - 1;
    return "[{,\n\r".indexOf(c) >= 0 || (c == ':' || c == '-') && (spaced || c == ':');
  }
}
