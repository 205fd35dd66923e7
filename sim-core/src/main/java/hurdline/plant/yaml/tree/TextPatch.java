package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.TextNode.ListNode;
import hurdline.plant.yaml.tree.TextNode.MapNode;
import hurdline.plant.yaml.tree.TextNode.Pair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts many values into a YAML text where they stand, all else left to the letter: comments,
 * spaces, order, line ends. Unlike {@link ValueEdit}, which one person watches, it writes values as
 * they are given, keeps several new keys of a map together, and replaces a block with what comments
 * stand in it.
 */
public final class TextPatch {
  private final String text;
  private final List<TextEdit> edits = new ArrayList<>();

  private TextPatch(String text) {
    this.text = text;
  }

  /**
   * The text with these values, each in one line, by path; what a path does not lead to yet is
   * added behind the last of its map.
   */
  public static String with(String text, Map<String, String> values) {
    TextPatch patch = new TextPatch(text);
    TextNode top = TextNodeReader.read(text);
    Map<TextNode, Map<String, Object>> added = new LinkedHashMap<>();
    values.forEach((path, value) -> patch.put(top, path, value, added));
    added.forEach(patch::add);
    return patch.edited();
  }

  private void put(
      TextNode top, String path, String value, Map<TextNode, Map<String, Object>> added) {
    List<String> steps = List.of(path.split("\\."));
    TextNode at = top;
    int depth = 0;
    Pair pair = null;
    while (depth < steps.size()
        && at instanceof MapNode map
        && map.at(steps.get(depth)).isPresent()) {
      pair = map.at(steps.get(depth)).get();
      at = pair.value();
      depth++;
    }
    if (depth == steps.size()) {
      edits.add(replacement(pair, value));
      return;
    }
    Map<String, Object> under = added.computeIfAbsent(at, node -> new LinkedHashMap<>());
    for (String step : steps.subList(depth, steps.size() - 1)) {
      under = inner(under, step);
    }
    under.put(steps.get(steps.size() - 1), value);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> inner(Map<String, Object> map, String key) {
    return (Map<String, Object>) map.computeIfAbsent(key, k -> new LinkedHashMap<String, Object>());
  }

  private TextEdit replacement(Pair pair, String value) {
    TextNode old = pair.value();
    boolean block = old instanceof MapNode map && !map.flow();
    if (block || old instanceof ListNode list && !list.flow()) {
      // A block begins on lines below its key; the value goes behind the key's colon.
      int colon = text.indexOf(':', pair.key().to()) + 1;
      return new TextEdit(colon, old.to(), " " + value);
    }
    return new TextEdit(old.from(), old.to(), value);
  }

  private void add(TextNode to, Map<String, Object> more) {
    if (!(to instanceof MapNode map) || map.pairs().isEmpty()) {
      throw new UnreadableException(
          SourcePosition.NOWHERE,
          "there is no map to add " + more.keySet() + " to",
          "a map with something in it");
    }
    Pair last = map.pairs().get(map.pairs().size() - 1);
    int end = last.value().to();
    if (map.flow()) {
      more.forEach(
          (key, value) -> edits.add(new TextEdit(end, end, ", " + key + ": " + flow(value))));
      return;
    }
    int line = text.indexOf('\n', end) < 0 ? text.length() : text.indexOf('\n', end);
    int at = line > 0 && text.charAt(line - 1) == '\r' ? line - 1 : line;
    int from = last.key().from();
    String indent = " ".repeat(from - (text.lastIndexOf('\n', from - 1) + 1));
    String lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
    more.forEach(
        (key, value) ->
            edits.add(new TextEdit(at, at, lineEnd + indent + key + ": " + flow(value))));
  }

  private static String flow(Object value) {
    if (!(value instanceof Map<?, ?> map)) {
      return value.toString();
    }
    List<String> entries = new ArrayList<>();
    map.forEach((key, inner) -> entries.add(key + ": " + flow(inner)));
    return "{" + String.join(", ", entries) + "}";
  }

  private String edited() {
    List<TextEdit> order = new ArrayList<>(edits);
    order.sort(Comparator.comparingInt(TextEdit::from));
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (TextEdit edit : order) {
      out.append(text, at, edit.from()).append(edit.with());
      at = edit.to();
    }
    return out.append(text.substring(at)).toString();
  }
}
