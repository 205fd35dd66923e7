package hurdline.plant.yaml;

import hurdline.plant.Expected;
import hurdline.plant.Problem;
import hurdline.plant.yaml.Tree.Entries;
import hurdline.plant.yaml.Tree.Entry;
import hurdline.plant.yaml.Tree.Items;
import hurdline.plant.yaml.Tree.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * One spot of the tree while it is bound: what stands there, if anything, its path, and where to
 * point if it is wrong.
 */
final class At {
  private static final int MOST_NAMES = 2_000;
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]{1,60}");

  private final Optional<Tree> tree;
  private final String path;
  private final Spot place;
  private final Binding binding;

  private At(Optional<Tree> tree, String path, Spot place, Binding binding) {
    this.tree = tree.filter(found -> !found.isNothing());
    this.path = path;
    this.place = place;
    this.binding = binding;
  }

  static boolean isName(String word) {
    return NAME.matcher(word).matches();
  }

  static At top(Tree tree, Binding binding) {
    return new At(Optional.of(tree), "", Spot.TOP, binding);
  }

  boolean isGiven() {
    return tree.isPresent();
  }

  String path() {
    return path;
  }

  Binding binding() {
    return binding;
  }

  Optional<Tree> tree() {
    return tree;
  }

  /** The text of a scalar, where one stands here. */
  Optional<Scalar> scalar() {
    return tree.filter(Scalar.class::isInstance).map(Scalar.class::cast);
  }

  boolean isMap() {
    return tree.filter(Entries.class::isInstance).isPresent();
  }

  /** Says what is wrong here. */
  void wrong(String said, String expected) {
    wrong(said, Expected.of(expected));
  }

  void wrong(String said, Expected expected) {
    binding.findings().add(place, path, said + Shown.oddSpace(tree, said), expected);
  }

  /** Says that something here is allowed and does nothing. */
  void idle(String said, String advice) {
    binding.cautions().add(place, path, said, advice);
  }

  /** What stands here, for a message. */
  String shown() {
    return tree.map(Shown::of).orElse("nothing");
  }

  /** The keys of the map that is due here. */
  Fields fields(Shape shape) {
    if (tree.isPresent() && !isMap()) {
      wrong(
          shown() + " is not a map",
          shape.phrase() + ": a map of " + String.join(", ", shape.keys()));
    }
    return Fields.of(this, shape);
  }

  At child(String key) {
    return child(key, key);
  }

  /** The value of a key, under the name by which it should have gone. */
  At child(String key, String written) {
    Optional<Entry> entry = entries().map(map -> map.get(written));
    Spot spot = entry.map(At::spot).orElse(place);
    return new At(entry.map(Entry::value), join(key), spot, binding);
  }

  /** The key itself, to point at it rather than at its value. */
  At key(String key) {
    return key(key, key);
  }

  /** The key as written, under the name by which it should have gone. */
  At key(String written, String key) {
    Spot spot = entries().map(map -> map.get(written)).map(Entry::keyPlace).orElse(place);
    return new At(Optional.empty(), join(key), spot, binding);
  }

  Optional<Map<String, Entry>> entries() {
    return tree.filter(Entries.class::isInstance).map(found -> ((Entries) found).map());
  }

  private String join(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  private static Spot spot(Entry entry) {
    return entry.value() instanceof Scalar scalar && !scalar.isNull()
        ? scalar.place()
        : entry.keyPlace();
  }

  /** The entries of a map from names of the file's own choosing. */
  Map<String, At> named(String kind) {
    Map<String, At> found = new LinkedHashMap<>();
    if (tree.isPresent() && !isMap()) {
      wrong(
          shown() + " is not a map", "a map from the name of each " + kind + " to what it is like");
      return found;
    }
    Set<String> names = entries().orElse(Map.of()).keySet();
    if (names.size() > MOST_NAMES) {
      throw new UnreadableException(
          new Finding(
              place,
              new Problem(path, "it holds " + names.size() + " entries", "at most " + MOST_NAMES + ", more than any plant has")));
    }
    for (String name : names) {
      if (!NAME.matcher(name).matches()) {
        key(name)
            .wrong(
                "\"" + name + "\" cannot be a name", "letters, digits, _ and -, up to 60 of them");
      }
      found.put(name, child(name));
    }
    return found;
  }

  /** A map from names, each bound in turn. */
  <T> List<T> each(String kind, java.util.function.BiFunction<String, At, T> bind) {
    List<T> bound = new ArrayList<>();
    named(kind).forEach((name, at) -> bound.add(bind.apply(name, at)));
    return bound;
  }

  /** The places of a list. */
  List<At> items(String kind) {
    if (tree.isEmpty()) {
      return List.of();
    }
    if (!(tree.get() instanceof Items items)) {
      wrong(shown() + " is not a list", "a list of " + kind);
      return List.of();
    }
    List<At> found = new ArrayList<>();
    for (Tree item : items.list()) {
      found.add(
          new At(Optional.of(item), join(String.valueOf(found.size())), item.place(), binding));
    }
    return found;
  }

  <T> List<T> list(String kind, Function<At, T> bind) {
    return items(kind).stream().map(bind).toList();
  }
}
