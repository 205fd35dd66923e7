package hurdline.plant.yaml.tree;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A YAML document with the place of every key and value; never changed once built. */
public sealed interface Tree {

  SourcePosition place();

  /**
   * @param text as it stands in the file, quotes taken off
   * @param plain whether it stood without quotes
   */
  record Scalar(String text, boolean plain, SourcePosition place) implements Tree {
    public boolean isNull() {
      return plain && (text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null"));
    }
  }

  record Items(List<Tree> list, SourcePosition place) implements Tree {
    public Items {
      list = List.copyOf(list);
    }
  }

  /** A value and where its key stands. */
  record Entry(SourcePosition keyPlace, Tree value) {}

  record Entries(Map<String, Entry> map, SourcePosition place) implements Tree {
    public Entries {
      map = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    public Optional<Tree> at(String key) {
      return Optional.ofNullable(map.get(key)).map(Entry::value);
    }
  }

  /** What stands at a path such as {@code season.2.tasks}. */
  static Optional<Tree> find(Tree tree, String path) {
    Optional<Tree> at = Optional.of(tree);
    for (String key : path.split("\\.")) {
      at = at.flatMap(within -> within.inner(key));
    }
    return at;
  }

  private Optional<Tree> inner(String key) {
    if (this instanceof Items items) {
      boolean there = key.matches("\\d{1,6}") && Integer.parseInt(key) < items.list().size();
      return there ? Optional.of(items.list().get(Integer.parseInt(key))) : Optional.empty();
    }
    return this instanceof Entries entries ? entries.at(key) : Optional.empty();
  }

  /** Whether nothing stands here. */
  default boolean isNothing() {
    return this instanceof Scalar scalar && scalar.isNull();
  }

  /** Whether two trees say the same, wherever they stand. */
  static boolean same(Tree a, Tree b) {
    if (a == b) {
      return true;
    }
    if (a instanceof Scalar left && b instanceof Scalar right) {
      return left.text().equals(right.text()) && left.isNull() == right.isNull();
    }
    if (a instanceof Items left && b instanceof Items right) {
      return sameItems(left.list(), right.list());
    }
    return a instanceof Entries left
        && b instanceof Entries right
        && left.map().keySet().equals(right.map().keySet())
        && left.map().keySet().stream()
            .allMatch(key -> same(left.map().get(key).value(), right.map().get(key).value()));
  }

  private static boolean sameItems(List<Tree> left, List<Tree> right) {
    if (left.size() != right.size()) {
      return false;
    }
    for (int i = 0; i < left.size(); i++) {
      if (!same(left.get(i), right.get(i))) {
        return false;
      }
    }
    return true;
  }
}
