package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Keys that were read as others, so that a patch meets the key that was meant and one slip stays
 * one problem.
 */
final class Misspellings {
  private record Slip(List<String> map, String written, String meant) {}

  private final List<Slip> slips = new ArrayList<>();

  /**
   * @param path of the map that the key stands in; empty for the plant itself
   */
  void add(String path, String written, String meant) {
    slips.add(new Slip(path.isEmpty() ? List.of() : List.of(path.split("\\.")), written, meant));
  }

  /** The tree with every key as it was read. */
  Tree corrected(Tree tree) {
    Tree corrected = tree;
    for (Slip slip : slips) {
      corrected = corrected(corrected, slip, 0);
    }
    return corrected;
  }

  private static Tree corrected(Tree at, Slip slip, int depth) {
    boolean here = depth == slip.map().size();
    if (at instanceof Items items && !here) {
      List<Tree> list = new ArrayList<>(items.list());
      int place = Integer.parseInt(slip.map().get(depth));
      list.set(place, corrected(list.get(place), slip, depth + 1));
      return new Items(list, items.place());
    }
    if (!(at instanceof Entries entries)) {
      return at;
    }
    Map<String, Entry> map = new LinkedHashMap<>();
    entries
        .map()
        .forEach(
            (key, entry) -> {
              boolean onTheWay = !here && key.equals(slip.map().get(depth));
              Tree value = onTheWay ? corrected(entry.value(), slip, depth + 1) : entry.value();
              map.put(
                  here && key.equals(slip.written()) ? slip.meant() : key,
                  new Entry(entry.keyPlace(), value));
            });
    return new Entries(map, entries.place());
  }
}
