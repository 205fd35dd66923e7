package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.TextCursor;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What may stand at a place of a plant file, by the table of keys and by the names in the text,
 * which may be half written.
 */
public final class KeyOffers {
  private static final Pattern MAP = Pattern.compile("map by (\\w+) of (.*)");
  private static final Pattern LIST =
      Pattern.compile("list of (.*?)(, at least one)?(, each once)?");
  private static final Pattern SHAPES = Pattern.compile("(map )?([A-Z_]+( or [A-Z_]+)*)");
  private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
  private static final List<String> COMPONENTS =
      List.of("long_fiber", "short_fiber", "hurd", "fines");

  /** Where the names are that a key names, or a map goes by. */
  private static final Map<String, List<String>> NAMES = new LinkedHashMap<>();

  static {
    NAMES.put("crop", List.of("crops"));
    NAMES.put("crops", List.of("crops"));
    NAMES.put("form_of", List.of("crops"));
    NAMES.put("machine", List.of("machines"));
    NAMES.put("feed", List.of("machines"));
    NAMES.put("auxiliaries", List.of("machines"));
    NAMES.put("to", List.of("machines", "products"));
    NAMES.put("packs", List.of("products"));
    NAMES.put("needs", List.of("resources"));
    NAMES.put("package", List.of("packages"));
    NAMES.put("component", List.of("components"));
    NAMES.put("into", List.of("components"));
    NAMES.put("line", List.of("lines"));
    NAMES.put("for", List.of("lines", "crops"));
    NAMES.put("shift", List.of("calendar.shifts"));
    NAMES.put("shifts", List.of("calendar.shifts"));
    NAMES.put("places", List.of("yard.places"));
    NAMES.put("plan", List.of("plans"));
    NAMES.put("option", List.of("options"));
  }

  /**
   * Something that may stand there.
   *
   * @param kind {@code due} for a key that must be there, {@code key}, {@code name} or {@code word}
   * @param meaning one sentence; may be empty
   */
  public record Offer(String label, String kind, String meaning) {}

  private final TextCursor cursor;

  private KeyOffers(TextCursor cursor) {
    this.cursor = cursor;
  }

  /**
   * What may be typed at a place; nothing where what stands before cannot be read.
   *
   * @param offset in characters from the top
   */
  public static List<Offer> at(String text, int offset) {
    return TextCursor.at(text, offset)
        .map(cursor -> new KeyOffers(cursor).offers())
        .orElse(List.of());
  }

  /** The meaning of the key that an offset lies in, what may stand there and what holds without. */
  public static Optional<String> meaning(String text, int offset) {
    return TextCursor.ofKey(text, offset)
        .flatMap(cursor -> new KeyOffers(cursor).key())
        .map(key -> key.meaning() + without(key));
  }

  private static String without(Key key) {
    String type = key.type().replaceAll("\\b[A-Z_]{3,}( or [A-Z_]+)*", "its keys");
    return " ("
        + type
        + (key.isRequired() ? "; must be there" : "; without it: " + key.fallback())
        + ")";
  }

  private Optional<Key> key() {
    List<String> path = cursor.path();
    int last = path.size() - 1;
    return sections(types(path.subList(0, last)), String.join(".", path.subList(0, last)))
        .map(section -> section.key(path.get(last)))
        .filter(key -> key != null)
        .findFirst();
  }

  private List<Offer> offers() {
    List<String> path = cursor.path();
    List<Offer> offers = new ArrayList<>();
    for (String type : types(path)) {
      if (cursor.isValue()) {
        values(type, nameOfKey(path), offers);
      } else {
        keys(type, String.join(".", path), offers);
      }
    }
    Map<String, Offer> each = new LinkedHashMap<>();
    offers.forEach(offer -> each.putIfAbsent(offer.label(), offer));
    cursor.taken().forEach(each::remove);
    return List.copyOf(each.values());
  }

