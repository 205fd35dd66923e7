package hurdline.plant.yaml;

import static hurdline.plant.yaml.KeyType.ordered;
import static hurdline.plant.yaml.KeyType.ref;

import hurdline.unit.Base;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The JSON Schema of plant files, made from the table of keys, the units and the kinds of machine.
 */
final class KeySchema {
  private static final String NUMBER = "^ *[-+]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]+)? *";
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

  /** What holds over several keys of a map. */
  private static final Map<MapKeys, Map<String, Object>> TOGETHER =
      Map.ofEntries(
          Map.entry(
              MapKeys.CROP,
              ordered(
                  "allOf",
                  List.of(
                      oneOf("bale", "module"),
                      ordered("anyOf", List.of(required("composition"), required("form_of")))))),
          Map.entry(MapKeys.TRUCKS, oneOf("bales", "modules")),
          Map.entry(MapKeys.LOADS, oneOf("bales", "modules")),
          Map.entry(MapKeys.STEP, oneOf("to", "outlets", "packs")),
          Map.entry(MapKeys.FEEDER_STEP, oneOf("to", "outlets", "packs")),
          Map.entry(MapKeys.MILL_STEP, oneOf("to", "outlets", "packs")),
          // A bin's step has one way out, so the schema asks for it; the reader counts the three
          // ways.
          Map.entry(MapKeys.BIN_STEP, required("to")),
          Map.entry(MapKeys.CHOICE, oneOf("key", "keys", "plan", "option")),
          Map.entry(
              MapKeys.CHOICE_RANGE, ordered("anyOf", List.of(required("from"), required("to")))),
          Map.entry(
              MapKeys.STOP,
              ordered(
                  "oneOf",
                  List.of(
                      without(required("every", "counted"), "at", "repeats"),
                      without(required("on"), "every", "counted", "for", "initial_age")))),
          Map.entry(MapKeys.CLEANLINESS, oneOf("line", "steps")),
          Map.entry(
              MapKeys.PLACE_MOISTURE,
              ordered(
                  "dependentRequired",
                  ordered("wet", List.of("wet_within"), "wet_within", List.of("wet")))),
          Map.entry(MapKeys.ADVANCE, oneOf("per_area", "per_mass")),
          Map.entry(MapKeys.GRADE, oneOf("line", "steps")),
          Map.entry(
              MapKeys.REJECT, ordered("anyOf", List.of(required("above"), required("below")))),
          Map.entry(
              MapKeys.PRODUCT_MOISTURE,
              ordered("dependentRequired", Map.of("dock", List.of("at_most")))),
          Map.entry(
              MapKeys.DELIVERY,
              ordered("anyOf", List.of(required("fields", "hours", "trucks"), required("loads")))),
          Map.entry(
              MapKeys.WEATHER,
              ordered(
                  "oneOf",
                  List.of(
                      without(required("wet_day"), "wet_threshold"),
                      without(required("file", "wet_threshold"), "wet_after_wet")))),
          Map.entry(MapKeys.BASE_LOAD, ordered("dependentRequired", bothEnds())),
          Map.entry(
              MapKeys.TARIFF_PERIOD,
              ordered(
                  "anyOf",
                  List.of(required("energy"), required("demand")),
                  "dependentRequired",
                  bothEnds())));

  private KeySchema() {}

  /** The whole schema as it stands in its file. */
  static String text() {
    Map<String, Object> defs = new TreeMap<>(parts());
    for (Dimension dimension : Dimension.values()) {
      defs.put(dimension.name().toLowerCase(Locale.ROOT) + "_quantity", quantity(dimension));
    }
    for (MapKeys shape : MapKeys.values()) {
      defs.put(shape.name().toLowerCase(Locale.ROOT), map(shape));
    }
    Map<String, Object> schema =
        ordered(
            "$schema", "https://json-schema.org/draft/2020-12/schema",
            "title", "hurdline plant file, version 1",
            "description",
                "For editors: completion, hover text and a first look. The program itself checks"
                    + " more, among it all names and shares.",
            "$ref", "#/$defs/plant",
            "$defs", defs);
    return json(schema, "") + "\n";
  }

  private static Map<String, Object> parts() {
    return Map.of(
        "above_zero",
        ordered(
            "not",
            ordered("type", "string", "pattern", "^ *(-|[+]?[0.]+([eE][-+]?[0-9]+)? *[A-Za-z%])")),
        "basis",
        ordered(
            "anyOf",
            List.of(ordered("const", "as is"), ref("share_quantity")),
            "examples",
            List.of("12 %", "as is")),
        "clock",
        ordered(
            "type",
            "string",
            "pattern",
            "^(([01][0-9]|2[0-3]):[0-5][0-9]|24:00)$",
            "examples",
            List.of("06:00")),
        "date",
        ordered(
            "type",
            "string",
            "pattern",
            "^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
            "examples",
            List.of("2027-06-07")),
        "name",
        ordered("type", "string", "pattern", "^[A-Za-z0-9_-]{1,60}$"),
        "quantity",
        ordered("type", "string", "pattern", NUMBER + "[A-Za-z%][A-Za-z0-9%/]*( )*$"),
        "title",
        ordered(
            "type",
            "string",
            "minLength",
            1,
            "maxLength",
            60,
            "pattern",
            "^\\S([^\\r\\n\\t]*\\S)?$"),
        "distribution",
        distribution(),
        "machine",
        machine());
  }

