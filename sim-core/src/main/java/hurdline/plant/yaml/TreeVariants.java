package hurdline.plant.yaml;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.Problem;
import hurdline.plant.ProblemsException;
import hurdline.plant.Variants;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Locator;
import hurdline.plant.yaml.tree.MergePatch;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Changes a plant by changing its tree and binding what has changed. */
final class TreeVariants implements Variants {
  private final String file;
  private final Tree base;
  private final RainFiles rains;
  private final BoundBefore before;
  private final NamedPatches patches;

  /**
   * @param before the base as it was bound, of which a changed plant takes over what no change has
   *     touched; nothing for one that is always bound whole
   */
  TreeVariants(String file, Tree base, RainFiles rains, BoundBefore before) {
    this.file = file;
    this.base = base;
    this.rains = rains;
    this.before = before;
    this.patches = new NamedPatches(base);
  }

  @Override
  public Plant with(Change... changes) {
    return changes.length == 0 && before.plant().isPresent()
        ? before.plant().get()
        : with(new Findings(), before, changes);
  }

  /** The same plant, bound whole, with what is allowed but does nothing. */
  Plant with(Findings cautions, Change... changes) {
    return with(cautions, BoundBefore.nothing(), changes);
  }

  private Plant with(Findings cautions, BoundBefore takenOver, Change... changes) {
    Findings findings = new Findings();
    Plant plant = bound(changed(changes), new Binding(rains, findings, cautions, takenOver));
    if (!findings.isEmpty()) {
      String because = because(changes);
      throw new ProblemsException(
          findings.inOrder().stream()
              .map(finding -> finding.because(because).problemOf(file))
              .toList());
    }
    return plant;
  }

  private Plant bound(Tree tree, Binding binding) {
    try {
      return BoundPlant.plant(tree, binding);
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().problemOf(file)));
    }
  }

  @Override
  public Optional<String> said(String path, Change... changes) {
    return at(path, changes)
        .filter(at -> at instanceof Tree.Scalar scalar && !scalar.isNothing())
        .map(at -> ((Tree.Scalar) at).text());
  }

  @Override
  public Optional<String> text(String path, Change... changes) {
    return at(path, changes).filter(at -> !at.isNothing()).map(ValuesInPlace::flow);
  }

  private Optional<Tree> at(String path, Change... changes) {
    Tree at = changed(changes);
    for (String step : path.split("\\.", -1)) {
      Optional<Tree> next = Optional.empty();
      if (at instanceof Tree.Entries entries) {
        next = entries.at(step);
      } else if (at instanceof Tree.Items items && step.matches("[0-9]{1,6}")) {
        next = items.list().stream().skip(Integer.parseInt(step)).findFirst();
      }
      if (next.isEmpty()) {
        return Optional.empty();
      }
      at = next.get();
    }
    return Optional.of(at);
  }

  /** The tree with these changes applied in turn. */
  Tree changed(Change... changes) {
    try {
      refuseConflicts(changes);
      Tree tree = base;
      for (Change change : changes) {
        tree = changed(tree, change);
      }
      return tree;
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().problemOf(file)));
    }
  }

  private Tree changed(Tree tree, Change change) {
    if (change instanceof Change.Value value) {
      return ValueChange.apply(tree, value);
    }
    Tree merged = tree;
    for (String name : names(change).toList()) {
      merged = RelativePatch.merge(merged, patches.get(name).with());
    }
    return merged;
  }

  /** An option may be several, joined by a plus. */
  private static Stream<String> names(Change change) {
    return change instanceof Change.Named named
        ? Stream.of(named.name().split("\\+", -1)).map(String::strip)
        : Stream.empty();
  }

  private void refuseConflicts(Change... changes) {
    List<NamedPatches.Named> named =
        Stream.of(changes).flatMap(TreeVariants::names).distinct().map(patches::get).toList();
    List<LocatedProblem> problems = new ArrayList<>();
    for (int i = 0; i < named.size(); i++) {
      for (int j = 0; j < i; j++) {
        problems.addAll(conflicts(named.get(j), named.get(i)));
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
  }

  private List<LocatedProblem> conflicts(NamedPatches.Named a, NamedPatches.Named b) {
    Stream<LocatedProblem> apart =
        MergePatch.conflicts(a.with(), b.with()).stream()
            .map(
                path ->
                    conflict(
                        a,
                        b,
                        path,
                        " both change it, each to something else",
                        "options that agree on what they both change, or only one of them"));
    Stream<LocatedProblem> twice =
        RelativePatch.twice(base, a.with(), b.with()).stream()
            .map(
                path ->
                    conflict(
                        a,
                        b,
                        path,
                        " both scale or move it",
                        "only one of them, or one that sets a value"));
    return Stream.concat(apart, twice).toList();
  }

  private LocatedProblem conflict(
      NamedPatches.Named a, NamedPatches.Named b, String path, String both, String expected) {
    String said =
        a.kind() + " \"" + a.name() + "\" and " + b.kind() + " \"" + b.name() + "\"" + both;
    return new Finding(Locator.of(b.with(), path, b.place()), new Problem(path, said, expected))
        .problemOf(file);
  }

  private static String because(Change... changes) {
    return Stream.of(changes)
        .map(
            change ->
                change instanceof Change.Named named
                    ? named.name()
                    : ((Change.Value) change).path() + "=" + ((Change.Value) change).value())
        .collect(Collectors.joining(", "));
  }
}
