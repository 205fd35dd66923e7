package hurdline.plant.yaml;

import hurdline.unit.Base;
import hurdline.unit.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A type of the table of keys, as the reference says it and as JSON Schema does.
 *
 * <p>Quantities go by what they measure, such as {@code mass/time}; {@code , may vary} lets a
 * distribution stand there. Names in capitals are maps of the table; {@code "; "} stands between
 * kinds of values.
 */
final class KeyType {
  private static final Pattern MAP = Pattern.compile("map by \\w+ of (.*)");
  private static final Pattern LIST =
      Pattern.compile("list of (.*?)(, at least one)?(, each once)?");
  private static final Pattern PAIRS = Pattern.compile("pairs of (.*) and factor( from 0)?");
  private static final Pattern BARE = Pattern.compile("bare (whole )?number (from|above) ([0-9]+)");
  private static final Pattern SHAPES = Pattern.compile("[A-Z_]+( or [A-Z_]+)*");
  private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
  private static final Map<String, Object> VALUE =
      ordered("type", List.of("string", "number", "boolean"));
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  /** What stands as it is in the types, with its schema. */
  private static final Map<String, Object> PLAIN =
      Map.ofEntries(
          Map.entry("version 1", Map.of("const", 1)),
          Map.entry("date", ref("date")),
          Map.entry("clock time", ref("clock")),
          Map.entry(
              "clock time on a quarter-hour",
              ordered("allOf", List.of(ref("clock"), ordered("pattern", ":(00|15|30|45)$")))),
          Map.entry("name", ref("name")),
          Map.entry("title", ref("title")),
          Map.entry("as the value", ref("quantity")),
          Map.entry("share or as-is", ref("basis")),
          Map.entry("text", Map.of("type", "string")),
          Map.entry("path", Map.of("type", "string")),
          Map.entry("word", Map.of("type", "string")),
          Map.entry("value", VALUE),
          Map.entry("day", Map.of("enum", DAYS)),
          Map.entry("month", Map.of("enum", MONTHS)),
          Map.entry("code", ordered("type", "string", "pattern", "^[A-Z]{3}$")),
          Map.entry("patch", ordered("type", "object", "minProperties", 1)));

  private KeyType() {}

  /** Beside the choices stand two lists of combinations of their values. */
  private static Map<String, Object> combinations() {
    Object combination =
        ordered(
            "type",
            "object",
            "minProperties",
            1,
            "propertyNames",
            ref("name"),
            "additionalProperties",
            ordered("anyOf", List.of(VALUE, list(VALUE, true, true), ref("choice_range"))));
    return ordered(
        "never", list(combination, false, false), "keep", list(combination, false, false));
  }

  static Map<String, Object> ref(String name) {
    return ordered("$ref", "#/$defs/" + name);
  }

