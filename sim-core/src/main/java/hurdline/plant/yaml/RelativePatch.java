package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.MergePatch;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.UnreadableException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Patches of options and plans, in which {@code x1.2} and {@code +30d} change what the plant has. A
 * value that stands in quotes or in a list, or for which the plant has no amount and no date, is
 * set as it is written: it may be a name, and what is none is refused by the key's own rule.
 */
final class RelativePatch {
  private RelativePatch() {}

  /** The plant with a patch applied. */
  static Tree merge(Tree target, Tree patch) {
    return MergePatch.merge(target, resolved(target, patch, ""));
  }

  private static Tree resolved(Tree target, Tree patch, String path) {
    if (patch instanceof Entries changes && target instanceof Entries old) {
      Map<String, Entry> all = new LinkedHashMap<>();
      changes
          .map()
          .forEach(
              (key, entry) -> {
                String inner = path.isEmpty() ? key : path + "." + key;
                Tree value =
                    old.at(key).map(at -> resolved(at, entry.value(), inner)).orElse(entry.value());
                all.put(key, new Entry(entry.keyPlace(), value));
              });
      return new Entries(all, changes.place());
    }
    return relative(target, patch, path).orElse(patch);
  }

  private static Optional<Tree> relative(Tree target, Tree patch, String path) {
    if (!(patch instanceof Scalar value && value.plain())) {
      return Optional.empty();
    }
    try {
      return RelativeValue.of(path, value.text(), value.place())
          .map(of -> of.changed(target, path));
    } catch (UnreadableException neither) {
      return Optional.empty();
    }
  }

  /**
   * Paths at which two patches scale or move alike what the plant has; one after the other they
   * would do so twice.
   */
  static List<String> twice(Tree target, Tree a, Tree b) {
    List<String> paths = new ArrayList<>();
    twice(target, a, b, "", paths);
    return paths;
  }

  private static void twice(Tree target, Tree a, Tree b, String path, List<String> paths) {
    if (target instanceof Entries old && a instanceof Entries left && b instanceof Entries right) {
      for (String key : left.map().keySet()) {
        if (old.at(key).isPresent() && right.at(key).isPresent()) {
          String inner = path.isEmpty() ? key : path + "." + key;
          twice(old.at(key).get(), left.at(key).get(), right.at(key).get(), inner, paths);
        }
      }
    } else if (Tree.same(a, b) && relative(target, a, path).isPresent()) {
      paths.add(path);
    }
  }
}
