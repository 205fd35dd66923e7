package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import java.util.Optional;

/** Finds where a path stands in a tree. */
public final class Locator {
  private Locator() {}

  /**
   * The place of the value at the path, of its key where the value is a map or list, and of the
   * nearest key above it where the path leads to nothing.
   */
  public static SourcePosition of(Tree tree, String path) {
    return of(tree, path, SourcePosition.TOP);
  }

  /** The same in a tree that itself begins somewhere. */
  public static SourcePosition of(Tree tree, String path, SourcePosition start) {
    Tree at = tree;
    SourcePosition spot = start;
    for (String step : path.split("\\.")) {
      if (at instanceof Entries entries && entries.map().containsKey(step)) {
        Entry entry = entries.map().get(step);
        at = entry.value();
        spot = at instanceof Scalar scalar && !scalar.isNull() ? scalar.place() : entry.keyPlace();
      } else if (at instanceof Items items && isPlaceIn(items, step)) {
        at = items.list().get(Integer.parseInt(step));
        spot = at.place();
      } else {
        return spot;
      }
    }
    return spot;
  }

  /** Whether a map or list stands at the path. */
  public static boolean holdsMore(Tree tree, String path) {
    return value(tree, path).filter(at -> !(at instanceof Scalar)).isPresent();
  }

  /** What stands at the path. */
  public static Optional<Tree> value(Tree tree, String path) {
    Tree at = tree;
    for (String step : path.split("\\.")) {
      if (at instanceof Entries entries && entries.map().containsKey(step)) {
        at = entries.map().get(step).value();
      } else if (at instanceof Items items && isPlaceIn(items, step)) {
        at = items.list().get(Integer.parseInt(step));
      } else {
        return Optional.empty();
      }
    }
    return Optional.of(at);
  }

  private static boolean isPlaceIn(Items items, String step) {
    return step.matches("[0-9]{1,6}") && Integer.parseInt(step) < items.list().size();
  }
}
