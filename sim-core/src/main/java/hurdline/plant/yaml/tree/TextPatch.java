package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts values into a YAML text where they stand, all else left to the letter: comments, spaces,
 * order, line ends.
 */
public final class TextPatch {
  private final String text;
  private final FileLines lines;
  private final List<Splice> splices = new ArrayList<>();

  private record Splice(int from, int to, String text) {}

  private TextPatch(String text) {
    this.text = text;
    this.lines = new FileLines(text);
  }

  /**
   * The text with these values, each in one line, by path; what a path does not lead to yet is
   * added behind the last of its map.
   *
   * @param tree what the text says
   */
  public static String with(String text, Tree tree, Map<String, String> values) {
    TextPatch patch = new TextPatch(text);
    Map<String, Map<String, Object>> added = new LinkedHashMap<>();
    values.forEach((path, value) -> patch.put(tree, path, value, added));
    added.forEach(
        (path, more) ->
            patch.add(path.isEmpty() ? Optional.of(tree) : Locator.value(tree, path), more));
    return patch.spliced();
  }

  private void put(Tree tree, String path, String value, Map<String, Map<String, Object>> added) {
    List<String> steps = List.of(path.split("\\."));
    Tree at = tree;
    int depth = 0;
    boolean inFlow = false;
    Entry entry = null;
    while (depth < steps.size()
        && at instanceof Entries map
        && map.map().containsKey(steps.get(depth))) {
      inFlow |= isFlow(at);
      entry = map.map().get(steps.get(depth));
      at = entry.value();
      depth++;
    }
    if (depth == steps.size()) {
      splices.add(replacement(entry, inFlow, value));
      return;
    }
    Map<String, Object> under =
        added.computeIfAbsent(
            String.join(".", steps.subList(0, depth)), p -> new LinkedHashMap<>());
    for (String step : steps.subList(depth, steps.size() - 1)) {
      under = inner(under, step);
    }
    under.put(steps.get(steps.size() - 1), value);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> inner(Map<String, Object> map, String key) {
    return (Map<String, Object>) map.computeIfAbsent(key, k -> new LinkedHashMap<String, Object>());
  }

  private Splice replacement(Entry entry, boolean inFlow, String value) {
    int end = end(entry.value(), inFlow);
    if (!isFlow(entry.value()) && !(entry.value() instanceof Scalar)) {
      // A block begins on lines below its key; the value goes behind the key's colon.
      int colon = text.indexOf(':', lines.offset(entry.keyPlace())) + 1;
      return new Splice(colon, end, " " + value);
    }
    return new Splice(lines.offset(entry.value().place()), end, value);
  }

  private void add(Optional<Tree> to, Map<String, Object> more) {
    if (!(to.orElse(null) instanceof Entries map) || map.map().isEmpty()) {
      throw new UnreadableException(
          SourcePosition.NOWHERE,
          "there is no map to add " + more.keySet() + " to",
          "a map with something in it");
    }
    Entry last =
        map.map().values().stream()
            .max(Comparator.comparingInt(entry -> lines.offset(entry.keyPlace())))
            .orElseThrow();
    boolean inFlow = isFlow(map);
    int end = end(last.value(), inFlow);
    if (inFlow) {
      more.forEach(
          (key, value) -> splices.add(new Splice(end, end, ", " + key + ": " + flow(value))));
      return;
    }
    int line = text.indexOf('\n', end) < 0 ? text.length() : text.indexOf('\n', end);
    int at = line > 0 && text.charAt(line - 1) == '\r' ? line - 1 : line;
    String indent = " ".repeat(last.keyPlace().column() - 1);
    String lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
    more.forEach(
        (key, value) ->
            splices.add(new Splice(at, at, lineEnd + indent + key + ": " + flow(value))));
  }

  private static String flow(Object value) {
    if (!(value instanceof Map<?, ?> map)) {
      return value.toString();
    }
    List<String> entries = new ArrayList<>();
    map.forEach((key, inner) -> entries.add(key + ": " + flow(inner)));
    return "{" + String.join(", ", entries) + "}";
  }

  private boolean isFlow(Tree tree) {
    int at = lines.offset(tree.place());
    boolean isMap = tree instanceof Entries && at < text.length() && text.charAt(at) == '{';
    return isMap || tree instanceof Items && at < text.length() && text.charAt(at) == '[';
  }

  /** The offset behind the last letter of a value. */
  private int end(Tree value, boolean inFlow) {
    int at = lines.offset(value.place());
    if (isFlow(value)) {
      return closing(at);
    }
    if (value instanceof Scalar) {
      return scalarEnd(at, inFlow);
    }
    Tree last =
        value instanceof Entries map
            ? map.map().values().stream()
                .map(Entry::value)
                .max(Comparator.comparingInt(v -> lines.offset(v.place())))
                .orElse(value)
            : ((Items) value)
                .list().stream()
                    .max(Comparator.comparingInt(v -> lines.offset(v.place())))
                    .orElse(value);
    return last == value ? at : end(last, false);
  }

  private int scalarEnd(int at, boolean inFlow) {
    char first = at < text.length() ? text.charAt(at) : '\n';
    if (first == '"' || first == '\'') {
      return quoteEnd(at);
    }
    int to = at;
    while (to < text.length() && text.charAt(to) != '\n' && text.charAt(to) != '\r') {
      char c = text.charAt(to);
      boolean ends =
          inFlow && (c == ',' || c == '}' || c == ']')
              || c == '#' && to > 0 && Character.isWhitespace(text.charAt(to - 1));
      if (ends) {
        break;
      }
      to++;
    }
    while (to > at && Character.isWhitespace(text.charAt(to - 1))) {
      to--;
    }
    return to;
  }

  private int quoteEnd(int at) {
    char quote = text.charAt(at);
    int to = at + 1;
    while (to < text.length() && text.charAt(to) != quote) {
      to += quote == '"' && text.charAt(to) == '\\' ? 2 : 1;
    }
    return Math.min(to + 1, text.length());
  }

  /** Behind the bracket that closes the one here; quoted texts and comments do not count. */
  private int closing(int from) {
    int open = 0;
    int at = from;
    while (at < text.length()) {
      char c = text.charAt(at);
      boolean isComment = c == '#' && Character.isWhitespace(text.charAt(at - 1));
      if (isComment) {
        at = text.indexOf('\n', at) < 0 ? text.length() : text.indexOf('\n', at);
        continue;
      }
      if ((c == '"' || c == '\'') && !Character.isLetterOrDigit(text.charAt(at - 1))) {
        at = quoteEnd(at);
        continue;
      }
      open += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
      at++;
      if (open == 0) {
        return at;
      }
    }
    return at;
  }

  private String spliced() {
    List<Splice> order = new ArrayList<>(splices);
    order.sort(Comparator.comparingInt(Splice::from));
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (Splice splice : order) {
      out.append(text, at, splice.from()).append(splice.text());
      at = splice.to();
    }
    return out.append(text.substring(at)).toString();
  }
}
