package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Merge patches on trees: maps are merged, nothing deletes, all else replaces whole.
 *
 * @see "RFC 7396, JSON Merge Patch (2014), section 2"
 */
public final class MergePatch {
  private MergePatch() {}

  public static Tree merge(Tree target, Tree patch) {
    if (!(patch instanceof Entries changes)) {
      return patch;
    }
    Map<String, Entry> merged = new LinkedHashMap<>();
    SourcePosition place = patch.place();
    if (target instanceof Entries old) {
      merged.putAll(old.map());
      place = old.place();
    }
    changes.map().forEach((key, change) -> mergeKey(merged, key, change));
    return new Entries(merged, place);
  }

  private static void mergeKey(Map<String, Entry> merged, String key, Entry change) {
    Entry old = merged.get(key);
    if (change.value().isNothing()) {
      merged.remove(key);
    } else if (old != null && old.value() instanceof Entries && change.value() instanceof Entries) {
      merged.put(key, new Entry(old.keyPlace(), merge(old.value(), change.value())));
    } else {
      Tree empty = new Entries(Map.of(), change.value().place());
      merged.put(key, new Entry(change.keyPlace(), merge(empty, change.value())));
    }
  }

  /** Paths at which two patches give values that differ. */
  public static List<String> conflicts(Tree a, Tree b) {
    List<String> paths = new ArrayList<>();
    conflicts(a, b, "", paths);
    return paths;
  }

  private static void conflicts(Tree a, Tree b, String path, List<String> paths) {
    if (a instanceof Entries left && b instanceof Entries right) {
      left.map()
          .forEach(
              (key, entry) ->
                  right
                      .at(key)
                      .ifPresent(
                          other ->
                              conflicts(
                                  entry.value(),
                                  other,
                                  path.isEmpty() ? key : path + "." + key,
                                  paths)));
    } else if (!Tree.same(a, b)) {
      paths.add(path);
    }
  }
}
