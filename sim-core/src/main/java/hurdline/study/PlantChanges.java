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
public record PlantChanges(String option, List<String> sets, List<Change> changes) {
  private static final String BASE = "base";

  public PlantChanges {
    sets = List.copyOf(sets);
    changes = List.copyOf(changes);
  }

  /** The plant as it stands. */
  public static PlantChanges base() {
    return new PlantChanges(BASE, List.of(), List.of());
  }

  /** The same with more changed after it. */
  public PlantChanges and(List<Change> more) {
    return new PlantChanges(option, sets, Stream.concat(changes.stream(), more.stream()).toList());
  }

  /** Single changes, which an option or plan comes on top of. */
  public List<Change> single() {
    return changes.stream().filter(Change.Value.class::isInstance).toList();
  }

  public Change[] asArray() {
    return changes.toArray(Change[]::new);
  }

  /** The name of the plant as it stands. */
  public static String baseName() {
    return BASE;
  }
}
