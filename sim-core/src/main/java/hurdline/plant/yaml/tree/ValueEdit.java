package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.TextNode.AliasNode;
import hurdline.plant.yaml.tree.TextNode.ListNode;
import hurdline.plant.yaml.tree.TextNode.MapNode;
import hurdline.plant.yaml.tree.TextNode.Pair;
import hurdline.plant.yaml.tree.TextNode.Word;
import java.util.List;
import java.util.Optional;

/**
 * Finds the edit that sets one value of a YAML text or takes it away, so that comments, spaces,
 * order and line ends stay.
 *
 * <p>What it finds is only as good as it looks: whoever applies it reads the new text and compares
 * what it says with what it should.
 */
public final class ValueEdit {
  private static final int STEP = 2;
  private static final String IN_THE_TEXT = "the change to be made in the text";

  private final String text;
  private final String path;
  private final List<String> steps;
  private final String lineEnd;

  private ValueEdit(String text, String path) {
    this.text = text;
    this.path = path;
    this.steps = List.of(path.split("\\.", -1));
    this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
  }

  /**
   * The edit that sets a value.
   *
   * @param path keys and places joined by dots
   * @param value YAML in one line
   * @throws UnreadableException if it cannot be done without harm to something else
   */
  public static TextEdit setting(String text, String path, String value) {
    return new ValueEdit(text, path).set(TextNodeReader.read(text), value);
  }

  /**
   * The edit that takes a key away.
   *
   * @throws UnreadableException as of {@link #setting}
   */
  public static TextEdit removal(String text, String path) {
    ValueEdit edit = new ValueEdit(text, path);
    return edit.removed(TextNodeReader.read(text));
  }

  /** A text that somebody has typed, as YAML that says just this; maps and lists as they are. */
  public static String word(String typed) {
    boolean quotes = typed.startsWith("\"") || typed.startsWith("'");
    return quotes || YamlWord.isStructured(typed) && !isYaml(typed)
        ? YamlWord.quoted(typed)
        : YamlWord.written(typed, true);
  }

  private static boolean isYaml(String value) {
    try {
      TextNode node = TextNodeReader.read(value);
      return node.to() == value.length();
    } catch (UnreadableException e) {
      return false;
    }
  }

  private TextEdit set(TextNode top, String value) {
    TextNode at = top;
    boolean inFlow = false;
    for (int depth = 0; depth < steps.size() - 1; depth++) {
      inFlow |= isFlow(at);
      Optional<TextNode> next = inner(at, depth);
      if (next.isEmpty() || next.get() instanceof Word word && word.isEmpty()) {
        return added((MapNode) at, depth, inFlow, value);
      }
      at = next.get();
    }
    inFlow |= isFlow(at);
    int last = steps.size() - 1;
    if (inner(at, last).isEmpty()) {
      return added((MapNode) at, last, inFlow, value);
    }
    if (at instanceof MapNode map
        && map.at(steps.get(last)).orElseThrow().value() instanceof Word w
        && w.isEmpty()) {
      int colon = colon(map.at(steps.get(last)).orElseThrow());
      return new TextEdit(colon, colon, " " + YamlWord.written(value, inFlow));
    }
    return replaced(inner(at, last).orElseThrow(), inFlow, value);
  }

  private static boolean isFlow(TextNode node) {
    return node instanceof MapNode map && map.flow()
        || node instanceof ListNode list && list.flow();
  }

  /** What stands at a step; empty where a map does not have it yet. */
  private Optional<TextNode> inner(TextNode at, int depth) {
    String step = steps.get(depth);
    if (at instanceof MapNode map) {
      return map.at(step).map(Pair::value);
    }
    if (at instanceof ListNode list) {
      return Optional.of(
          list.at(step)
              .orElseThrow(
                  () -> refuse("\"" + step + "\" is no place in the list", "a place in it")));
    }
    if (at instanceof AliasNode alias) {
      throw refuse(
          upTo(depth) + " repeats what \"&" + alias.anchor() + "\" names",
          "the change where it is first said");
    }
    throw refuse(upTo(depth) + " holds one value", "a path that ends there");
  }

  private TextEdit replaced(TextNode old, boolean inFlow, String value) {
    refuseComments(old.from(), old.to());
    if (old instanceof Word word && word.style() == TextNode.Style.QUOTED) {
      boolean bare = !YamlWord.isStructured(value);
      return new TextEdit(old.from(), old.to(), bare ? YamlWord.quoted(value) : value);
    }
    boolean block = old instanceof MapNode || old instanceof ListNode;
    if (block && !isFlow(old)) {
      // A block begins on a line of its own; what takes its place stands behind the colon.
      int colon = text.lastIndexOf(':', old.from()) + 1;
      return new TextEdit(colon, old.to(), " " + YamlWord.written(value, false));
    }
    return new TextEdit(old.from(), old.to(), YamlWord.written(value, inFlow));
  }

