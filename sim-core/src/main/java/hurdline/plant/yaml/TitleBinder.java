package hurdline.plant.yaml;

import hurdline.plant.Title;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads the titles of all that may have one. */
final class TitleBinder {
  private static final int MOST = 60;

  private TitleBinder() {}

  static List<Title> titles(At top) {
    List<Title> titles = new ArrayList<>();
    for (Title.Kind kind : Title.Kind.values()) {
      At section = top;
      for (String key : kind.section().split("\\.")) {
        section = section.child(key);
      }
      for (String name : section.entries().orElse(Map.of()).keySet()) {
        add(kind, name, section.child(name).child("title"), titles);
      }
    }
    return titles;
  }

  private static void add(Title.Kind kind, String name, At at, List<Title> titles) {
    if (!at.isGiven()) {
      return;
    }
    String text = at.scalar().map(Tree.Scalar::text).orElse("");
    if (!isTitle(text)) {
      at.wrong(
          at.shown() + " is no title",
          "one line of 1 to " + MOST + " characters without space around it, such as \"Hammer mill\"");
      return;
    }
    titles.add(new Title(kind, name, text));
  }

  private static boolean isTitle(String text) {
    boolean oneLine = text.codePoints().noneMatch(c -> Character.isISOControl(c) || c == 0x2028 || c == 0x2029);
    return oneLine
        && !text.isBlank()
        && text.equals(text.strip())
        && text.codePointCount(0, text.length()) <= MOST;
  }
}
