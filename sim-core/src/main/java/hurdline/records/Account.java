package hurdline.records;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What became of every row that was read, one entry each.
 *
 * @param rows how many rows each file has
 */
public record Account(List<Entry> entries, Map<String, Integer> rows) {
  public Account {
    entries = List.copyOf(entries);
    rows = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(rows));
    int all = rows.values().stream().mapToInt(Integer::intValue).sum();
    if (all != entries.size()) {
      throw new IllegalStateException(
          all + " rows were read and " + entries.size() + " are accounted for");
    }
  }

  /** What became of a row. */
  public enum Verdict {
    USED,
    JOINED,
    SET_ASIDE;

    /** As tables have it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * @param whatFor the figures that it serves, with spaces between
   * @param why what is to be said of it; empty where it is plain
   */
  public record Entry(String file, int line, Verdict verdict, String whatFor, String why) {}

  /**
   * A reason with how often it was given.
   *
   * @param example the first row with it
   */
  public record Reason(String file, Verdict verdict, String reason, int count, Entry example) {}

  public int count(String file, Verdict verdict) {
    return (int)
        entries.stream()
            .filter(entry -> entry.file().equals(file) && entry.verdict() == verdict)
            .count();
  }

  /** The share of a file's rows that are set aside. */
  public double setAside(String file) {
    int all = rows.getOrDefault(file, 0);
    return all == 0 ? 0 : (double) count(file, Verdict.SET_ASIDE) / all;
  }

  /** Reasons other than none: those of rows that are set aside first, then the most frequent. */
  public List<Reason> reasons() {
    Map<String, Reason> found = new LinkedHashMap<>();
    for (Entry entry : entries) {
      if (!entry.why().isEmpty()) {
        String plain = plain(entry.why());
        found.merge(
            entry.file() + '\n' + entry.verdict() + '\n' + plain,
            new Reason(entry.file(), entry.verdict(), plain, 1, entry),
            (one, more) ->
                new Reason(
                    one.file(), one.verdict(), one.reason(), one.count() + 1, one.example()));
      }
    }
    return found.values().stream()
        .sorted(
            Comparator.comparing((Reason reason) -> reason.verdict() != Verdict.SET_ASIDE)
                .thenComparing(reason -> -reason.count()))
        .toList();
  }

  /** The reason without what differs from row to row. */
  private static String plain(String why) {
    return why.replaceAll("\"[^\"]*\"", "\"…\"").replaceAll("[0-9]+([:.,/-][0-9]+)*", "#");
  }
}
