package hurdline.plant.yaml;

import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.tree.FileText;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.TextPatch;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.TreeReader;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.problem.LocatedProblem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Values put into the text of a plant file, and values that a patch file holds. */
public final class ValuesInPlace {
  private ValuesInPlace() {}

  /**
   * The text of a plant file with other values, all else as it is.
   *
   * @param values in one line each, by path
   * @throws ProblemsException if that cannot be done so that the text says just this
   */
  public static String text(Path file, Map<String, String> values) {
    try {
      String whole = new String(FileText.bytes(file), java.nio.charset.StandardCharsets.UTF_8);
      String mark = whole.startsWith("\uFEFF") ? "\uFEFF" : "";
      return mark + text(file.toString(), whole.substring(mark.length()), values);
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().problemOf(file.toString())));
    }
  }

  /**
   * The same of a text, without a byte-order mark.
   *
   * @param file its name in problems
   */
  public static String text(String file, String text, Map<String, String> values) {
    try {
      Tree tree = TreeReader.read(text, new Findings());
      Tree due = tree;
      for (Map.Entry<String, String> value : values.entrySet()) {
        due = ValueChange.apply(due, new Change.Value(value.getKey(), value.getValue()));
      }
      String changed = TextPatch.with(text, values);
      if (!Tree.same(due, TreeReader.read(changed, new Findings()))) {
        throw new ProblemsException(
            List.of(
                LocatedProblem.of(
                    file,
                    "the values cannot be put in their places",
                    "the patch to be used as it is",
                    "")));
      }
      return changed;
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().problemOf(file)));
    }
  }

  /**
   * What a patch file sets, each as {@code KEY=VALUE}: plain values, lists and whole distributions.
   *
   * @throws ProblemsException if it is no YAML map, or takes something away
   */
  public static List<String> ofPatch(Path file) {
    Findings findings = new Findings();
    List<String> values = new ArrayList<>();
    try {
      Tree tree = TreeReader.read(FileText.text(FileText.bytes(file)), findings);
      if (tree instanceof Entries map) {
        values(map, "", values, findings);
      } else {
        findings.add(
            tree.place(), "", "it is no map", "keys of a plant file, such as fitted.yaml has them");
      }
    } catch (UnreadableException e) {
      findings.add(e.finding());
    }
    if (!findings.isEmpty()) {
      throw new ProblemsException(findings.problemsOf(file.toString()));
    }
    return values;
  }

  private static void values(Entries map, String path, List<String> values, Findings findings) {
    map.map()
        .forEach(
            (key, entry) -> {
              String at = path.isEmpty() ? key : path + "." + key;
              Tree value = entry.value();
              if (value.isNothing()) {
                findings.add(
                    value.place(),
                    at,
                    "it takes the key away",
                    "values to set; an option's \"with\" takes keys away");
              } else if (value instanceof Entries inner
                  && !isDistribution(inner)
                  && !isStop(inner)) {
                values(inner, at, values, findings);
              } else {
                values.add(at + "=" + flow(value));
              }
            });
  }

  private static boolean isDistribution(Entries map) {
    List<String> given =
        map.map().entrySet().stream()
            .filter(entry -> !entry.getValue().value().isNothing())
            .map(Map.Entry::getKey)
            .toList();
    return given.size() == 1 && RandomQuantityReader.NAMES.contains(given.get(0));
  }

  /** A whole stop, which a plant may not have yet. */
  private static boolean isStop(Entries map) {
    return map.map().keySet().containsAll(List.of("every", "counted", "lasts"));
  }

  /** In one line, as YAML has it. */
  static String flow(Tree tree) {
    if (tree instanceof Items items) {
      return items.list().stream()
          .map(ValuesInPlace::flow)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    if (tree instanceof Entries map) {
      return map.map().entrySet().stream()
          .filter(entry -> !entry.getValue().value().isNothing())
          .map(ValuesInPlace::flow)
          .collect(Collectors.joining(", ", "{", "}"));
    }
    Scalar scalar = (Scalar) tree;
    return scalar.plain()
        ? scalar.text()
        : '"' + scalar.text().replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private static String flow(Map.Entry<String, Entry> entry) {
    return entry.getKey() + ": " + flow(entry.getValue().value());
  }
}
