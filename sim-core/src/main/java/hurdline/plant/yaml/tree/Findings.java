package hurdline.plant.yaml.tree;

import hurdline.plant.Expected;
import hurdline.plant.Problem;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** All that is wrong with one tree, gathered while it is bound. */
public final class Findings {
  private static final int MOST = 1000;

  private final Set<Finding> all = new LinkedHashSet<>();
  private int untold;

  public void add(SourcePosition place, String path, String said, String expected) {
    add(place, path, said, Expected.of(expected));
  }

  public void add(SourcePosition place, String path, String said, Expected expected) {
    add(new Finding(place, new Problem(path, said, expected)));
  }

  /** Keeps the finding; past a thousand only their number, so that a file of rubbish has an end. */
  public void add(Finding finding) {
    if (all.size() < MOST) {
      all.add(finding);
    } else {
      untold++;
    }
  }

  public int count() {
    return all.size() + untold;
  }

  /** Whether there are more than can be told. */
  public boolean isFull() {
    return untold > 0;
  }

  public boolean isEmpty() {
    return all.isEmpty();
  }

  /** Whether something is already wrong at or inside that path, so that more would only echo it. */
  public boolean covers(String path) {
    return covers(path, true);
  }

  /** The same, of the path alone where what is inside does not count. */
  public boolean covers(String path, boolean inside) {
    return all.stream()
        .map(finding -> finding.problem().path())
        .anyMatch(bad -> bad.equals(path) || (inside && bad.startsWith(path + ".")));
  }

  /** In file order; what no file holds comes last. */
  public List<Finding> inOrder() {
    return all.stream().sorted(Finding.IN_ORDER).toList();
  }

  /** All of them, and one on how many more there are. */
  public List<LocatedProblem> problemsOf(String file) {
    List<LocatedProblem> problems =
        new ArrayList<>(inOrder().stream().map(finding -> finding.problemOf(file)).toList());
    if (untold > 0) {
      problems.add(
          LocatedProblem.of(file, untold + " more problems are not shown", "a plant file", ""));
    }
    return problems;
  }
}
