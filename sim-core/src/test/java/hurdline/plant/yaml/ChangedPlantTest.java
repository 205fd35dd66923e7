package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Locator;
import hurdline.plant.yaml.tree.MergePatch;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.TreeReader;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.simulation.CompiledPlant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A changed plant takes over what no change has touched. Here every value, map and list of plants
 * that have every key is changed and taken away, and the plant, its problems and what it compiles
 * to are those of the same tree bound and compiled whole.
 */
class ChangedPlantTest {
  private static final List<String> FOR_A_SCALAR = List.of("x1.1", "nonsense");
  private static final List<String> FOR_MORE = List.of("{}");

  /** A plant as it was bound, and its trees changed. */
  private static final class Base {
    private final Tree tree;
    private final RainFiles rains;
    private final BoundBefore before;
    private final CompiledPlant compiled;
    private int sound;

    Base(String text) {
      tree = TreeReader.read(text, new Findings());
      rains =
          RainFiles.among(Map.of("past_rain.csv", PlantFiles.text("exact/past_rain.csv")), tree);
      Binding binding = new Binding(rains, new Findings(), new Findings());
      Plant plant = BoundPlant.plant(tree, binding);
      before = BoundBefore.of(tree, binding, plant);
      compiled = CompiledPlant.of(plant);
    }

    /** Holds the changed tree against itself bound whole. */
    void holds(String changed, Tree now) {
      if (now == tree) {
        return; // the value was refused
      }
      Findings wholeFound = new Findings();
      Findings found = new Findings();
      Plant whole = BoundPlant.plant(now, new Binding(rains, wholeFound, new Findings()));
      Plant plant = BoundPlant.plant(now, new Binding(rains, found, new Findings(), before));
      assertThat(said(found)).as(changed).isEqualTo(said(wholeFound));
      assertThat(plant).as(changed).isEqualTo(whole);
      if (found.isEmpty()) {
        sound++;
        assertThat(Alike.difference(CompiledPlant.of(whole), compiled.changedTo(plant), ""))
            .as(changed)
            .isEmpty();
      }
    }

    private static List<String> said(Findings findings) {
      return findings.inOrder().stream().map(Finding::toString).toList();
    }
  }

  private static Tree set(Tree tree, String path, String value) {
    try {
      return ValueChange.apply(tree, new Change.Value(path, value));
    } catch (UnreadableException refused) {
      return tree;
    }
  }

  private static Tree without(Tree tree, String path) {
    Tree patch = new Tree.Scalar("", true, SourcePosition.NOWHERE);
    List<String> steps = List.of(path.split("\\."));
    for (int at = steps.size() - 1; at >= 0; at--) {
      patch =
          new Entries(
              Map.of(steps.get(at), new Entry(SourcePosition.NOWHERE, patch)),
              SourcePosition.NOWHERE);
    }
    return MergePatch.merge(tree, patch);
  }

  private static void paths(Tree tree, String path, Set<String> all, Set<String> keys) {
    if (tree instanceof Entries entries) {
      entries
          .map()
          .forEach(
              (key, entry) -> {
                keys.add(key);
                String inner = path.isEmpty() ? key : path + "." + key;
                all.add(inner);
                paths(entry.value(), inner, all, keys);
              });
    } else if (tree instanceof Items items) {
      for (int at = 0; at < items.list().size(); at++) {
        all.add(path + "." + at);
        paths(items.list().get(at), path + "." + at, all, keys);
      }
    }
  }

  @Test
  @Tag("proof")
  void everyKeyChangedAndTakenAwayGivesThePlantOfTheTreeBoundWhole() {
    Set<String> keys = changed(1);
    for (MapKeys shape : MapKeys.values()) {
      assertThat(keys).as("keys that were changed").containsAll(shape.keys());
    }
  }

  @Test
  void everyFifthPathOfThem() {
    changed(5);
  }

