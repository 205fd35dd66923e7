package hurdline.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Joint draws of values that are not known for certain: a column for each key, a row for each draw.
 * Replication k takes row k; beyond the last row it begins again with the first.
 *
 * @param said where they come from, such as {@code draws.csv}
 * @param keys paths in the plant file
 * @param rows a value for each key, as a changed value has it; those of a key differ in their
 *     numbers alone
 */
public record InputDraws(String said, List<String> keys, List<List<String>> rows) {
  public InputDraws {
    keys = List.copyOf(keys);
    rows = rows.stream().map(List::copyOf).toList();
    if (keys.isEmpty() || rows.isEmpty()) {
      throw new IllegalArgumentException("expected at least one key and one row");
    }
  }

  /** The row that a replication takes; both count from 1 and 0. */
  public int row(int replication) {
    return (replication - 1) % rows.size();
  }

  /** The values of a key over all rows. */
  public List<String> column(int key) {
    return rows.stream().map(row -> row.get(key)).toList();
  }

  /** Whether values of a key say how many times what the file has. */
  public boolean isRelative(int key) {
    return rows.get(0).get(key).startsWith("x");
  }

  /** These and others of as many rows, of which only keys are taken that these do not have. */
  public InputDraws and(InputDraws others) {
    List<Integer> more =
        IntStream.range(0, others.keys.size())
            .filter(at -> !keys.contains(others.keys.get(at)))
            .boxed()
            .toList();
    if (more.isEmpty()) {
      return this;
    }
    List<String> all = new ArrayList<>(keys);
    more.forEach(at -> all.add(others.keys.get(at)));
    List<List<String>> joined = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      List<String> values = new ArrayList<>(rows.get(row));
      List<String> besides = others.rows.get(row % others.rows.size());
      more.forEach(at -> values.add(besides.get(at)));
      joined.add(values);
    }
    return new InputDraws(said + " and " + others.said, all, joined);
  }
}