  private static Object distribution() {
    Map<String, Object> kinds = new LinkedHashMap<>();
    for (String name : RandomQuantityReader.NAMES) {
      kinds.put(name, name.equals("observed") ? observed() : ref(name));
    }
    return ordered(
        "type",
        "object",
        "minProperties",
        1,
        "maxProperties",
        1,
        "additionalProperties",
        false,
        "properties",
        kinds);
  }

  private static Object observed() {
    return ordered(
        "type",
        "array",
        "minItems",
        1,
        "items",
        ref("quantity"),
        "description",
        "Observed values, drawn with equal chance.");
  }

  /** Which keys a machine has goes by its kind. */
  private static Object machine() {
    Map<MapKeys, List<String>> kinds = new LinkedHashMap<>();
    MachineBinder.KINDS.forEach(
        (kind, shape) -> kinds.computeIfAbsent(shape, s -> new ArrayList<>()).add(kind));
    List<Object> cases = new ArrayList<>();
    kinds.forEach(
        (shape, names) -> {
          Object kind = names.size() == 1 ? ordered("const", names.get(0)) : ordered("enum", names);
          Object is = ordered("properties", ordered("kind", kind), "required", List.of("kind"));
          cases.add(ordered("if", is, "then", ref(shape.name().toLowerCase(Locale.ROOT))));
        });
    Object known = ordered("kind", ordered("enum", List.copyOf(MachineBinder.KINDS.keySet())));
    return ordered(
        "type", "object", "required", List.of("kind"), "properties", known, "allOf", cases);
  }

  private static Object map(MapKeys shape) {
    KeyTable.Section section = KeyTable.section(shape.name());
    Map<String, Object> keys = new LinkedHashMap<>();
    section.keys().forEach(key -> keys.put(key.name(), key(key)));
    Map<String, Object> map =
        ordered(
            "type",
            "object",
            "description",
            plain(section.place() + ". " + section.note()).strip(),
            "additionalProperties",
            false,
            "properties",
            keys);
    if (!shape.required().isEmpty()) {
      map.put("required", shape.required());
    }
    map.putAll(TOGETHER.getOrDefault(shape, Map.of()));
    return map;
  }

  @SuppressWarnings("unchecked")
  private static Object key(Key key) {
    Map<String, Object> schema =
        new LinkedHashMap<>((Map<String, Object>) KeyType.schema(key.type()));
    String fallback = key.fallback();
    String then =
        fallback.startsWith("required")
            ? " R" + fallback.substring(1) + "."
            : " Default: " + fallback + ".";
    schema.put("description", plain(key.meaning()) + (key.isRequired() ? "" : then));
    return schema;
  }

  /** Links of Markdown as their text. */
  private static String plain(String markdown) {
    return markdown.replaceAll("\\[([^\\]]*)\\]\\([^)]*\\)", "$1");
  }

  private static Object quantity(Dimension dimension) {
    List<Base> under = dimension.bases().subList(1, dimension.bases().size());
    String divided =
        under.size() == 2
            ? "/("
                + ratio(under.get(0), under.get(1))
                + "|"
                + ratio(under.get(1), under.get(0))
                + ")"
            : under.stream().map(base -> "/" + units(base)).collect(Collectors.joining());
    Matcher sample = QUOTED.matcher(dimension.phrase());
    return ordered(
        "type",
        "string",
        "pattern",
        NUMBER + units(dimension.bases().get(0)) + divided + " *$",
        "examples",
        sample.results().map(found -> found.group(1)).toList());
  }

  private static String ratio(Base one, Base other) {
    return units(one) + "/" + units(other);
  }

  private static String units(Base base) {
    if (base == Base.MONEY) {
      return "[A-Z]{3}";
    }
    return Stream.of(FileUnit.values())
        .filter(unit -> unit.base() == base)
        .flatMap(unit -> unit.symbols().stream())
        .collect(Collectors.joining("|", "(", ")"));
  }

  private static Map<String, Object> required(String... keys) {
    return ordered("required", List.of(keys));
  }

  private static Map<String, Object> without(Map<String, Object> schema, String... keys) {
    schema.put(
        "not",
        keys.length == 1
            ? required(keys)
            : ordered("anyOf", Stream.of(keys).map(KeySchema::required).toList()));
    return schema;
  }

  private static Map<String, Object> bothEnds() {
    return ordered("from", List.of("to"), "to", List.of("from"));
  }

  private static Map<String, Object> oneOf(String... keys) {
    return ordered("oneOf", Stream.of(keys).map(KeySchema::required).toList());
  }

  /**
   * Each key and each item on a line of its own; what holds no further map or list, on one line.
   */
  private static String json(Object value, String indent) {
    String inner = indent + " ";
    if (value instanceof Map<?, ?> map) {
      Stream<String> entries =
          map.entrySet().stream()
              .map(e -> quoted(e.getKey().toString()) + ": " + json(e.getValue(), inner));
      return enclosed("{", entries.toList(), "}", indent);
    }
    if (value instanceof List<?> list) {
      return enclosed("[", list.stream().map(item -> json(item, inner)).toList(), "]", indent);
    }
    return value instanceof String text ? quoted(text) : String.valueOf(value);
  }

  private static String enclosed(String open, List<String> parts, String close, String indent) {
    String line = open + String.join(", ", parts) + close;
    boolean fits = line.length() <= 100 && !line.contains("\n");
    String inner = "\n" + indent + " ";
    return fits ? line : open + inner + String.join("," + inner, parts) + "\n" + indent + close;
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