  /** Every so many paths of three plants; the keys of all. */
  private static Set<String> changed(int step) {
    Set<String> keys = new HashSet<>();
    for (String text :
        List.of(
            Edited.plantFile().text(),
            PlantFiles.text("exact/past_rain.yaml"),
            PlantFiles.text("exact/then_mix.yaml"))) {
      Base base = new Base(text);
      Set<String> paths = new TreeSet<>();
      paths(base.tree, "", paths, keys);
      int number = 0;
      for (String path : paths) {
        if (number++ % step != 0) {
          continue;
        }
        boolean holdsMore = Locator.holdsMore(base.tree, path);
        for (String value : holdsMore ? FOR_MORE : FOR_A_SCALAR) {
          base.holds(path + "=" + value, set(base.tree, path, value));
        }
        base.holds(path + " taken away", without(base.tree, path));
      }
      assertThat(base.sound)
          .as("changes that leave a plant without problems")
          .isGreaterThan(15 / step);
    }
    return keys;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "machines.*.stops.*.every=x1.1",
        "deliveries.*.fields.*.yield=x0.8",
        "products.*.price=x1.2",
        "lines.*.steps.*.rate=x1.1",
        "season.*.changeover=x2",
        "money.currency=EUR",
        "money.currency=euros",
        "calendar.from=+1d",
        "calendar.to=+400d",
        "crops.*.moisture=x1.1"
      })
  void whatManyKeysGoByChangesThemAll(String change) {
    Base base = new Base(PlantFiles.text(PlantFiles.EXAMPLE));
    String[] parts = change.split("=");
    Tree changed = set(base.tree, parts[0], parts[1]);
    assertThat(Tree.same(changed, base.tree)).isFalse();
    base.holds(change, changed);
  }

  /** Prices in the currency that is met first, where none is named. */
  @Test
  void aCurrencyThatIsNotNamedIsThatOfTheFirstPrice() {
    String text = PlantFiles.text(PlantFiles.EXAMPLE).replaceAll("(?ms)^money:.*?(?=^[a-z])", "");
    Base base = new Base(text);
    Tree changed = set(base.tree, "machines.mill.stops.hammer_set.cost", "1400 EUR");
    base.holds("another currency", changed);
    base.holds("a currency named", set(changed, "money", "{currency: EUR}"));
  }

  @Test
  void theOptionsOfTheExampleGiveTheirPlants() {
    Base base = new Base(PlantFiles.text(PlantFiles.EXAMPLE));
    for (NamedPatches.Named named : new NamedPatches(base.tree).all()) {
      base.holds(named.because(), RelativePatch.merge(base.tree, named.with()));
    }
    assertThat(base.sound).isEqualTo(new NamedPatches(base.tree).all().size());
  }

  /** The comparison of what is compiled sees hours, yard, haulage and lines. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "calendar.closed=[2027-03-01]",
        "yard.field_loss=x2",
        "deliveries.stalk.trucks.count=x2",
        "machines.mill.power=x1.1"
      })
  void anotherPlantIsCompiledToSomethingElse(String change) {
    String[] parts = change.split("=");
    PlantFile file = PlantFile.of("p.yaml", PlantFiles.text(PlantFiles.EXAMPLE));
    Plant changed = file.variants().with(new Change.Value(parts[0], parts[1]));
    CompiledPlant base = CompiledPlant.of(file.plant());
    CompiledPlant compiled = base.changedTo(changed);
    CompiledPlant mixed =
        new CompiledPlant(changed, base.layout(), base.roster(), base.yard(), base.haulage());
    assertThat(Alike.difference(CompiledPlant.of(changed), compiled, "")).isEmpty();
    assertThat(Alike.difference(CompiledPlant.of(changed), mixed, "")).isNotEmpty();
  }

  @Test
  void whatNoChangeHasTouchedIsTheSameObject() {
    PlantFile file = PlantFile.of("p.yaml", PlantFiles.text(PlantFiles.EXAMPLE));
    Plant plant = file.variants().with(new Change.Value("machines.mill.power", "40 hp"));
    assertThat(plant.lines()).isSameAs(file.plant().lines());
    assertThat(plant.yard()).isSameAs(file.plant().yard());
    assertThat(plant.machines().get(0)).isSameAs(file.plant().machines().get(0));
    assertThat(plant).isNotEqualTo(file.plant());
    assertThat(file.variants().with()).isSameAs(file.plant());
    CompiledPlant base = CompiledPlant.of(file.plant());
    assertThat(base.changedTo(plant).roster()).isSameAs(base.roster());
    assertThat(base.changedTo(plant).yard()).isSameAs(base.yard());
    assertThat(base.changedTo(plant).haulage()).isSameAs(base.haulage());
  }
}
