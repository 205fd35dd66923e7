package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.TextNode.ListNode;
import hurdline.plant.yaml.tree.TextNode.MapNode;
import hurdline.plant.yaml.tree.TextNode.Pair;
import hurdline.plant.yaml.tree.TextNode.Word;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where in a YAML text somebody's cursor stands, though the text may be half written.
 *
 * <p>The word at the cursor is put aside, a mark takes its place, and the parser that reads files
 * reads this too: first the whole text, then, where that cannot be read, what stands before the
 * cursor with its brackets closed. So lists, blocks and braces are told from each other by the same
 * rules as ever.
 */
public final class TextCursor {
  private static final String MARK = "Q_Q";

  private final List<String> path;
  private final boolean isValue;
  private final List<String> taken;
  private final TextNode top;

  private TextCursor(List<String> path, boolean isValue, List<String> taken, TextNode top) {
    this.path = path;
    this.isValue = isValue;
    this.taken = taken;
    this.top = top;
  }

  /**
   * A place where something is about to be typed; empty where what comes before cannot be read.
   *
   * @param offset in characters from the top
   */
  public static Optional<TextCursor> at(String text, int offset) {
    int from = offset;
    while (from > 0 && isOfWord(text.charAt(from - 1))) {
      from--;
    }
    int to = offset;
    while (to < text.length() && isOfWord(text.charAt(to))) {
      to++;
    }
    String before = text.substring(0, from);
    Deque<Character> open = open(before);
    StringBuilder close = new StringBuilder();
    open.forEach(bracket -> close.append(bracket == '{' ? '}' : ']'));
    String rest = text.substring(to);
    boolean inList = !open.isEmpty() && open.peek() == '[';
    boolean isKey = rest.matches("(?s) *:(\\s.*)?");
    Stream<String> tries =
        isKey
            ? Stream.of(before + MARK + rest, before + MARK + ": 0" + close)
            : inList
                ? Stream.of(before + MARK + rest, before + MARK + close)
                : Stream.of(
                    before + MARK + ": 0" + rest,
                    before + MARK + rest,
                    before + MARK + ": 0" + close,
                    before + MARK + close);
    return tries.flatMap(one -> found(one).stream()).findFirst();
  }

  /** The key whose name an offset lies in; empty where it lies in none. */
  public static Optional<TextCursor> ofKey(String text, int offset) {
    try {
      TextNode top = TextNodeReader.read(text);
      List<String> path = new ArrayList<>();
      return keyAt(top, offset, path)
          ? Optional.of(new TextCursor(path, false, List.of(), top))
          : Optional.empty();
    } catch (UnreadableException half) {
      return Optional.empty();
    }
  }

  /** Of the map in whose keys it stands, or of the value; of a key, the key included. */
  public List<String> path() {
    return path;
  }

  /** Whether a value is due, and not a key. */
  public boolean isValue() {
    return isValue;
  }

  /** Keys that the map has already. */
  public List<String> taken() {
    return taken;
  }

  /** The keys of the map at a path, or the words of the list; none where there is neither. */
  public List<String> namesAt(String where) {
    Optional<TextNode> node = nodeAt(where);
    if (node.orElse(null) instanceof MapNode map) {
      return map.pairs().stream()
          .map(pair -> pair.key().text())
          .filter(n -> !n.equals(MARK))
          .toList();
    }
    if (node.orElse(null) instanceof ListNode list) {
      return list.items().stream()
          .filter(Word.class::isInstance)
          .map(item -> ((Word) item).text())
          .toList();
    }
    return List.of();
  }

  /** The word at a path; empty where there is none. */
  public String wordAt(String where) {
    return nodeAt(where).orElse(null) instanceof Word word ? word.text() : "";
  }

  private Optional<TextNode> nodeAt(String where) {
    Optional<TextNode> at = Optional.of(top);
    for (String step : where.split("\\.")) {
      at = at.flatMap(node -> inner(node, step));
    }
    return at;
  }

  private static Optional<TextNode> inner(TextNode node, String step) {
    if (node instanceof MapNode map) {
      return map.at(step).map(Pair::value);
    }
    return node instanceof ListNode list ? list.at(step) : Optional.empty();
  }

  private static Optional<TextCursor> found(String marked) {
    try {
      TextNode top = TextNodeReader.read(marked);
      return new Search(top).cursor();
    } catch (UnreadableException | StringIndexOutOfBoundsException wrong) {
      return Optional.empty(); // a key cannot stand here, or nothing can
    }
  }

  /** Looks for the mark. */
  private static final class Search {
    private final TextNode top;
    private final List<String> path = new ArrayList<>();
    private List<String> taken = List.of();
    private boolean isValue;

    Search(TextNode top) {
      this.top = top;
    }

    Optional<TextCursor> cursor() {
      return isIn(top)
          ? Optional.of(new TextCursor(List.copyOf(path), isValue, taken, top))
          : Optional.empty();
    }

    private boolean isIn(TextNode node) {
      if (node instanceof Word word) {
        isValue = word.text().equals(MARK);
        return isValue;
      }
      if (node instanceof MapNode map) {
        return isInMap(map);
      }
      if (node instanceof ListNode list) {
        for (int i = 0; i < list.items().size(); i++) {
          if (isIn(list.items().get(i), Integer.toString(i))) {
            return true;
          }
        }
      }
      return false;
    }

    private boolean isInMap(MapNode map) {
      for (Pair pair : map.pairs()) {
        if (pair.key().text().equals(MARK)) {
          taken =
              map.pairs().stream()
                  .filter(other -> other != pair)
                  .map(other -> other.key().text())
                  .toList();
          return true;
        }
        if (isIn(pair.value(), pair.key().text())) {
          return true;
        }
      }
      return false;
    }

    private boolean isIn(TextNode node, String step) {
      path.add(step);
      boolean found = isIn(node);
      if (!found) {
        path.remove(path.size() - 1);
      }
      return found;
    }
  }

  private static boolean keyAt(TextNode node, int offset, List<String> path) {
    if (node instanceof MapNode map) {
      for (Pair pair : map.pairs()) {
        path.add(pair.key().text());
        boolean on = pair.key().from() <= offset && offset < pair.key().to();
        if (on || keyAt(pair.value(), offset, path)) {
          return true;
        }
        path.remove(path.size() - 1);
      }
    }
    if (node instanceof ListNode list) {
      for (int i = 0; i < list.items().size(); i++) {
        path.add(Integer.toString(i));
        if (keyAt(list.items().get(i), offset, path)) {
          return true;
        }
        path.remove(path.size() - 1);
      }
    }
    return false;
  }

  private static boolean isOfWord(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '-' || c == '.';
  }

  /** Brackets that are open at the end, the innermost first. */
  private static Deque<Character> open(String text) {
    Deque<Character> open = new ArrayDeque<>();
    char quote = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '#' && (i == 0 || Character.isWhitespace(text.charAt(i - 1)))) {
        int end = text.indexOf('\n', i);
        i = end < 0 ? text.length() : end;
      } else if ((c == '"' || c == '\'') && i > 0 && " [{,:".indexOf(text.charAt(i - 1)) >= 0) {
        quote = c;
      } else if (c == '{' || c == '[') {
        open.push(c);
      } else if ((c == '}' || c == ']') && !open.isEmpty()) {
        open.pop();
      }
    }
    return open;
  }
}
