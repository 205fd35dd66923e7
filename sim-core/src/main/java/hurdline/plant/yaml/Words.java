package hurdline.plant.yaml;

import hurdline.plant.Expected;
import hurdline.plant.Nearest;
import hurdline.plant.yaml.tree.Tree.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads words: names, texts and choices. */
final class Words {
  private Words() {}

  /** A text; empty where none is given. */
  static String text(NodeReader at) {
    if (at.isGiven() && at.scalar().isEmpty()) {
      at.wrong(at.shown() + " is not a text", "a short text");
    }
    return at.scalar().map(Scalar::text).orElse("");
  }

  /** The name of something; empty where none is given, for rules to pass over. */
  static String name(NodeReader at, String kind) {
    if (at.isGiven() && at.scalar().isEmpty()) {
      at.wrong(at.shown() + " is not a name", "the name of " + kind);
    }
    return at.scalar().map(Scalar::text).orElse("");
  }

  static Optional<String> optionalName(NodeReader at, String kind) {
    return Optional.of(name(at, kind)).filter(name -> !name.isEmpty());
  }

  /** One resource, or a list of several that are needed together; none where nothing is said. */
  static List<String> needs(NodeReader at) {
    if (at.scalar().isPresent() || !at.isGiven() || at.isMap()) {
      return optionalName(at, "a resource").stream().toList();
    }
    List<String> names = names(at, "a resource");
    List<String> once = names.stream().distinct().toList();
    if (names.isEmpty()) {
      at.wrong("it names no resource", "a resource, or no \"needs\"");
    }
    if (once.size() < names.size()) {
      at.wrong("a resource stands here twice", "each resource once");
    }
    return once;
  }

  static List<String> names(NodeReader at, String kind) {
    return at.list("names", item -> name(item, kind));
  }

  /** One word of several; the stand-in where none is given or it is unknown. */
  static <T> T choice(NodeReader at, Map<String, T> choices, T standIn) {
    if (!at.isGiven()) {
      return standIn;
    }
    String word = at.scalar().map(Scalar::text).orElse(null);
    if (word != null && choices.containsKey(word)) {
      return choices.get(word);
    }
    Expected expected =
        word == null
            ? Expected.of("one of " + String.join(", ", choices.keySet()))
            : Nearest.expected("a known word", word, choices.keySet());
    at.wrong(at.shown() + " is not known here", expected);
    return standIn;
  }
}
