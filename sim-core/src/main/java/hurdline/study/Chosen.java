package hurdline.study;

import hurdline.plant.Change;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is changed in the plant before it is asked.
 *
 * @param option the options as they were given, {@code A+B}, or {@code base} for none
 * @param sets single changed keys as they were given, {@code KEY=VALUE}
 * @param changes all of these, options first, in the order in which they are applied
 */
public record Chosen(String option, List<String> sets, List<Change> changes) {
  static final String BASE = "base";

  public Chosen {
    sets = List.copyOf(sets);
    changes = List.copyOf(changes);
  }

  /** The plant as it stands. */
  public static Chosen base() {
    return new Chosen(BASE, List.of(), List.of());
  }

  /** The same with more changed after it. */
  Chosen and(List<Change> more) {
    return new Chosen(option, sets, Stream.concat(changes.stream(), more.stream()).toList());
  }

  Change[] asArray() {
    return changes.toArray(Change[]::new);
  }
}
