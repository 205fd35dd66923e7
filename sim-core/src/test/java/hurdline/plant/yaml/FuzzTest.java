package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.TreeReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever a file holds, reading it ends in a plant or in lines that say what is wrong. */
class FuzzTest {
  private static final String SPICES =
      "{}[]:,-#&*!|>'\"%@` \n\t0123456789.eE+abcxyz~?\\\u00e9\u2028";

  /**
   * Over eight seeds 111 to 117 of 120 are refused: nearly all, but what falls into a comment or a
   * name is read.
   */
  @Test
  void textChangedAnywhereIsReadOrRefusedInWords() {
    Random random = new Random(4714);
    String whole = Edited.plantFile().text();
    int refused = 0;
    for (int i = 0; i < 120; i++) {
      StringBuilder text = new StringBuilder(whole);
      for (int change = random.nextInt(3); change >= 0; change--) {
        change(text, random);
      }
      refused += FuzzCorpusTest.keepsThePromise(text.toString()) ? 1 : 0;
    }
    assertThat(refused).isBetween(60, 119);
  }

  private static void change(StringBuilder text, Random random) {
    int at = random.nextInt(text.length() - 40);
    switch (random.nextInt(4)) {
      case 0 -> text.deleteCharAt(at);
      case 1 -> text.insert(at, SPICES.charAt(random.nextInt(SPICES.length())));
      case 2 -> text.setCharAt(at, SPICES.charAt(random.nextInt(SPICES.length())));
      default -> text.delete(at, at + random.nextInt(40));
    }
  }

  @Test
  void linesLeftOutOrMovedAreReadOrRefusedInWords() {
    Random random = new Random(4712);
    List<String> lines = Edited.plantFile().text().lines().toList();
    int refused = 0;
    for (int i = 0; i < 60; i++) {
      List<String> changed = new java.util.ArrayList<>(lines);
      String line = changed.remove(random.nextInt(changed.size()));
      if (random.nextBoolean()) {
        changed.add(random.nextInt(changed.size()), line);
      }
      refused += FuzzCorpusTest.keepsThePromise(String.join("\n", changed)) ? 1 : 0;
    }
    assertThat(refused).isBetween(30, 60);
  }

  @Test
  void bytesWithoutSenseAreRefusedInWords() {
    Random random = new Random(4713);
    for (int i = 0; i < 300; i++) {
      byte[] bytes = new byte[1 + random.nextInt(200)];
      random.nextBytes(bytes);
      assertThat(FuzzCorpusTest.keepsThePromise(new String(bytes, StandardCharsets.ISO_8859_1)))
          .isTrue();
    }
  }

  @Test
  void valuesOfTheWrongKindAreReadOrRefusedInWords() {
    List<String> values =
        List.of(
            "null",
            "7",
            "x",
            "[]",
            "{}",
            "[1, [2]]",
            "{a: {b: 1}}",
            "-3 t",
            "1e99 kW",
            "99999999999999999999",
            "2027-02-30",
            "\"\"",
            "{normal: 3}");
    hurdline.plant.Variants variants = Edited.plantFile().read().variants();
    Tree tree = TreeReader.read(Edited.plantFile().text(), new Findings());
    List<String> paths = new java.util.ArrayList<>();
    walk(tree, "", paths);
    assertThat(paths).hasSizeGreaterThan(300);
    Random random = new Random(4714);
    for (String path : paths) {
      String value = values.get(random.nextInt(values.size()));
      try {
        variants.with(new Change.Value(path, value));
      } catch (ProblemsException e) {
        assertThat(e.lines()).isNotEmpty();
      }
    }
  }

  private static void walk(Tree tree, String path, List<String> paths) {
    if (!path.isEmpty()) {
      paths.add(path);
    }
    String start = path.isEmpty() ? "" : path + ".";
    if (tree instanceof Tree.Entries entries) {
      entries.map().forEach((key, entry) -> walk(entry.value(), start + key, paths));
    } else if (tree instanceof Tree.Items items) {
      for (int i = 0; i < items.list().size(); i++) {
        walk(items.list().get(i), start + i, paths);
      }
    }
  }
}
