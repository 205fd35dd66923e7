package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.TreeReader;
import hurdline.plant.yaml.tree.UnreadableException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The figures of a plant's text as a form: line by line and machine by machine, then what is common
 * to all. Amounts, dates and clock times are shown; words, names and lists stay in the text.
 */
public final class FormValues {
  private static final Pattern FIGURE =
      Pattern.compile(
          "[-+]?\\.?[0-9][0-9.,]*("
              + " *[A-Za-z%][A-Za-z0-9%/]*)?|[0-9]{4}-[0-9]{2}-[0-9]{2}|[0-9]{2}:[0-9]{2}");

  /** What changes a figure by a factor, or takes its place as a law or a list. */
  private static final Pattern CHANGE = Pattern.compile("(?s)x *[0-9.]+|\\{.*\\}|\\[.*\\]");

  /** Sections in the order in which the form has them, each with the group it goes to. */
  private static final Map<String, String> GROUPS = new LinkedHashMap<>();

  static {
    GROUPS.put("crops", "Crops");
    GROUPS.put("deliveries", "Fields and deliveries");
    GROUPS.put("yard", "Yard");
    GROUPS.put("calendar", "Calendar and shifts");
    GROUPS.put("season", "Season");
    GROUPS.put("crews", "Crews");
    GROUPS.put("hands", "Crews");
    GROUPS.put("resources", "Crews");
    GROUPS.put("products", "Products and packages");
    GROUPS.put("packages", "Products and packages");
    GROUPS.put("money", "Money");
    GROUPS.put("base_loads", "Money");
    GROUPS.put("options", "Options");
    GROUPS.put("plans", "Plans");
    GROUPS.put("choices", "Choices");
  }

  /**
   * A figure.
   *
   * @param group of the form, such as a line
   * @param part within the group, such as a machine; may be empty
   * @param path as of {@code --set}
   * @param label what it is, within its part
   * @param text as it stands
   */
  public record Value(String group, String part, String path, String label, String text) {}

  private final Entries plant;
  private final List<Value> values = new ArrayList<>();

  private FormValues(Entries plant) {
    this.plant = plant;
  }

  /** The figures of a text; none where it cannot be read. */
  public static List<Value> of(String text) {
    try {
      Tree tree = TreeReader.read(text, new Findings());
      return tree instanceof Entries plant ? new FormValues(plant).all() : List.of();
    } catch (UnreadableException half) {
      return List.of();
    }
  }

  /** Whether a person who types this in place of a figure leaves a figure there. */
  public static boolean isFigure(String typed) {
    return FIGURE.matcher(typed).matches() || CHANGE.matcher(typed).matches();
  }

  /** The titles in a section of the plant by name, such as of its options; none without it. */
  public static Map<String, String> titles(String text, String section) {
    Map<String, String> titles = new LinkedHashMap<>();
    try {
      if (TreeReader.read(text, new Findings()) instanceof Entries plant) {
        new FormValues(plant)
            .entries(section)
            .forEach((name, entry) -> titles.put(name, titled(name, entry)));
      }
    } catch (UnreadableException half) {
      titles.clear();
    }
    return titles;
  }

  /** How many single values a text holds, whether the form shows them or not. */
  public static int count(String text) {
    try {
      return count(TreeReader.read(text, new Findings()));
    } catch (UnreadableException half) {
      return 0;
    }
  }

  private static int count(Tree tree) {
    if (tree instanceof Items items) {
      return items.list().stream().mapToInt(FormValues::count).sum();
    }
    return tree instanceof Entries map
        ? map.map().values().stream().mapToInt(entry -> count(entry.value())).sum()
        : 1;
  }

  private List<Value> all() {
    List<String> shown = new ArrayList<>();
    entries("lines")
        .forEach(
            (line, of) -> {
              String group = titled(line, of);
              if (of instanceof Entries map
                  && map.at("steps").orElse(null) instanceof Entries steps) {
                steps.map().keySet().forEach(name -> machine(group, line, name, shown));
              }
            });
    entries("machines")
        .keySet()
        .forEach(
            name -> {
              if (!shown.contains(name)) {
                machine("Machines beside the lines", "", name, shown);
              }
            });
    GROUPS.forEach(this::section);
    return List.copyOf(values);
  }

  private Map<String, Tree> entries(String key) {
    Map<String, Tree> all = new LinkedHashMap<>();
    if (plant.at(key).orElse(null) instanceof Entries map) {
      map.map().forEach((name, entry) -> all.put(name, entry.value()));
    }
    return all;
  }

  /** What the machine does in the line, then the machine itself where it is met first. */
  private void machine(String group, String line, String name, List<String> shown) {
    Tree machine = entries("machines").get(name);
    String part = titled(name, machine);
    if (!line.isEmpty()) {
      String path = "lines." + line + ".steps." + name;
      Tree.find(plant, path).ifPresent(step -> walk(group, part, path, "", step));
    }
    if (machine != null && !shown.contains(name)) {
      shown.add(name);
      walk(group, part, "machines." + name, "", machine);
    }
  }

  private void section(String key, String group) {
    Tree section = plant.at(key).orElse(null);
    if (section instanceof Items list) {
      for (int i = 0; i < list.list().size(); i++) {
        walk(group, (i + 1) + ".", key + "." + i, "", list.list().get(i));
      }
    } else if (section instanceof Entries map) {
      map.map()
          .forEach(
              (name, entry) -> {
                boolean alone = !(entry.value() instanceof Entries);
                String part = alone ? "" : titled(name, entry.value());
                walk(group, part, key + "." + name, alone ? inWords(name) : "", entry.value());
              });
    }
  }

  private void walk(String group, String part, String path, String label, Tree at) {
    if (at instanceof Entries map) {
      map.map()
          .forEach(
              (key, entry) ->
                  walk(group, part, path + "." + key, joined(label, inWords(key)), entry.value()));
    } else if (at instanceof Items list) {
      for (int i = 0; i < list.list().size(); i++) {
        walk(
            group,
            part,
            path + "." + i,
            joined(label, Integer.toString(i + 1)),
            list.list().get(i));
      }
    } else if (at instanceof Scalar word && FIGURE.matcher(word.text()).matches()) {
      values.add(new Value(group, part, path, label, word.text()));
    }
  }

  private static String titled(String name, Tree of) {
    return of instanceof Entries map && map.at("title").orElse(null) instanceof Scalar title
        ? title.text()
        : inWords(name);
  }

  private static String inWords(String key) {
    return key.replace('_', ' ');
  }

  private static String joined(String label, String more) {
    return label.isEmpty() ? more : label + ", " + more;
  }
}
