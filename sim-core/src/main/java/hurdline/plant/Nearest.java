package hurdline.plant;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The nearest known word to one that is not known. */
public final class Nearest {
  private static final int SHOWN = 8;
  private static final int LEAST_BEGINNING = 4;

  /** Of more words than these only the first are looked at, so that a huge file has an end. */
  private static final int MOST = 300;

  /** Words that the format had before its release, with those that took their place. */
  private static final Map<String, String> FORMER =
      Map.ofEntries(
          Map.entry("precedence", "priority"),
          Map.entry("first", "priority"),
          Map.entry("stand_down", "send_home"),
          Map.entry("growth", "escalation"),
          Map.entry("paid_at", "moisture_basis"),
          Map.entry("crops", "crop_prices"),
          Map.entry("discount", "discount_rate"),
          Map.entry("waiting", "waiting_cost"),
          Map.entry("late", "late_penalty"),
          Map.entry("breaks", "breakage"),
          Map.entry("loose", "bulk_density"),
          Map.entry("alongside", "auxiliaries"),
          Map.entry("table", "feed_table"),
          Map.entry("set_on_table", "lift"),
          Map.entry("already", "initial_age"),
          Map.entry("worked", "mass"),
          Map.entry("stay", "min_run"),
          Map.entry("swap", "screen_change"),
          Map.entry("change", "package_change"),
          Map.entry("composition_spread", "composition_cv"),
          Map.entry("season_factor", "yield_factor"),
          Map.entry("says", "description"),
          Map.entry("wet_from", "wet_threshold"),
          Map.entry("for", "crops"));

  private Nearest() {}

  /**
   * The known word that takes the fewest changes of a letter, at most a third of the longer word's
   * length (and 1 in a short word); else the only one that begins as the word does, or it as that.
   * Case counts as no change. A former word of the format means the one that took its place.
   */
  public static Optional<String> to(String word, Collection<String> known) {
    if (FORMER.containsKey(word) && known.contains(FORMER.get(word))) {
      return Optional.of(FORMER.get(word));
    }
    return known.stream()
        .limit(MOST)
        .filter(candidate -> distance(word, candidate) <= reach(word, candidate))
        .min(
            Comparator.comparingInt((String candidate) -> distance(word, candidate))
                .thenComparing(c -> c))
        .or(() -> begun(word, known));
  }

  private static Optional<String> begun(String word, Collection<String> known) {
    List<String> begun =
        known.stream()
            .limit(MOST)
            .filter(candidate -> Math.min(word.length(), candidate.length()) >= LEAST_BEGINNING)
            .filter(candidate -> candidate.startsWith(word) || word.startsWith(candidate))
            .toList();
    return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
  }

  /** What to write in place of an unknown word: the nearest one, or what there is. */
  public static Expected expected(String kind, String word, Collection<String> known) {
    if (known.isEmpty()) {
      return Expected.of(kind + ", of which there is none");
    }
    return to(word, known)
        .map(near -> new Expected(kind + ", perhaps \"" + near + "\"", near))
        .orElseGet(() -> Expected.of(kind + ", one of " + some(known)));
  }

  /** The first of the words, for a message. */
  public static String some(Collection<String> known) {
    String shown = known.stream().limit(SHOWN).collect(Collectors.joining(", "));
    return known.size() > SHOWN ? shown + " ..." : shown;
  }

  private static int reach(String word, String candidate) {
    return Math.max(1, Math.max(word.length(), candidate.length()) / 3);
  }

  /** Edits between two words: insertions, deletions, changes and swaps of neighbours. */
  public static int distance(String a, String b) {
    if (Math.abs(a.length() - b.length()) > 12 || a.length() > 80) {
      return Integer.MAX_VALUE;
    }
    String left = a.toLowerCase(java.util.Locale.ROOT);
    String right = b.toLowerCase(java.util.Locale.ROOT);
    int[][] edits = new int[left.length() + 1][right.length() + 1];
    for (int i = 0; i <= left.length(); i++) {
      for (int j = 0; j <= right.length(); j++) {
        edits[i][j] = i == 0 || j == 0 ? i + j : least(edits, left, right, i, j);
      }
    }
    return edits[left.length()][right.length()];
  }

  private static int least(int[][] edits, String left, String right, int i, int j) {
    int change = edits[i - 1][j - 1] + (left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1);
    int best = Math.min(change, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
    boolean swapped =
        i > 1
            && j > 1
            && left.charAt(i - 1) == right.charAt(j - 2)
            && left.charAt(i - 2) == right.charAt(j - 1);
    return swapped ? Math.min(best, edits[i - 2][j - 2] + 1) : best;
  }
}
