package hurdline.plant.yaml;

import hurdline.plant.Expected;
import hurdline.plant.Problem;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.UnreadableException;
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
final class NodeReader {
  private static final int MOST_NAMES = 2_000;
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]{1,60}");

  private final Optional<Tree> tree;
  private final String path;
  private final SourcePosition place;
  private final Binding binding;

  private NodeReader(Optional<Tree> tree, String path, SourcePosition place, Binding binding) {
    this.tree = tree.filter(found -> !found.isNothing());
    this.path = path;
    this.place = place;
    this.binding = binding;
  }

  static boolean isName(String word) {
    return NAME.matcher(word).matches();
  }

  static NodeReader top(Tree tree, Binding binding) {
    return new NodeReader(Optional.of(tree), "", SourcePosition.TOP, binding);
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
    binding.findings().add(place, path, said + MessageText.oddSpace(tree, said), expected);
  }

  /** Says that something here is allowed and does nothing. */
  void idle(String said, String advice) {
    binding.cautions().add(place, path, said, advice);
  }

  /** What stands here, for a message. */
  String shown() {
    return tree.map(MessageText::of).orElse("nothing");
  }

  /** The keys of the map that is due here. */
  Fields fields(MapKeys shape) {
    if (tree.isPresent() && !isMap()) {
      wrong(
          shown() + " is not a map",
          shape.phrase() + ": a map of " + String.join(", ", shape.keys()));
    }
    return Fields.of(this, shape);
  }

  NodeReader child(String key) {
    return child(key, key);
  }

  /** The value of a key, under the name by which it should have gone. */
  NodeReader child(String key, String written) {
    Optional<Entry> entry = entries().map(map -> map.get(written));
    SourcePosition spot = entry.map(NodeReader::spot).orElse(place);
    return new NodeReader(entry.map(Entry::value), join(key), spot, binding);
  }

  /** The key itself, to point at it rather than at its value. */
  NodeReader key(String key) {
    return key(key, key);
  }

  /** The key as written, under the name by which it should have gone. */
  NodeReader key(String written, String key) {
    SourcePosition spot = entries().map(map -> map.get(written)).map(Entry::keyPlace).orElse(place);
    return new NodeReader(Optional.empty(), join(key), spot, binding);
  }

  Optional<Map<String, Entry>> entries() {
    return tree.filter(Entries.class::isInstance).map(found -> ((Entries) found).map());
  }

  private String join(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  private static SourcePosition spot(Entry entry) {
    return entry.value() instanceof Scalar scalar && !scalar.isNull()
        ? scalar.place()
        : entry.keyPlace();
  }

  /** The entries of a map from names of the file's own choosing. */
  Map<String, NodeReader> named(String kind) {
    Map<String, NodeReader> found = new LinkedHashMap<>();
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
              new Problem(
                  path,
                  "it holds " + names.size() + " entries",
                  "at most " + MOST_NAMES + ", more than any plant has")));
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
  <T> List<T> each(String kind, java.util.function.BiFunction<String, NodeReader, T> bind) {
    List<T> bound = new ArrayList<>();
    named(kind).forEach((name, at) -> bound.add(bind.apply(name, at)));
    return bound;
  }

  /** The places of a list. */
  List<NodeReader> items(String kind) {
    if (tree.isEmpty()) {
      return List.of();
    }
    if (!(tree.get() instanceof Items items)) {
      wrong(shown() + " is not a list", "a list of " + kind);
      return List.of();
    }
    List<NodeReader> found = new ArrayList<>();
    for (Tree item : items.list()) {
      found.add(
          new NodeReader(
              Optional.of(item), join(String.valueOf(found.size())), item.place(), binding));
    }
    return found;
  }

  <T> List<T> list(String kind, Function<NodeReader, T> bind) {
    return items(kind).stream().map(bind).toList();
  }
}
