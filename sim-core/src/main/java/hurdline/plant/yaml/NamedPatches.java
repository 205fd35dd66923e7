package hurdline.plant.yaml;

import hurdline.plant.Nearest;
import hurdline.plant.Problem;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.UnreadableException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The patches of a file's options and plans, by name. */
final class NamedPatches {

  /**
   * @param kind "option" or "plan"
   */
  record Named(String kind, String name, SourcePosition place, Tree with) {
    String because() {
      return kind + " " + name;
    }

    String path() {
      return kind + "s." + name;
    }
  }

  private final Map<String, Named> byName = new LinkedHashMap<>();

  NamedPatches(Tree tree) {
    add(tree, "option");
    add(tree, "plan");
  }

  private void add(Tree tree, String kind) {
    if (tree instanceof Entries top && top.at(kind + "s").orElse(null) instanceof Entries all) {
      all.map().forEach((name, entry) -> add(kind, name, entry));
    }
  }

  private void add(String kind, String name, Entry entry) {
    if (entry.value() instanceof Entries keys
        && keys.at("with").orElse(null) instanceof Entries with) {
      byName.putIfAbsent(name, new Named(kind, name, keys.map().get("with").keyPlace(), with));
    }
  }

  /** In the order of the file. */
  List<Named> all() {
    return List.copyOf(byName.values());
  }

  /**
   * @throws UnreadableException if there is no option or plan of that name
   */
  Named get(String name) {
    if (!byName.containsKey(name)) {
      throw new UnreadableException(
          new Finding(
              SourcePosition.NOWHERE,
              new Problem(
                  "",
                  MessageText.quoted(name) + " is neither an option nor a plan of this file",
                  Nearest.expected("an option or plan", name, byName.keySet()))));
    }
    return byName.get(name);
  }
}