  /** The last step that is no place in a list. */
  private static String nameOfKey(List<String> path) {
    return path.stream().filter(step -> !step.matches("[0-9]+")).reduce((a, b) -> b).orElse("");
  }

  private void keys(String type, String path, List<Offer> offers) {
    Matcher map = MAP.matcher(type);
    if (map.matches()) {
      names(map.group(1), offers);
      return;
    }
    sections(List.of(type), path)
        .forEach(
            section ->
                section
                    .keys()
                    .forEach(
                        name -> {
                          Key key = section.key(name);
                          String kind = key.isRequired() ? "due" : "key";
                          offers.add(new Offer(name, kind, key.meaning()));
                        }));
    if (type.endsWith(", may vary")) {
      RandomQuantityReader.NAMES.forEach(name -> offers.add(new Offer(name, "key", "")));
    }
  }

  private void values(String type, String key, List<Offer> offers) {
    Matcher list = LIST.matcher(type);
    String one = list.matches() ? list.group(1) : type;
    if (one.startsWith("word: ")) {
      Stream.of(one.substring("word: ".length()).split(", "))
          .forEach(word -> offers.add(new Offer(word, "word", "")));
    } else if (one.equals("day")) {
      DAYS.forEach(day -> offers.add(new Offer(day, "word", "")));
    } else if (one.equals("month")) {
      MONTHS.forEach(month -> offers.add(new Offer(month, "word", "")));
    } else if (one.equals("name") || key.equals("packs")) {
      names(key, offers);
    }
  }

  private void names(String kind, List<Offer> offers) {
    if (kind.equals("month")) {
      MONTHS.forEach(month -> offers.add(new Offer(month, "name", "")));
    }
    for (String map : NAMES.getOrDefault(kind, List.of())) {
      List<String> names = cursor.namesAt(map);
      List<String> all = map.equals("components") && names.isEmpty() ? COMPONENTS : names;
      all.forEach(name -> offers.add(new Offer(name, "name", "from " + map)));
    }
  }

  /** What may stand at a path, in the words of the table; a patch has the keys of the plant. */
  private List<String> types(List<String> path) {
    List<String> types = List.of("PLANT");
    StringBuilder here = new StringBuilder();
    for (String step : path) {
      List<String> inner = new ArrayList<>();
      for (String type : types) {
        inner(type, step, here.toString(), inner);
      }
      here.append(here.length() == 0 ? "" : ".").append(step);
      types = inner;
    }
    return types;
  }

  private void inner(String type, String step, String path, List<String> found) {
    Matcher map = MAP.matcher(type);
    Matcher list = LIST.matcher(type);
    if (map.matches()) {
      found.add(map.group(2));
    } else if (list.matches() && step.matches("[0-9]+")) {
      found.add(list.group(1));
    } else if (type.endsWith(", may vary") && RandomQuantityReader.NAMES.contains(step)) {
      found.add(step.toUpperCase(java.util.Locale.ROOT));
    } else {
      sections(List.of(type), path)
          .map(section -> section.key(step))
          .filter(key -> key != null)
          .forEach(
              key ->
                  found.addAll(List.of(key.type().replaceFirst("^patch$", "PLANT").split("; "))));
    }
  }

  /** The kinds of map that stand at a path; of a machine, that of its kind. */
  private Stream<MapKeys> sections(List<String> types, String path) {
    return types.stream()
        .flatMap(
            type -> {
              Matcher shapes = SHAPES.matcher(type);
              return shapes.matches() ? Stream.of(shapes.group(2).split(" or ")) : Stream.empty();
            })
        .flatMap(shape -> shape.equals("MACHINE") ? machines(path) : named(shape));
  }

  private static Stream<MapKeys> named(String shape) {
    return Stream.of(MapKeys.values()).filter(keys -> keys.name().equals(shape));
  }

  private Stream<MapKeys> machines(String path) {
    MapKeys known = MachineBinder.KINDS.get(cursor.wordAt(path + ".kind"));
    return known == null ? MachineBinder.KINDS.values().stream().distinct() : Stream.of(known);
  }
}
