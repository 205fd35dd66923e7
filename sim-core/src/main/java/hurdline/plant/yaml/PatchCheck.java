package hurdline.plant.yaml;

import hurdline.plant.Expected;
import hurdline.plant.Nearest;
import hurdline.plant.Plant;
import hurdline.plant.Problem;
import hurdline.plant.Title;
import hurdline.plant.UnusedNames;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks at each option and plan while the file is read: its patch must change something, and what
 * it makes must hold.
 */
final class PatchCheck {
  /** Each costs as much as the plant itself. */
  private static final int MOST = 200;

  private static final Set<String> NOT_TO_BE_CHANGED =
      Set.of("hurdline", "options", "plans", "choices");

  private final Tree base;
  private final RainFiles rains;
  private final BoundBefore before;
  private final Findings findings;
  private final List<NamedPatches.Named> all;

  /** By the path of a name that the plant has not, the patches that add it. */
  private final Map<String, List<NamedPatches.Named>> adding = new HashMap<>();

  private PatchCheck(
      Tree base,
      List<NamedPatches.Named> all,
      RainFiles rains,
      BoundBefore before,
      Findings findings) {
    this.base = base;
    this.all = all;
    this.rains = rains;
    this.before = before;
    this.findings = findings;
  }

  /**
   * @param before the base as it was bound; nothing where it has problems
   */
  static void all(Tree base, RainFiles rains, BoundBefore before, Findings findings) {
    List<NamedPatches.Named> all = new NamedPatches(base).all();
    if (all.size() > MOST) {
      findings.add(
          all.get(MOST).place(),
          all.get(MOST).path(),
          "it has " + all.size() + " options and plans",
          "at most " + MOST + ", each of which is a plant to check");
      return;
    }
    PatchCheck check = new PatchCheck(base, all, rains, before, findings);
    for (NamedPatches.Named named : all) {
      check
          .added(named)
          .forEach(path -> check.adding.computeIfAbsent(path, key -> new ArrayList<>()).add(named));
    }
    List<Finding> known = findings.inOrder();
    all.forEach(named -> check.one(named, known));
  }

  private void one(NamedPatches.Named named, List<Finding> known) {
    Entries patch = (Entries) named.with();
    for (String key : patch.map().keySet()) {
      if (NOT_TO_BE_CHANGED.contains(key)) {
        add(
            patch.map().get(key).keyPlace(),
            named,
            key,
            "a patch may not change \"" + key + "\"",
            "changes of the plant itself");
        return;
      }
    }
    if (buildsOnAnother(named)) {
      return;
    }
    Tree merged = RelativePatch.merge(base, patch);
    if (Tree.same(base, merged)) {
      if (!strangers(named, bound(merged, new Findings()), List.of()).isEmpty()) {
        return;
      }
      add(
          named.place(),
          named,
          named.path() + ".with",
          "the " + named.kind() + " changes nothing",
          "a value that differs from the plant's own");
      return;
    }
    Findings changed = new Findings();
    Plant plant = bound(merged, changed);
    List<Finding> fresh =
        changed.inOrder().stream().filter(f -> known.stream().noneMatch(f::echoes)).toList();
    List<String> strangers = strangers(named, plant, fresh);
    renamed(named, plant);
    fresh.stream()
        .filter(
            finding -> strangers.stream().noneMatch(path -> within(finding.problem().path(), path)))
        .forEach(finding -> findings.add(finding.because(named.because())));
  }

  private Plant bound(Tree tree, Findings changed) {
    return BoundPlant.plant(tree, new Binding(rains, changed, new Findings(), before));
  }

  /**
   * What is in both plants reads alike in both, since a comparison shows one title for one thing.
   */
  private void renamed(NamedPatches.Named named, Plant plant) {
    for (Title title : plant.titles()) {
      String path = title.path().substring(0, title.path().lastIndexOf('.'));
      String before = path.substring(path.lastIndexOf('.') + 1).replace('_', ' ');
      Optional<Tree> thing = Tree.find(base, path);
      if (thing.isPresent()) {
        String read =
            Tree.find(base, title.path())
                .map(old -> old instanceof Tree.Scalar text ? text.text() : "")
                .orElse(before);
        Optional<Tree> said = Tree.find(named.with(), title.path());
        if (said.isPresent() && !read.equals(title.text())) {
          add(
              said.get().place(),
              named,
              title.path(),
              title.kind().word()
                  + " \""
                  + title.name()
                  + "\" reads \""
                  + title.text()
                  + "\" here and \""
                  + read
                  + "\" in the plant as it stands",
              "titles for what the "
                  + named.kind()
                  + " adds only; a comparison shows one title for one thing");
        }
      }
    }
  }

  /**
   * Whether it touches a name that only another patch adds; then it can be judged only beside that.
   */
  private boolean buildsOnAnother(NamedPatches.Named named) {
    Set<String> own = added(named);
    Optional<NamedPatches.Named> first =
        own.stream()
            .flatMap(path -> adding.get(path).stream())
            .filter(other -> !other.name().equals(named.name()))
            .min(Comparator.comparingInt(all::indexOf));
    if (first.isEmpty()) {
      return false;
    }
    Findings alone = new Findings();
    bound(RelativePatch.merge(base, first.get().with()), alone);
    return own.stream().noneMatch(alone::covers);
  }

  private Set<String> added(NamedPatches.Named named) {
    Set<String> added = new HashSet<>();
    walk(base, (Entries) named.with(), "", (path, known, entry) -> added.add(path));
    return added;
  }

  /** Paths of names that the patch adds and that were likely meant to be others. */
  private List<String> strangers(NamedPatches.Named named, Plant plant, List<Finding> fresh) {
    List<String> paths = new ArrayList<>();
    walk(
        base,
        (Entries) named.with(),
        "",
        (path, known, entry) -> {
          String name = path.substring(path.lastIndexOf('.') + 1);
          boolean removed = entry.value().isNothing();
          boolean broken =
              fresh.stream().anyMatch(finding -> within(finding.problem().path(), path));
          boolean meant = Nearest.to(name, known).isPresent();
          if (removed || (meant && (broken || UnusedNames.isUnused(plant, path)))) {
            String said =
                removed
                    ? "it removes \"" + name + "\", which is not there"
                    : "it names \"" + name + "\", which is not there";
            add(
                entry.keyPlace(),
                named,
                path,
                said,
                Nearest.expected("a name of the file", name, known));
            paths.add(path);
          }
        });
    return paths;
  }

  private interface Stranger {
    void meet(String path, Set<String> known, Entry entry);
  }

  private static void walk(Tree target, Entries patch, String path, Stranger stranger) {
    for (String key : patch.map().keySet()) {
      Entry entry = patch.map().get(key);
      String inner = path.isEmpty() ? key : path + "." + key;
      Tree old = target instanceof Entries map ? map.at(key).orElse(null) : null;
      if (old == null && NameMaps.isOne(path) && target instanceof Entries map) {
        stranger.meet(inner, map.map().keySet(), entry);
      } else if (entry.value() instanceof Entries deeper) {
        walk(old, deeper, inner, stranger);
      }
    }
  }

  private static boolean within(String path, String outer) {
    return path.equals(outer) || path.startsWith(outer + ".");
  }

  private void add(
      SourcePosition place, NamedPatches.Named named, String path, String said, String expected) {
    add(place, named, path, said, Expected.of(expected));
  }

  private void add(
      SourcePosition place, NamedPatches.Named named, String path, String said, Expected expected) {
    findings.add(new Finding(place, new Problem(path, said, expected), named.because()));
  }
}
