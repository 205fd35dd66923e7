package hurdline.combined;

import hurdline.sample.PlainYaml;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.regex.Pattern;

/** A plant file as maps, lists and texts, which a test changes and writes again. */
final class PlantTree {
  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9_.+/%*$-][A-Za-z0-9_.+/%*$ -]*");

  private final Map<String, Object> file;

  private PlantTree(Map<String, Object> file) {
    this.file = file;
  }

  static PlantTree of(String text) {
    return new PlantTree(PlainYaml.of(text));
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(Object of) {
    return (Map<String, Object>) of;
  }

  PlantTree copy() {
    return new PlantTree(map(mapped("", file, (key, text) -> text)));
  }

  /** What stands at a path; null where nothing does. */
  Object at(String path) {
    Object found = file;
    for (String key : path.split("\\.")) {
      if (found instanceof Map<?, ?> inner) {
        found = inner.get(key);
      } else if (found instanceof List<?> list && Integer.parseInt(key) < list.size()) {
        found = list.get(Integer.parseInt(key));
      } else {
        return null;
      }
    }
    return found;
  }

  boolean has(String path) {
    return at(path) != null;
  }

  /** A text; empty where there is none. */
  String text(String path) {
    return at(path) instanceof String text ? text : "";
  }

  List<String> names(String path) {
    return at(path) instanceof Map<?, ?> inner
        ? inner.keySet().stream().map(Object::toString).toList()
        : List.of();
  }

  @SuppressWarnings("unchecked")
  List<Object> list(String path) {
    return at(path) instanceof List<?> list ? (List<Object>) list : new ArrayList<>();
  }

  /** With a merge patch (RFC 7396). */
  PlantTree with(String patch) {
    return new PlantTree(merged(copy().file, PlainYaml.of(patch)));
  }

  private static Map<String, Object> merged(Map<String, Object> base, Map<String, Object> patch) {
    Map<String, Object> result = new LinkedHashMap<>(base);
    patch.forEach(
        (key, value) -> {
          if (value == null) {
            result.remove(key);
          } else if (value instanceof Map<?, ?> inner) {
            Map<String, Object> old =
                result.get(key) instanceof Map<?, ?> there ? map(there) : Map.of();
            result.put(key, merged(old, map(inner)));
          } else {
            result.put(key, value);
          }
        });
    return result;
  }

  /** With every text as it is said; it is given the path and the text. */
  PlantTree mapped(BiFunction<String, String, String> change) {
    return new PlantTree(map(mapped("", file, change)));
  }

  private static Object mapped(
      String path, Object node, BiFunction<String, String, String> change) {
    if (node instanceof Map<?, ?> inner) {
      Map<String, Object> result = new LinkedHashMap<>();
      inner.forEach(
          (key, value) -> result.put((String) key, mapped(path + key + ".", value, change)));
      return result;
    }
    if (node instanceof List<?> list) {
      List<Object> result = new ArrayList<>();
      for (int at = 0; at < list.size(); at++) {
        result.add(mapped(path + at + ".", list.get(at), change));
      }
      return result;
    }
    return node instanceof String text ? change.apply(path, text) : node;
  }

  /** With the keys in another order wherever a map's path fits. */
  PlantTree shuffled(Random random, Pattern where) {
    return new PlantTree(map(shuffled("", file, random, where)));
  }

  private static Object shuffled(String path, Object node, Random random, Pattern where) {
    if (node instanceof Map<?, ?> inner) {
      List<String> keys = new ArrayList<>(map(inner).keySet());
      if (where.matcher(path).matches()) {
        Collections.shuffle(keys, random);
      }
      Map<String, Object> result = new LinkedHashMap<>();
      keys.forEach(
          key -> result.put(key, shuffled(path + key + ".", inner.get(key), random, where)));
      return result;
    }
    if (node instanceof List<?> list) {
      return list.stream().map(value -> shuffled(path + "[].", value, random, where)).toList();
    }
    return node;
  }

  /** The text of the file, a line for each thing in a section. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    file.forEach(
        (key, value) -> {
          if (value instanceof Map<?, ?> inner && !inner.isEmpty()) {
            text.append(key).append(":\n");
            inner.forEach(
                (name, of) ->
                    text.append("  ").append(name).append(": ").append(flow(of)).append('\n'));
          } else {
            text.append(key).append(": ").append(flow(value)).append('\n');
          }
        });
    return text.toString();
  }

  static String flow(Object node) {
    StringBuilder text = new StringBuilder();
    if (node instanceof Map<?, ?> inner) {
      inner.forEach(
          (key, value) ->
              text.append(text.isEmpty() ? "" : ", ").append(key).append(": ").append(flow(value)));
      return "{" + text + "}";
    }
    if (node instanceof List<?> list) {
      list.forEach(value -> text.append(text.isEmpty() ? "" : ", ").append(flow(value)));
      return "[" + text + "]";
    }
    if (node == null) {
      return "null";
    }
    String plain = node.toString();
    return PLAIN.matcher(plain).matches() && !plain.startsWith("- ") && !plain.endsWith(" ")
        ? plain
        : "\"" + plain.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
