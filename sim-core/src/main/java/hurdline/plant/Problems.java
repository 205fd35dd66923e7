package hurdline.plant;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Gathers what rules find. */
final class Problems {
  /** Far more than anybody reads; rules that look at pairs stop there. */
  private static final int MOST = 5_000;

  private final List<Problem> all = new ArrayList<>();

  void add(String path, String said, String expected) {
    add(path, said, Expected.of(expected));
  }

  void add(String path, String said, Expected expected) {
    if (!isFull()) {
      all.add(new Problem(path, said, expected));
    }
  }

  boolean isFull() {
    return all.size() >= MOST;
  }

  /** Reports a name that leads nowhere; an empty name has been reported before. */
  void known(String path, String name, Collection<String> known, String isNo, String kind) {
    if (!name.isEmpty() && !known.contains(name)) {
      add(path, "\"" + cut(name) + "\" is " + isNo, Nearest.expected(kind, name, known));
    }
  }

  List<Problem> all() {
    return List.copyOf(all);
  }

  static String cut(String name) {
    String line = name.replaceAll("\\s+", " ");
    return line.length() > 60 ? line.substring(0, 57) + "..." : line;
  }

  /** A share as a percentage with the digits that it needs. */
  static String percent(double share) {
    String text = String.format(Locale.ROOT, "%.6f", 100 * share);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "") + " %";
  }
}
