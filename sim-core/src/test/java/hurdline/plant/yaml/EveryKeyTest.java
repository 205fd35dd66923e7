package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.TreeReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The plant with every key has indeed every key, so that what is tested on it is tested for all.
 */
class EveryKeyTest {

  @Test
  void everyKeyOfEveryMapStandsInTheFile() {
    Set<String> words = new HashSet<>();
    collect(TreeReader.read(Edited.plantFile().text(), new Findings()), words);
    // A crop's weather has either chances or a file, so the keys of the file stand elsewhere.
    collect(TreeReader.read(PlantFiles.text("exact/past_rain.yaml"), new Findings()), words);
    // A mill has shares or works to orders.
    collect(TreeReader.read(PlantFiles.text("exact/then_mix.yaml"), new Findings()), words);
    // An advance goes by area or by mass, and a purge needs a changeover before what is made.
    collect(TreeReader.read(PlantFiles.text("exact/advance_terms.yaml"), new Findings()), words);
    collect(TreeReader.read(PlantFiles.text("exact/purge.yaml"), new Findings()), words);
    List<String> missing = new ArrayList<>();
    for (MapKeys shape : MapKeys.values()) {
      shape.keys().stream()
          .filter(key -> !words.contains(key))
          .forEach(key -> missing.add(shape + "." + key));
    }
    assertThat(missing).isEmpty();
  }

  private static void collect(Tree tree, Set<String> words) {
    if (tree instanceof Tree.Entries entries) {
      entries
          .map()
          .forEach(
              (key, entry) -> {
                words.add(key);
                collect(entry.value(), words);
              });
    } else if (tree instanceof Tree.Items items) {
      items.list().forEach(item -> collect(item, words));
    }
  }

  @Test
  void everyMissingKeyHasAWordOnWhatIsWanted() {
    Set<String> statistics = Set.of("mean", "sd", "low", "high", "mode", "scale", "shape");
    for (MapKeys shape : MapKeys.values()) {
      for (String key : shape.required()) {
        assertThat(statistics.contains(key) || !shape.key(key).sample().isEmpty())
            .as(shape + "." + key)
            .isTrue();
      }
    }
  }
}
