package hurdline.compiled;

import java.util.Arrays;
import java.util.Collection;

/**
 * Names numbered in their own order, so that nothing computed hangs on the order of keys in the
 * file.
 */
public final class Names {
  private final String[] sorted;

  Names(Collection<String> names) {
    sorted = names.stream().sorted().toArray(String[]::new);
  }

  public int count() {
    return sorted.length;
  }

  public String name(int index) {
    return sorted[index];
  }

  /** Number of a name, or −1. */
  public int find(String name) {
    int at = Arrays.binarySearch(sorted, name);
    return at < 0 ? -1 : at;
  }

  /** Number of a name that must be there. */
  public int index(String name) {
    int at = find(name);
    if (at < 0) {
      throw new IllegalArgumentException(
          "no name \"" + name + "\" among " + Arrays.toString(sorted));
    }
    return at;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Names names && Arrays.equals(sorted, names.sorted);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(sorted);
  }
}
