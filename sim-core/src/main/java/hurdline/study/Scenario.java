package hurdline.study;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One of the plants that a grid sets side by side.
 *
 * @param name the option or season plan
 * @param source the file that it comes from
 * @param changes what makes it of that file's plant, before any value is varied
 * @param bought whether it is an option of the file, or several joined, whose worth against the
 *     first plant is asked
 */
public record Scenario(String name, PlantOrigin source, List<Change> changes, boolean bought) {
  public Scenario {
    changes = List.copyOf(changes);
  }

  /** A plant that nothing is bought for. */
  public Scenario(String name, PlantOrigin source, List<Change> changes) {
    this(name, source, changes, false);
  }

  /**
   * @throws hurdline.plant.ProblemsException if the varied plant has problems
   */
  public Plant with(List<Change> varied) {
    return source
        .variants()
        .with(Stream.concat(changes.stream(), varied.stream()).toArray(Change[]::new));
  }

  /** What a kept cell's figures hang on. */
  public String told() {
    String changed = changes.stream().map(Scenario::told).collect(Collectors.joining(", "));
    return source.contentHash() + (changed.isEmpty() ? "" : " with " + changed);
  }

  private static String told(Change change) {
    if (change instanceof Change.Value value) {
      return value.path() + "=" + value.value();
    }
    return ((Change.Named) change).name();
  }
}
