package hurdline.plant.yaml;

import hurdline.plant.Change;
import hurdline.plant.Nearest;
import hurdline.plant.Problem;
import hurdline.plant.yaml.Tree.Entries;
import hurdline.plant.yaml.Tree.Entry;
import hurdline.plant.yaml.Tree.Items;
import hurdline.plant.yaml.Tree.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One value set at a path; places in a list count from 0, {@code *} is every one. */
final class ValueChange {
  private static final String EVERY = "*";

  private final String path;
  private final List<String> steps;
  private final Tree value;

  private ValueChange(String path, Tree value) {
    this.path = path;
    this.steps = List.of(path.split("\\.", -1));
    this.value = value;
  }

  /**
   * The tree with the value set.
   *
   * @throws UnreadableException if the path leads nowhere or the value is not YAML
   */
  static Tree apply(Tree tree, Change.Value change) {
    return new ValueChange(change.path(), valueOf(change)).set(tree, 0);
  }

  private static Tree valueOf(Change.Value change) {
    if (change.value().isBlank()) {
      throw refuse(change.path(), "no value is given", "a value such as machines.mill.power=25 hp");
    }
    try {
      Findings findings = new Findings();
      Tree value = nowhere(TreeReader.read(change.value(), findings));
      if (!findings.isEmpty()) {
        Problem first = findings.inOrder().get(0).problem();
        throw refuse(change.path(), first.said(), first.expected());
      }
      return value;
    } catch (UnreadableException e) {
      Problem problem = e.finding().problem();
      throw refuse(
          change.path(), Shown.quoted(change.value()) + ": " + problem.said(), problem.expected());
    }
  }

  /** The tree with its places taken off, since no file holds it. */
  private static Tree nowhere(Tree tree) {
    if (tree instanceof Scalar scalar) {
      return new Scalar(scalar.text(), scalar.plain(), Spot.NOWHERE);
    }
    if (tree instanceof Items items) {
      return new Items(items.list().stream().map(ValueChange::nowhere).toList(), Spot.NOWHERE);
    }
    Map<String, Entry> map = new LinkedHashMap<>();
    ((Entries) tree)
        .map()
        .forEach((key, entry) -> map.put(key, new Entry(Spot.NOWHERE, nowhere(entry.value()))));
    return new Entries(map, Spot.NOWHERE);
  }

  private Tree set(Tree at, int depth) {
    if (depth == steps.size()) {
      return value;
    }
    String step = steps.get(depth);
    if (at instanceof Items items) {
      return inList(items, step, depth);
    }
    if (at instanceof Entries entries) {
      return inMap(entries, step, depth);
    }
    throw refuse(
        path,
        Shown.quoted(upTo(depth)) + " holds one value and no \"" + step + "\"",
        "a path that ends there");
  }

  private Tree inList(Items items, String step, int depth) {
    List<Tree> list = new ArrayList<>(items.list());
    if (!step.equals(EVERY)
        && !(step.matches("[0-9]{1,6}") && Integer.parseInt(step) < list.size())) {
      throw refuse(
          path,
          "\"" + step + "\" is no place in the list " + upTo(depth),
          list.isEmpty()
              ? "a list with places"
              : "a place from 0 to " + (list.size() - 1) + ", or * for every one");
    }
    for (int i = 0; i < list.size(); i++) {
      if (step.equals(EVERY) || i == Integer.parseInt(step)) {
        list.set(i, set(list.get(i), depth + 1));
      }
    }
    return new Items(list, items.place());
  }

  private Tree inMap(Entries entries, String step, int depth) {
    Map<String, Entry> map = new LinkedHashMap<>(entries.map());
    if (step.equals(EVERY)) {
      if (map.isEmpty()) {
        throw refuse(path, "there is nothing in " + upTo(depth), "a map with something in it");
      }
      map.replaceAll((key, entry) -> new Entry(entry.keyPlace(), set(entry.value(), depth + 1)));
      return new Entries(map, entries.place());
    }
    Entry old = map.get(step);
    if (old == null) {
      refuseStranger(map.keySet(), step, depth);
    }
    Tree under = old == null ? new Entries(Map.of(), Spot.NOWHERE) : old.value();
    map.put(step, new Entry(old == null ? Spot.NOWHERE : old.keyPlace(), set(under, depth + 1)));
    return new Entries(map, entries.place());
  }

  /**
   * A key that has a default may be set though the file does not have it, and a thing be added
   * whole.
   */
  private void refuseStranger(Set<String> known, String step, int depth) {
    boolean last = depth == steps.size() - 1;
    boolean near = Nearest.to(step, known).isPresent();
    boolean name = NameMaps.isOne(upTo(depth));
    if (last ? name && near : name || near) {
      throw refuse(
          path,
          "there is no " + Shown.quoted(step) + (depth == 0 ? "" : " in " + upTo(depth)),
          Nearest.expected("a name or key", step, known));
    }
  }

  private String upTo(int depth) {
    return String.join(".", steps.subList(0, depth));
  }

  private static UnreadableException refuse(String path, String said, String expected) {
    return new UnreadableException(new Finding(Spot.NOWHERE, new Problem(path, said, expected)));
  }
}