  static Map<String, Object> ordered(Object... keysAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int at = 0; at < keysAndValues.length; at += 2) {
      map.put((String) keysAndValues[at], keysAndValues[at + 1]);
    }
    return map;
  }

  /** As the tables of the reference say it. */
  static String phrase(String type) {
    String[] kinds = type.split("; ");
    return Stream.of(kinds)
        .map(kind -> phraseOf(kind, kinds.length > 1))
        .collect(Collectors.joining(", or "));
  }

  private static String phraseOf(String kind, boolean amongOthers) {
    Matcher list = LIST.matcher(kind);
    if (kind.startsWith("word: ")) {
      String words = kind.substring("word: ".length());
      return amongOthers && !words.contains(",") ? "`" + words + "`" : "word";
    }
    if (list.matches()) {
      return "list of " + (SHAPES.matcher(list.group(1)).matches() ? "maps" : list.group(1) + "s");
    }
    return kind.replaceAll(" of " + SHAPES + "$|^version ", "")
        .replaceAll("^map [A-Z_]+$|^patch$", "map")
        .replace("share or as-is", "share, or `as is`");
  }

  /** As a schema sees it. */
  static Object schema(String type) {
    List<Object> kinds = new ArrayList<>();
    for (String kind : type.split("; ")) {
      kinds.add(schemaOf(kind));
    }
    return kinds.size() == 1 ? kinds.get(0) : ordered("anyOf", kinds);
  }

  private static Object schemaOf(String kind) {
    Matcher map = MAP.matcher(kind);
    Matcher list = LIST.matcher(kind);
    Matcher pairs = PAIRS.matcher(kind);
    Matcher bare = BARE.matcher(kind);
    if (PLAIN.containsKey(kind)) {
      return PLAIN.get(kind);
    }
    if (kind.startsWith("word: ")) {
      List<String> words = List.of(kind.substring("word: ".length()).split(", "));
      return words.size() == 1 ? ordered("const", words.get(0)) : ordered("enum", words);
    }
    if (map.matches()) {
      Map<String, Object> byName =
          ordered(
              "type",
              "object",
              "propertyNames",
              kind.startsWith("map by month of ") ? ordered("enum", MONTHS) : ref("name"));
      if (map.group(1).equals("CHOICE")) {
        byName.put("properties", combinations());
      }
      byName.put("additionalProperties", schemaOf(map.group(1)));
      return byName;
    }
    if (list.matches()) {
      return list(schemaOf(list.group(1)), list.group(2) != null, list.group(3) != null);
    }
    if (pairs.matches()) {
      return pairs(schemaOf(pairs.group(1)), pairs.group(2) != null);
    }
    if (bare.matches()) {
      String number = bare.group(1) == null ? "number" : "integer";
      String least = bare.group(2).equals("from") ? "minimum" : "exclusiveMinimum";
      return ordered("type", number, least, Integer.parseInt(bare.group(3)));
    }
    if (SHAPES.matcher(kind.replaceFirst("^map ", "")).matches()) {
      return anyOf(
          Stream.of(kind.replaceFirst("^map ", "").split(" or "))
              .map(name -> ref(name.toLowerCase())));
    }
    return quantity(kind);
  }

  private static Object list(Object item, boolean atLeastOne, boolean eachOnce) {
    Map<String, Object> list = ordered("type", "array", "items", item);
    if (atLeastOne) {
      list.put("minItems", 1);
    }
    if (eachOnce) {
      list.put("uniqueItems", true);
    }
    return list;
  }

  private static Object pairs(Object first, boolean fromZero) {
    Object factor = ordered("type", "number", fromZero ? "minimum" : "exclusiveMinimum", 0);
    Object pair =
        ordered(
            "type",
            "array",
            "prefixItems",
            List.of(first, factor),
            "minItems",
            2,
            "maxItems",
            2,
            "items",
            false);
    return ordered("type", "array", "minItems", 1, "items", pair);
  }

  private static Object quantity(String kind) {
    if (kind.endsWith(" above 0")) {
      String bare = kind.substring(0, kind.length() - " above 0".length());
      return ordered("allOf", List.of(quantity(bare), ref("above_zero")));
    }
    boolean varies = kind.endsWith(", may vary");
    String[] measured = kind.replace(", may vary", "").split(" or ");
    Stream<Object> fixed =
        Stream.of(measured).map(name -> ref(dimension(name).name().toLowerCase() + "_quantity"));
    return anyOf(varies ? Stream.concat(fixed, Stream.of(ref("distribution"))) : fixed);
  }

  private static Dimension dimension(String name) {
    return Stream.of(Dimension.values())
        .filter(one -> measures(one, List.of(name.split("/"))))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("\"" + name + "\" is no type of the table of keys"));
  }

  /** Whatever the order of what it is divided by. */
  private static boolean measures(Dimension dimension, List<String> names) {
    List<String> bases =
        dimension.bases().stream().map(Base::name).map(String::toLowerCase).toList();
    return bases.get(0).equals(names.get(0))
        && bases.stream().sorted().toList().equals(names.stream().sorted().toList());
  }

  private static Object anyOf(Stream<?> kinds) {
    List<?> all = kinds.toList();
    return all.size() == 1 ? all.get(0) : ordered("anyOf", all);
  }
}
