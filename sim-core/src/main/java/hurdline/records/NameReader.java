package hurdline.records;

import hurdline.plant.Nearest;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds which known name a word of the records means: itself, without case and marks, as {@code
 * records.yaml} says, or the nearest one.
 */
final class NameReader {
  /** Least share of letters that must agree: one slip in five. */
  private static final double ALIKE = 0.8;

  private static final double CLEARLY = 0.05;

  /**
   * @param how it was found; empty where the word is the name
   */
  record Read(String name, String how) {}

  private final Map<String, String> called;

  /**
   * @param called names by the words that stand for them, as {@code records.yaml} has them
   */
  NameReader(Map<String, String> called) {
    this.called = called;
  }

  Optional<Read> read(String word, Collection<String> known) {
    if (known.contains(word)) {
      return Optional.of(new Read(word, ""));
    }
    String plain = HeadReader.plain(word);
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    for (Map.Entry<String, String> own : called.entrySet()) {
      if (HeadReader.plain(own.getKey()).equals(plain) && known.contains(own.getValue())) {
        return Optional.of(new Read(own.getValue(), ""));
      }
    }
    Optional<String> same =
        known.stream().filter(name -> HeadReader.plain(name).equals(plain)).findFirst();
    return same.isPresent() ? same.map(name -> new Read(name, "")) : nearest(word, plain, known);
  }

  private static Optional<Read> nearest(String word, String plain, Collection<String> known) {
    List<String> order =
        known.stream()
            .sorted(
                Comparator.comparingDouble((String name) -> -alike(plain, name))
                    .thenComparing(name -> name))
            .toList();
    if (order.isEmpty()) {
      return Optional.empty();
    }
    double best = alike(plain, order.get(0));
    double second = order.size() > 1 ? alike(plain, order.get(1)) : 0;
    return best >= ALIKE && best - second >= CLEARLY
        ? Optional.of(
            new Read(
                order.get(0),
                "\""
                    + NumberReader.shortened(word)
                    + "\" read as "
                    + order.get(0)
                    + " (nearest name)"))
        : Optional.empty();
  }

  /** Share of letters that agree, 1 for the same. */
  static double alike(String plain, String name) {
    String other = HeadReader.plain(name);
    int longer = Math.max(plain.length(), other.length());
    int edits =
        longer == 0 || longer > 60 ? longer : Math.min(longer, Nearest.distance(plain, other));
    return longer == 0 ? 1 : 1 - (double) edits / longer;
  }
}
