package hurdline.plant.yaml;

import hurdline.plant.Plant;
import hurdline.plant.Title;
import hurdline.plant.yaml.tree.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the titles of all that may have one. */
final class TitleBinder {
  private static final int MOST = 60;
  private static final Map<Title.Kind, List<String>> KEYS =
      Stream.of(Title.Kind.values())
          .collect(Collectors.toMap(kind -> kind, kind -> List.of(kind.section().split("\\."))));

  private TitleBinder() {}

  static List<Title> titles(NodeReader top, BoundBefore before) {
    List<Title> titles = new ArrayList<>();
    for (Title.Kind kind : Title.Kind.values()) {
      List<String> keys = KEYS.get(kind);
      before
          .titles(kind, top.child(keys.get(0)))
          .ifPresentOrElse(titles::addAll, () -> sections(kind, keys, "", top, titles));
    }
    return before.plant().map(Plant::titles).filter(titles::equals).orElse(titles);
  }

  /**
   * Goes down to every map that has things of a kind by name; {@code owner} is whose they are, with
   * a dot.
   */
  private static void sections(
      Title.Kind kind, List<String> keys, String owner, NodeReader at, List<Title> titles) {
    if (keys.isEmpty()) {
      for (String name : names(at)) {
        add(kind, owner + name, at.child(name).child("title"), titles);
      }
      return;
    }
    List<String> inner = keys.subList(1, keys.size());
    if (!keys.get(0).equals("*")) {
      sections(kind, inner, owner, at.child(keys.get(0)), titles);
    } else if (at.isMap()) {
      names(at).forEach(name -> sections(kind, inner, name + ".", at.child(name), titles));
    } else if (at.tree().filter(Tree.Items.class::isInstance).isPresent()) {
      at.items("entries").forEach(item -> sections(kind, inner, owner, item, titles));
    }
  }

  private static Set<String> names(NodeReader at) {
    return at.entries().orElse(Map.of()).keySet();
  }

  private static void add(Title.Kind kind, String name, NodeReader at, List<Title> titles) {
    if (!at.isGiven()) {
      return;
    }
    String text = at.scalar().map(Tree.Scalar::text).orElse("");
    String wrong = at.scalar().isEmpty() ? at.shown() + " is no text" : wrong(text);
    if (wrong.isEmpty()) {
      titles.add(new Title(kind, name, text, at.path()));
    } else {
      at.wrong(wrong, "one line of 1 to " + MOST + " characters, such as \"Hammer mill\"");
    }
  }

  /** What keeps a text from being a title; empty where nothing does. */
  private static String wrong(String text) {
    int length = text.codePointCount(0, text.length());
    if (text.isBlank()) {
      return "the title is empty";
    }
    if (text.codePoints().anyMatch(c -> Character.isISOControl(c) || c == 0x2028 || c == 0x2029)) {
      return "the title has more than one line, or a character that cannot be seen";
    }
    if (!text.equals(text.strip())) {
      return "the title begins or ends with a space";
    }
    return length > MOST ? "the title has " + length + " characters" : "";
  }
}
