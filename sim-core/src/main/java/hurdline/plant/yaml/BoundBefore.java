package hurdline.plant.yaml;

import hurdline.plant.Plant;
import hurdline.plant.Title;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A tree that was bound without problems and the plant that it came to. A changed tree shares with
 * it all nodes that no change has touched, and what was bound from such a node is taken over.
 *
 * <p>It never changes. What a binder goes by besides its own node, it asks of with {@link #where};
 * {@code ChangedPlantTest} holds every changed plant against one that is bound whole.
 */
final class BoundBefore {
  private static final BoundBefore NOTHING = new BoundBefore(Map.of(), null, Optional.empty());

  private final Map<String, Entry> sections;
  private final Plant plant;
  private final Optional<String> currency;
  private final Map<String, MapKeys> shapes;
  private final Map<Title.Kind, List<Title>> titles;

  private BoundBefore(Map<String, Entry> sections, Plant plant, Optional<String> currency) {
    this.sections = sections;
    this.plant = plant;
    this.currency = currency;
    Entry machines = sections.get("machines");
    shapes = machines == null ? Map.of() : PlantBinder.shapes(alone(machines.value()));
    titles =
        plant == null
            ? Map.of()
            : plant.titles().stream().collect(Collectors.groupingBy(Title::kind));
  }

  private static NodeReader alone(Tree tree) {
    return NodeReader.top(tree, new Binding(RainFiles.none(), new Findings(), new Findings()));
  }

  /** No tree was bound before. */
  static BoundBefore nothing() {
    return NOTHING;
  }

  /**
   * @param tree a map in which nothing was found to be wrong
   * @param binding with which it was bound to the plant
   */
  static BoundBefore of(Tree tree, Binding binding, Plant plant) {
    return new BoundBefore(((Entries) tree).map(), plant, binding.currency());
  }

  /** This where it holds, else nothing. */
  BoundBefore where(boolean holds) {
    return holds ? this : NOTHING;
  }

  /** The plant that the tree came to. */
  Optional<Plant> plant() {
    return Optional.ofNullable(plant);
  }

  /** Whether something of the plant was the same before. */
  <T> boolean isOf(Function<Plant, T> before, T now) {
    T was = plant == null ? null : before.apply(plant);
    return was == now || now.equals(was);
  }

  /** The currency that all its prices are in. */
  Optional<String> currency() {
    return currency;
  }

  /** The kind of keys that each machine has. */
  Map<String, MapKeys> shapes() {
    return shapes;
  }

  /** A section of the file: as it was bound before, or bound now. */
  <T> T section(NodeReader at, Function<Plant, T> before, Function<NodeReader, T> bind) {
    return isUntouched(at) ? before.apply(plant) : bind.apply(at);
  }

  /** The things of a section by name, each as it was bound before, or bound now. */
  <T> List<T> each(
      NodeReader at,
      String kind,
      Function<Plant, List<T>> before,
      BiFunction<String, NodeReader, T> bind) {
    if (isUntouched(at)) {
      return before.apply(plant);
    }
    Map<String, T> untouched = untouched(at, before);
    return at.each(
        kind,
        (name, thing) ->
            untouched.containsKey(name) ? untouched.get(name) : bind.apply(name, thing));
  }

  /** What was bound, by name, from nodes that still stand in the section. */
  private <T> Map<String, T> untouched(NodeReader at, Function<Plant, List<T>> before) {
    Map<String, T> untouched = new HashMap<>();
    if (sections.containsKey(at.path()) && sections.get(at.path()).value() instanceof Entries old) {
      Map<String, Entry> now = at.entries().orElse(Map.of());
      Iterator<T> bound = before.apply(plant).iterator(); // one of each name, in this order
      for (Map.Entry<String, Entry> was : old.map().entrySet()) {
        T thing = bound.next();
        Entry is = now.get(was.getKey());
        if (is != null && is.value() == was.getValue().value()) {
          untouched.put(was.getKey(), thing);
        }
      }
    }
    return untouched;
  }

  private boolean isUntouched(NodeReader section) {
    Entry was = sections.get(section.path());
    Tree node = was == null || was.value().isNothing() ? null : was.value();
    return plant != null && section.tree().orElse(null) == node;
  }

  /** The titles of a kind where nothing can have changed them. */
  Optional<List<Title>> titles(Title.Kind kind, NodeReader section) {
    return isUntouched(section)
        ? Optional.of(titles.getOrDefault(kind, List.of()))
        : Optional.empty();
  }
}
