package hurdline.plant;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Copies that keep the file's order; those of the platform come in another order at every start.
 */
final class InOrder {
  private InOrder() {}

  static <K, V> Map<K, V> copy(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  static <T> Set<T> copy(Set<T> set) {
    return Collections.unmodifiableSet(new LinkedHashSet<>(set));
  }
}
