package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Title;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What goes by path elsewhere in the reader stands at the same paths in the table of keys. */
class NamesInTheTableTest {
  private static final Pattern BY_NAME = Pattern.compile("map by \\w+ of (.*)");
  private static final Pattern SHAPES =
      Pattern.compile("(?:list of |map )?([A-Z_]+(?: or [A-Z_]+)*)(?:, .*)?");

  /**
   * Maps by names of elsewhere, to which an option or plan may well add one that the plant's map
   * has not.
   */
  private static final Set<String> MAY_GROW =
      Set.of(
          "crops.*.attributes",
          "crops.*.composition",
          "deliveries.*.fields.*.attributes",
          "deliveries.*.fields.*.composition",
          "deliveries.*.weather.by_month",
          "lines.*.steps.*.breakage",
          "lines.*.steps.*.makes",
          "lines.*.steps.*.outlets.*.by",
          "lines.*.steps.*.outlets.*.by.*",
          "lines.*.steps.*.outlets.*.by_diameter",
          "lines.*.steps.*.outlets.*.by_moisture",
          "lines.*.steps.*.outlets.*.takes",
          "lines.*.steps.*.rate_by",
          "yard.lift");

  private final Set<String> byName = new TreeSet<>();
  private final Set<String> titled = new TreeSet<>();

  NamesInTheTableTest() {
    walk("PLANT", "");
  }

  @Test
  void aNameThatAPatchAddsIsLookedAtWhereNamesAreTheFilesOwn() {
    assertThat(byName).contains("lines.*.steps", "crews.*").containsAll(MAY_GROW);
    for (String path : byName) {
      assertThat(NameMaps.isOne(path)).as(path).isEqualTo(!MAY_GROW.contains(path));
    }
  }

  @Test
  void titlesAreReadWhereTheTableHasThem() {
    assertThat(titled)
        .containsExactlyElementsOf(
            new TreeSet<>(Stream.of(Title.Kind.values()).map(Title.Kind::section).toList()));
  }

  private void walk(String shape, String prefix) {
    for (Key key : KeyTable.section(shape).keys()) {
      for (String kind : key.type().split("; ")) {
        inside(kind, prefix + key.name());
      }
    }
  }

  private void inside(String kind, String path) {
    Matcher map = BY_NAME.matcher(kind);
    Matcher shapes = SHAPES.matcher(kind);
    if (map.matches()) {
      byName.add(path);
      if (shapesOf(map.group(1)).stream().anyMatch(NamesInTheTableTest::hasTitle)) {
        titled.add(path);
      }
      inside(map.group(1), path + ".*");
    } else if (shapes.matches()) {
      boolean isOneMap = kind.startsWith("map ");
      shapesOf(shapes.group(1))
          .forEach(shape -> walk(shape, path + (isOneMap || path.endsWith(".*") ? "." : ".*.")));
    }
  }

  private static boolean hasTitle(String shape) {
    return KeyTable.section(shape).keys().stream().anyMatch(key -> key.type().equals("title"));
  }

  /** A machine is one of the maps of its kinds. */
  private static List<String> shapesOf(String words) {
    if (words.equals("MACHINE")) {
      return MachineBinder.KINDS.values().stream().map(MapKeys::name).distinct().toList();
    }
    return words.matches("[A-Z_]+( or [A-Z_]+)*") ? List.of(words.split(" or ")) : List.of();
  }
}
