package hurdline.plant.yaml;

import hurdline.plant.Change;
import hurdline.plant.Problem;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.TextEdit;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.TreeReader;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.plant.yaml.tree.ValueEdit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One value put into the text of a plant file, or taken out of it; comments and layout stay.
 *
 * <p>The new text is read anew and must say what {@code --set} with that path and value makes of
 * the old one, and nothing else; otherwise nothing is changed.
 *
 * @param from where the old text begins that goes, in characters from the top
 * @param to behind the last of it
 * @param with what comes in its place
 */
public record PlantEdit(int from, int to, String with) {
  private static final String IN_THE_TEXT = "the change to be made in the text";

  /**
   * The edit that sets a value, or scales or moves it where the value says so.
   *
   * @param path keys and places joined by dots, as for {@code --set}
   * @param value YAML in one line, as for {@code --set}
   * @throws ProblemsException with the reason why nothing is changed
   */
  public static PlantEdit setting(String text, String path, String value) {
    return of(
        path,
        () -> {
          Tree before = TreeReader.read(text, new Findings());
          Tree due = ValueChange.apply(before, new Change.Value(path, value));
          if (path.contains("*")) {
            throw refuse(path, "it names several places", "one place, or " + IN_THE_TEXT);
          }
          boolean isWord = Tree.find(due, path).orElse(null) instanceof Scalar;
          String now = isWord ? words(due, path, value) : value;
          return checked(text, ValueEdit.setting(text, path, now), due, path);
        });
  }

  /**
   * The edit that takes a key away.
   *
   * @throws ProblemsException with the reason why nothing is changed
   */
  public static PlantEdit removal(String text, String path) {
    return of(
        path,
        () -> {
          Tree before = TreeReader.read(text, new Findings());
          TextEdit edit = ValueEdit.removal(text, path);
          return checked(text, edit, without(before, List.of(path.split("\\.")), 0), path);
        });
  }

  /** A text that somebody has typed, as YAML that says just this. */
  public static String word(String typed) {
    return ValueEdit.word(typed);
  }

  /** The text after the edit. */
  public String in(String text) {
    return new TextEdit(from, to, with).in(text);
  }

  private interface Work {
    PlantEdit done();
  }

  private static PlantEdit of(String path, Work work) {
    try {
      return work.done();
    } catch (UnreadableException e) {
      Problem problem = e.finding().problem();
      String at = problem.path().isEmpty() ? path : problem.path();
      Problem placed = new Problem(at, problem.said(), problem.expected());
      throw new ProblemsException(List.of(new Finding(e.finding().place(), placed).problemOf("")));
    }
  }

  /** What was asked for as it stands, unless it changes what is there by a factor or by days. */
  private static String words(Tree due, String path, String value) {
    String now = ((Scalar) Tree.find(due, path).orElseThrow()).text();
    return RelativeValue.of(path, value, SourcePosition.NOWHERE).isPresent() ? now : value;
  }

  private static PlantEdit checked(String text, TextEdit edit, Tree due, String path) {
    Tree after;
    try {
      after = TreeReader.read(edit.in(text), new Findings());
    } catch (UnreadableException e) {
      throw refuse(path, "the text around it cannot be changed from here", IN_THE_TEXT);
    }
    if (!Tree.same(due, after)) {
      throw refuse(path, "the edit would change something else too", IN_THE_TEXT);
    }
    return new PlantEdit(edit.from(), edit.to(), edit.with());
  }

  private static Tree without(Tree tree, List<String> steps, int depth) {
    String step = steps.get(depth);
    if (tree instanceof Items items) {
      List<Tree> list = new ArrayList<>(items.list());
      int place = Integer.parseInt(step);
      list.set(place, without(list.get(place), steps, depth + 1));
      return new Items(list, items.place());
    }
    Map<String, Entry> map = new LinkedHashMap<>(((Entries) tree).map());
    Entry entry = map.get(step);
    if (depth == steps.size() - 1) {
      map.remove(step);
    } else {
      map.put(step, new Entry(entry.keyPlace(), without(entry.value(), steps, depth + 1)));
    }
    return new Entries(map, tree.place());
  }

  private static UnreadableException refuse(String path, String said, String expected) {
    return ValueChange.refuse(path, said, expected);
  }
}
