package hurdline.plant.yaml;

import hurdline.plant.Problem;
import java.util.ArrayList;
import java.util.List;

/** All that is wrong with one tree, gathered while it is bound. */
final class Findings {
  private final List<Finding> all = new ArrayList<>();

  void add(Spot place, String path, String said, String expected) {
    add(new Finding(place, new Problem(path, said, expected)));
  }

  void add(Finding finding) {
    if (!all.contains(finding)) {
      all.add(finding);
    }
  }

  int count() {
    return all.size();
  }

  boolean isEmpty() {
    return all.isEmpty();
  }

  /** Whether something is already wrong at or inside that path, so that more would only echo it. */
  boolean covers(String path) {
    return covers(path, true);
  }

  /** The same, of the path alone where what is inside does not count. */
  boolean covers(String path, boolean inside) {
    return all.stream()
        .map(finding -> finding.problem().path())
        .anyMatch(bad -> bad.equals(path) || (inside && bad.startsWith(path + ".")));
  }

  /** In file order; what no file holds comes last. */
  List<Finding> inOrder() {
    return all.stream().sorted(Finding.IN_ORDER).toList();
  }
}
