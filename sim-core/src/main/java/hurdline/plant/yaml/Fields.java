package hurdline.plant.yaml;

import hurdline.plant.Nearest;
import hurdline.plant.yaml.tree.MessageText;
import hurdline.unit.Amount;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The known keys of one map.
 *
 * <p>A misspelt key is reported and then read as the key that it was likely to mean, so that one
 * slip does not also show as a missing key.
 */
final class Fields {
  private static final Pattern RUN_TOGETHER = Pattern.compile("([a-z_]+)[:=\\s]+(\\S.*)");

  private final NodeReader at;
  private final MapKeys shape;
  private final Map<String, String> written = new HashMap<>();
  private final Set<String> slips = new HashSet<>();
  private boolean whole = true;

  private Fields(NodeReader at, MapKeys shape) {
    this.at = at;
    this.shape = shape;
  }

  static Fields of(NodeReader at, MapKeys shape) {
    Fields fields = new Fields(at, shape);
    if (at.isMap()) {
      fields.match();
      fields.requireAll();
    }
    return fields;
  }

  private void match() {
    Set<String> given = at.entries().orElseThrow().keySet();
    Set<String> open = new LinkedHashSet<>(shape.keys());
    open.removeAll(given);
    for (String key : given) {
      if (shape.keys().contains(key)) {
        written.put(key, key);
      } else {
        unknown(key, open);
      }
    }
  }

  private void unknown(String key, Set<String> open) {
    if (isSlip(key)) {
      return;
    }
    if (at.binding().findings().isFull()) {
      at.key(key).wrong("unknown key", "a key of " + shape.phrase()); // only counted any more
      return;
    }
    String reason = MisplacedKeys.reason(shape, key);
    if (reason != null) {
      at.key(key)
          .wrong(
              "unknown key " + MessageText.quoted(key) + ": " + reason,
              "one of " + String.join(", ", shape.keys()));
      return;
    }
    at.key(key)
        .wrong(
            "unknown key " + MessageText.quoted(key),
            Nearest.expected("a key of " + shape.phrase(), key, shape.keys()));
    Nearest.to(key, open)
        .ifPresent(
            near -> {
              open.remove(near);
              at.binding().misspellings().add(at.path(), key, near);
              written.put(near, key);
            });
  }

  /** A known key that only a space or a colon keeps from being one. */
  private boolean isSlip(String key) {
    Matcher parts = RUN_TOGETHER.matcher(key);
    boolean bare = at.entries().orElseThrow().get(key).value().isNothing();
    if (bare && parts.matches() && shape.keys().contains(parts.group(1))) {
      slips.add(parts.group(1));
      at.key(key)
          .wrong(
              "no colon and space between "
                  + MessageText.quoted(parts.group(1))
                  + " and its value in "
                  + MessageText.quoted(key),
              "\"" + parts.group(1) + ": " + parts.group(2) + "\"");
      return true;
    }
    String plain = Amount.withPlainSpaces(key).strip();
    if (!plain.equals(key) && shape.keys().contains(plain)) {
      written.put(plain, key);
      at.key(key)
          .wrong(
              "the key \"" + plain + "\" is written with a non-breaking space",
              "plain spaces around keys");
      return true;
    }
    return false;
  }

  /** Whether no key that must be there is missing. */
  boolean isWhole() {
    return whole;
  }

  private void requireAll() {
    shape.required().forEach(this::require);
  }

  /** Says that a key is missing, unless a slip in it has been told. */
  void require(String key) {
    if (!at(key).isGiven()) {
      whole = false;
      if (!slips.contains(key)) {
        missing(key);
      }
    }
  }

  /** Says that a key is missing, at the map that should have it or at the key that has no value. */
  void missing(String key) {
    boolean stands = written.containsKey(key);
    at.key(stands ? written.get(key) : key, key)
        .wrong(
            "the key \"" + key + (stands ? "\" has no value" : "\" is missing"),
            shape.key(key).wanted());
  }

  NodeReader at(String key) {
    return at.child(key, written.getOrDefault(key, key));
  }

  boolean has(String key) {
    return at(key).isGiven();
  }

  NodeReader here() {
    return at;
  }
}
