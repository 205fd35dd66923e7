package hurdline.plant.yaml;

import hurdline.plant.Change;
import hurdline.plant.Expected;
import hurdline.plant.Nearest;
import hurdline.plant.Problem;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.TreeReader;
import hurdline.plant.yaml.tree.UnreadableException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * One value set, scaled or moved at a path; places in a list count from 0, {@code *} is every one.
 * What is changed relatively under a star need not be said by every one, but by some.
 */
final class ValueChange {
  private static final String EVERY = "*";

  /** Under this path a relative value means all prices of electricity; a ratchet is none. */
  private static final String ELECTRICITY = "money.electricity.*";

  private static final List<String> PRICES =
      List.of("energy", "demand", "periods.*.energy", "periods.*.demand");

  private final String path;
  private final List<String> steps;
  private final Tree value;
  private final RelativeValue relative;
  private int done;
  private Supplier<UnreadableException> missed;

  /**
   * @param value null where what is there is scaled or moved
   * @param relative null where a value is set
   */
  private ValueChange(String path, Tree value, RelativeValue relative) {
    this.path = path;
    this.steps = List.of(path.split("\\.", -1));
    this.value = value;
    this.relative = relative;
  }

  /**
   * The tree with the value set, or changed where the change says {@code x0.8} or {@code +30d}.
   *
   * @throws UnreadableException if the path leads nowhere, the value is not YAML, or what it leads
   *     to cannot be changed so
   */
  static Tree apply(Tree tree, Change.Value change) {
    RelativeValue relative =
        RelativeValue.of(change.path(), change.value(), SourcePosition.NOWHERE).orElse(null);
    if (relative != null && change.path().equals(ELECTRICITY)) {
      return everyPrice(tree, change);
    }
    Tree value = relative == null ? valueOf(change) : null;
    return new ValueChange(change.path(), value, relative).applied(tree);
  }

  private static Tree everyPrice(Tree tree, Change.Value change) {
    Tree changed = tree;
    boolean any = false;
    for (String price : PRICES) {
      String path = ELECTRICITY.replace(EVERY, price);
      if (isSaid(tree, List.of(path.split("\\.")))) {
        any = true;
        changed = apply(changed, new Change.Value(path, change.value()));
      }
    }
    if (!any) {
      throw refuse(
          change.path(),
          "the plant has no price of electricity to change",
          "\"energy\" or \"demand\" under money.electricity");
    }
    return changed;
  }

  /** Whether a path leads to a value, by any of the names that a star stands for. */
  private static boolean isSaid(Tree at, List<String> steps) {
    if (steps.isEmpty()) {
      return !at.isNothing();
    }
    if (!(at instanceof Entries entries)) {
      return false;
    }
    List<String> further = steps.subList(1, steps.size());
    return steps.get(0).equals(EVERY)
        ? entries.map().values().stream().anyMatch(entry -> isSaid(entry.value(), further))
        : entries.at(steps.get(0)).filter(tree -> isSaid(tree, further)).isPresent();
  }

  private Tree applied(Tree tree) {
    Tree changed = set(tree, 0, "");
    if (done == 0 && missed != null) {
      throw missed.get();
    }
    return changed;
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
          change.path(),
          MessageText.quoted(change.value()) + ": " + problem.said(),
          problem.expected());
    }
  }

  /** The tree with its places taken off, since no file holds it. */
  private static Tree nowhere(Tree tree) {
    if (tree instanceof Scalar scalar) {
      return new Scalar(scalar.text(), scalar.plain(), SourcePosition.NOWHERE);
    }
    if (tree instanceof Items items) {
      return new Items(
          items.list().stream().map(ValueChange::nowhere).toList(), SourcePosition.NOWHERE);
    }
    Map<String, Entry> map = new LinkedHashMap<>();
    ((Entries) tree)
        .map()
        .forEach(
            (key, entry) ->
                map.put(key, new Entry(SourcePosition.NOWHERE, nowhere(entry.value()))));
    return new Entries(map, SourcePosition.NOWHERE);
  }

  /**
   * @param here the way so far, every star replaced by a name
   */
  private Tree set(Tree at, int depth, String here) {
    if (depth == steps.size()) {
      done++;
      return relative == null ? value : relative.changed(at, here);
    }
    String step = steps.get(depth);
    if (at instanceof Items items) {
      return inList(items, step, depth, here);
    }
    if (at instanceof Entries entries) {
      return inMap(entries, step, depth, here);
    }
    throw refuse(
        path,
        MessageText.quoted(here) + " holds one value and no \"" + step + "\"",
        "a path that ends there");
  }

  private Tree inList(Items items, String step, int depth, String here) {
    List<Tree> list = new ArrayList<>(items.list());
    if (!step.equals(EVERY)
        && !(step.matches("[0-9]{1,6}") && Integer.parseInt(step) < list.size())) {
      throw refuse(
          path,
          "\"" + step + "\" is no place in the list " + here,
          list.isEmpty()
              ? "a list with places"
              : "a place from 0 to " + (list.size() - 1) + ", or * for every one");
    }
    for (int i = 0; i < list.size(); i++) {
      if (step.equals(EVERY) || i == Integer.parseInt(step)) {
        list.set(i, set(list.get(i), depth + 1, further(here, Integer.toString(i))));
      }
    }
    return new Items(list, items.place());
  }

  private Tree inMap(Entries entries, String step, int depth, String here) {
    Map<String, Entry> map = new LinkedHashMap<>(entries.map());
    if (step.equals(EVERY)) {
      if (map.isEmpty()) {
        throw refuse(path, "there is nothing in " + here, "a map with something in it");
      }
      map.replaceAll(
          (key, entry) ->
              new Entry(entry.keyPlace(), set(entry.value(), depth + 1, further(here, key))));
      return new Entries(map, entries.place());
    }
    Entry old = map.get(step);
    if (relative != null && (old == null || old.value().isNothing())) {
      missed = () -> relative.nothing(further(here, step), step, map.keySet());
      if (steps.subList(0, depth).contains(EVERY)) {
        return entries;
      }
      throw missed.get();
    }
    if (old == null) {
      refuseStranger(map.keySet(), step, depth);
    }
    Tree under = old == null ? new Entries(Map.of(), SourcePosition.NOWHERE) : old.value();
    map.put(
        step,
        new Entry(
            old == null ? SourcePosition.NOWHERE : old.keyPlace(),
            set(under, depth + 1, further(here, step))));
    return new Entries(map, entries.place());
  }

  private static String further(String here, String step) {
    return here.isEmpty() ? step : here + "." + step;
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
          "there is no " + MessageText.quoted(step) + (depth == 0 ? "" : " in " + upTo(depth)),
          Nearest.expected("a name or key", step, known));
    }
  }

  private String upTo(int depth) {
    return String.join(".", steps.subList(0, depth));
  }

  static UnreadableException refuse(String path, String said, String expected) {
    return refuse(path, said, Expected.of(expected));
  }

  static UnreadableException refuse(String path, String said, Expected expected) {
    return new UnreadableException(
        new Finding(SourcePosition.NOWHERE, new Problem(path, said, expected)));
  }
}
