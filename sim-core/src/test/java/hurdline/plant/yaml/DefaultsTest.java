package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.TreeReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Where the table of keys gives a value as default, a file that says it and one that leaves the key
 * out are one plant.
 */
class DefaultsTest {
  private static final Pattern BY_NAME = Pattern.compile("map by \\w+ of (.*)");
  private static final Pattern LIST = Pattern.compile("list of ([A-Z_]+(?: or [A-Z_]+)*).*");
  private static final Pattern VALUE = Pattern.compile("[0-9.]+( [%A-Za-z/0-9]+)?");

  /** How nothing is written of each kind of value that the table gives the default 0. */
  private static final Map<String, List<String>> ZERO =
      Map.of(
          "money", List.of("0 USD"),
          "money/mass", List.of("0 USD/t"),
          "money/time", List.of("0 USD/h"),
          "money/area", List.of("0 USD/m2"),
          "money/energy", List.of("0 USD/kWh"),
          "money/power/time", List.of("0 USD/kW/month"),
          "mass or time", List.of("0 t", "0 h"),
          "mass or volume", List.of("0 t", "0 m3"));

  private static final PlantFile FILE = Edited.plantFile().read();

  /** Where each key of the table stands first in the file. */
  private final Map<Key, String> standing = new LinkedHashMap<>();

  /** Kinds of the file's machines. */
  private final Map<String, MapKeys> machines = new LinkedHashMap<>();

  @Test
  void aDefaultThatIsWrittenIsTheOneThatIsLeftOut() {
    walk(TreeReader.read(Edited.plantFile().text(), new Findings()), "PLANT", "");
    Set<String> held = new TreeSet<>();
    List<String> unlike = new ArrayList<>();
    standing.forEach(
        (key, path) -> {
          Optional<Plant> without = plant(path, "~");
          List<Plant> written = written(key).flatMap(value -> plant(path, value).stream()).toList();
          if (without.isPresent() && !written.isEmpty()) {
            held.add(key.name());
            written.stream()
                .filter(plant -> !plant.equals(without.get()))
                .forEach(plant -> unlike.add(path));
          }
        });
    assertThat(unlike).isEmpty();
    assertThat(held).hasSizeGreaterThan(30);
  }

  /** A wrong default in the table is seen. */
  @Test
  void aValueThatIsNotTheDefaultMakesAnotherPlant() {
    assertThat(plant("resources.mechanic.count", "7"))
        .isNotEqualTo(plant("resources.mechanic.count", "1"));
    assertThat(plant("machines.cyclone.collects", "99 %"))
        .isPresent()
        .isNotEqualTo(plant("machines.cyclone.collects", "~"));
  }

  private static Optional<Plant> plant(String path, String value) {
    try {
      return Optional.of(FILE.variants().with(new Change.Value(path, value)));
    } catch (ProblemsException other) {
      return Optional.empty();
    }
  }

  /** The default as values of the file; none where it is said in words. */
  private static Stream<String> written(Key key) {
    String fallback = key.fallback();
    if (key.type().startsWith("word: ")) {
      return List.of(key.type().substring("word: ".length()).split(", ")).contains(fallback)
          ? Stream.of(fallback)
          : Stream.of();
    }
    if (fallback.equals("0") && ZERO.containsKey(key.type())) {
      return ZERO.get(key.type()).stream();
    }
    return VALUE.matcher(fallback).matches() && !key.type().startsWith("pairs")
        ? Stream.of(fallback)
        : Stream.of();
  }

  private void walk(Tree tree, String shape, String path) {
    if (shape.equals("MACHINE")) {
      machines.put(
          path.substring(path.lastIndexOf('.') + 1),
          MachineBinder.KINDS.get(word((Entries) tree, "kind")));
    }
    if (tree instanceof Entries entries) {
      KeyTable.Section section = KeyTable.section(own(shape, entries, path));
      for (Key key : section.keys()) {
        String inner = path.isEmpty() ? key.name() : path + "." + key.name();
        entries.at(key.name()).ifPresent(value -> met(key, value, inner));
      }
    }
  }

  private void met(Key key, Tree value, String path) {
    standing.putIfAbsent(key, path);
    inside(value, key.type(), path);
  }

  private void inside(Tree value, String type, String path) {
    Matcher named = BY_NAME.matcher(type);
    Matcher list = LIST.matcher(type);
    if (named.matches() && value instanceof Entries entries) {
      entries
          .map()
          .forEach((name, entry) -> inside(entry.value(), named.group(1), path + "." + name));
    } else if (list.matches() && value instanceof Items items) {
      for (int at = 0; at < items.list().size(); at++) {
        walk(items.list().get(at), list.group(1), path + "." + at);
      }
    } else if (type.matches("(map )?[A-Z_]+( or [A-Z_]+)*")) {
      walk(value, type.replaceFirst("^map ", ""), path);
    }
  }

  /** Which of several kinds of map it is. */
  private String own(String shape, Entries entries, String path) {
    if (shape.startsWith("CAMPAIGN or")) {
      return entries.at("changeover").isPresent() ? "CHANGEOVER" : "CAMPAIGN";
    }
    if (shape.startsWith("STEP or")) {
      return switch (machines.get(path.substring(path.lastIndexOf('.') + 1))) {
        case FEEDER -> "FEEDER_STEP";
        case MILL -> "MILL_STEP";
        case BIN -> "BIN_STEP";
        default -> "STEP";
      };
    }
    return shape.equals("MACHINE")
        ? machines.get(path.substring(path.lastIndexOf('.') + 1)).name()
        : shape;
  }

  private static String word(Entries entries, String key) {
    return ((Scalar) entries.at(key).orElseThrow()).text();
  }
}
