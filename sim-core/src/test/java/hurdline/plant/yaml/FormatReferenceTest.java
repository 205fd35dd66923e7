package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Machine.PlainKind;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.MergePatch;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.TreeReader;
import hurdline.unit.FileUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The format reference names every key, and its snippets are read. */
class FormatReferenceTest {
  private static final String PAGE = PlantFiles.text("FORMAT.md");
  private static final Pattern SNIPPET = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);

  static List<String> snippets() {
    return SNIPPET.matcher(PAGE).results().map(found -> found.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("snippets")
  void aSnippetIsReadOverTheSmallPlant(String snippet) {
    Findings findings = new Findings();
    Tree tree =
        MergePatch.merge(
            TreeReader.read(snippets().get(0), findings), TreeReader.read(snippet, findings));
    BoundPlant.plant(tree, RainFiles.none(), findings);
    PatchCheck.all(tree, RainFiles.none(), BoundBefore.nothing(), findings);
    assertThat(findings.inOrder().stream().map(finding -> finding.problemOf("FORMAT.md").text()))
        .isEmpty();
  }

  @Test
  void thereIsASnippetForEachPartOfTheFile() {
    Set<String> shown = new HashSet<>();
    snippets()
        .forEach(
            snippet ->
                snippet
                    .lines()
                    .filter(line -> line.matches("[a-z_]+:.*"))
                    .forEach(line -> shown.add(line.substring(0, line.indexOf(':')))));
    assertThat(shown).containsExactlyInAnyOrderElementsOf(MapKeys.PLANT.keys());
  }

  @ParameterizedTest
  @EnumSource(MapKeys.class)
  void everyKeyHasItsRow(MapKeys shape) {
    Matcher table =
        Pattern.compile("<!-- " + shape + " -->\n\\|.*\n\\|.*\n((?:\\|.*\n)+)").matcher(PAGE);
    assertThat(table.find()).as("a table for " + shape).isTrue();
    List<String> keys = new ArrayList<>();
    List<String> required = new ArrayList<>();
    for (String row : table.group(1).split("\n")) {
      String[] cells = row.split("\\|");
      keys.add(cells[1].strip().replace("`", ""));
      if (cells[3].strip().equals("required")) {
        required.add(keys.get(keys.size() - 1));
      }
    }
    assertThat(keys).containsExactlyInAnyOrderElementsOf(shape.keys());
    assertThat(required).containsExactlyInAnyOrderElementsOf(shape.required());
  }

  @Test
  void everyUnitAndKindAndDistributionIsNamed() {
    Stream<String> units = Stream.of(FileUnit.values()).flatMap(unit -> unit.symbols().stream());
    assertThat(units.filter(unit -> !PAGE.contains("`" + unit + "`"))).isEmpty();
    assertThat(
            Stream.of(PlainKind.values())
                .map(kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', '-')))
        .allSatisfy(kind -> assertThat(PAGE).contains(kind));
    assertThat(RandomQuantityReader.NAMES).allSatisfy(name -> assertThat(PAGE).contains(name));
  }
}