  /** A key that was not there, with all that leads to it. */
  private TextEdit added(MapNode map, int depth, boolean inFlow, String value) {
    String key = steps.get(depth);
    List<String> further = steps.subList(depth + 1, steps.size());
    Optional<Pair> empty = map.at(key);
    if (empty.isPresent()) {
      int colon = colon(empty.get());
      return new TextEdit(colon, colon, " " + flow(further, value));
    }
    String said = key + ": " + flow(further, value);
    if (map.flow() && map.pairs().isEmpty()) {
      return new TextEdit(map.from(), map.to(), "{" + said + "}");
    }
    if (map.flow()) {
      int end = map.pairs().get(map.pairs().size() - 1).value().to();
      return new TextEdit(end, end, ", " + said);
    }
    int indent = map.pairs().isEmpty() ? 0 : column(map.pairs().get(0).key().from());
    int end = endOfLine(map.to());
    return new TextEdit(
        end, end, lineEnd + " ".repeat(indent) + key + ":" + block(further, value, indent, inFlow));
  }

  /** A map of several keys gets a line for each, so that it reads like its neighbors. */
  private String block(List<String> further, String value, int indent, boolean inFlow) {
    boolean big = further.isEmpty() && value.startsWith("{") && indent <= STEP;
    if (big && TextNodeReader.read(value) instanceof MapNode map && map.pairs().size() > 1) {
      StringBuilder lines = new StringBuilder();
      for (Pair pair : map.pairs()) {
        lines
            .append(lineEnd)
            .append(" ".repeat(indent + STEP))
            .append(value, pair.key().from(), pair.key().to())
            .append(": ")
            .append(value, pair.value().from(), pair.value().to());
      }
      return lines.toString();
    }
    return " " + (further.isEmpty() ? YamlWord.written(value, inFlow) : flow(further, value));
  }

  private static String flow(List<String> further, String value) {
    return further.isEmpty()
        ? YamlWord.written(value, true)
        : "{" + further.get(0) + ": " + flow(further.subList(1, further.size()), value) + "}";
  }

  private TextEdit removed(TextNode top) {
    TextNode at = top;
    for (int depth = 0; depth < steps.size() - 1; depth++) {
      at = inner(at, depth).orElseThrow(this::nothing);
    }
    String key = steps.get(steps.size() - 1);
    if (!(at instanceof MapNode map)) {
      throw nothing();
    }
    Pair pair = map.at(key).orElseThrow(this::nothing);
    int place = map.pairs().indexOf(pair);
    refuseComments(pair.key().from(), pair.value().to());
    if (map.flow()) {
      boolean last = place == map.pairs().size() - 1;
      int from = place > 0 && last ? map.pairs().get(place - 1).value().to() : pair.key().from();
      int to = last ? pair.value().to() : map.pairs().get(place + 1).key().from();
      return new TextEdit(from, to, "");
    }
    int from = pair.key().from() - column(pair.key().from());
    int end = endOfLine(pair.value().to());
    return new TextEdit(from, Math.min(text.length(), end + lineEnd.length()), "");
  }

  /** A comment inside of what goes would be lost. */
  private void refuseComments(int from, int to) {
    String goes = text.substring(from, to);
    boolean quoted = goes.startsWith("\"") || goes.startsWith("'");
    if (!quoted && goes.lines().anyMatch(line -> line.matches("(^|.*\\s)#.*"))) {
      throw refuse("there is a comment inside of what would be replaced", IN_THE_TEXT);
    }
  }

  private int colon(Pair pair) {
    return text.indexOf(':', pair.key().to()) + 1;
  }

  private int endOfLine(int at) {
    int end = at;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  private int column(int at) {
    return at - (text.lastIndexOf('\n', at - 1) + 1);
  }

  private String upTo(int depth) {
    return depth == 0 ? "the text" : String.join(".", steps.subList(0, depth));
  }

  private UnreadableException nothing() {
    return refuse("there is no " + path + " to take away", "a key that stands in the text");
  }

  private static UnreadableException refuse(String said, String expected) {
    return new UnreadableException(SourcePosition.NOWHERE, said, expected);
  }
}
