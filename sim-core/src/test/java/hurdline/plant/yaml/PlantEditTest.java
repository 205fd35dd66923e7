package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.TreeReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Values set in the text of a plant file: one line changes, all else stays to the letter. */
class PlantEditTest {
  private static final List<String> ODD =
      List.of(
          "7 kW",
          "12 %",
          "x y",
          "0.5",
          "2027-03-04",
          "\"a: b\"",
          "[1, 2]",
          "{low: 1 h, high: 2 h}",
          "\"# no\"",
          "\"06:30\"");

  static Stream<String> shipped() {
    List<String> plants =
        List.of("sweetgum-bend", "stalk", "small", "late_cotton", "two_spouts", "chain_of_bins");
    return Stream.concat(
            plants.stream().map(name -> name + ".yaml"),
            PlantFiles.EXACT.stream().map(name -> "exact/" + name + ".yaml"))
        .filter(name -> PlantEditTest.class.getResource("/line-configs/" + name) != null);
  }

  /** The oracle is the tree that {@code --set} makes. */
  @ParameterizedTest
  @MethodSource("shipped")
  void everyThirdValueOfAShippedPlantIsSetInItsOneLine(String name) {
    valuesAreSet(PlantFiles.text(name), 3);
  }

  @Tag("proof")
  @ParameterizedTest
  @MethodSource("shipped")
  void everyValueOfAShippedPlantIsSetInItsOneLine(String name) {
    valuesAreSet(PlantFiles.text(name), 1);
  }

  @Test
  void everyValueIsSetInATextWithLineEndsOfTwoCharactersAndLettersBeyondSixteenBits() {
    String text = "# \uD83C\uDF3E hay\n" + PlantFiles.text("small.yaml");
    valuesAreSet(text.replace("\n", "\r\n"), 1);
  }

  private static void valuesAreSet(String text, int step) {
    Tree before = TreeReader.read(text, new Findings());
    List<String> paths = new ArrayList<>();
    walk(before, "", paths);
    assertThat(paths).hasSizeGreaterThan(20);
    for (int i = 0; i < paths.size(); i += step) {
      String path = paths.get(i);
      String value = ODD.get(i % ODD.size());
      String after = set(text, path, value);
      Tree due = ValueChange.apply(before, new Change.Value(path, value));
      assertThat(Tree.same(due, TreeReader.read(after, new Findings()))).as(path).isTrue();
      assertThat(changedLines(text, after)).as(path + " = " + value).isLessThanOrEqualTo(1);
      assertThat(after.chars().filter(c -> c == '#').count())
          .as("the comments beside " + path)
          .isGreaterThanOrEqualTo(text.chars().filter(c -> c == '#').count());
    }
  }

  private static int changedLines(String before, String after) {
    String[] old = before.split("\n", -1);
    String[] now = after.split("\n", -1);
    assertThat(now).as("no line more or less").hasSameSizeAs(old);
    int changed = 0;
    for (int i = 0; i < old.length; i++) {
      changed += old[i].equals(now[i]) ? 0 : 1;
    }
    return changed;
  }

  private static void walk(Tree at, String path, List<String> paths) {
    if (at instanceof Tree.Entries map) {
      map.map()
          .forEach(
              (key, entry) -> walk(entry.value(), path.isEmpty() ? key : path + "." + key, paths));
    } else if (at instanceof Tree.Items list) {
      for (int i = 0; i < list.list().size(); i++) {
        walk(list.list().get(i), path + "." + i, paths);
      }
    } else if (path.chars().filter(c -> c == '.').count() < 12) {
      paths.add(path);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "a: 1 # one|a|2|a: 2 # one",
        "a: {b: 1, c: 2}  # both|a.b|9 h|a: {b: 9 h, c: 2}  # both",
        "a: {b: 1, c: 2}|a.c|one, two|a: {b: 1, c: `one, two`}",
        "a: `15:00` # when|a|16:00|a: `16:00` # when",
        "a: 'it''s'  # c|a|other|a: `other`  # c",
        "`a`: {`b`: 1}|a.b|2|`a`: {`b`: 2}",
        "a:\\nb: 2|a|3|a: 3\\nb: 2",
        "a: {}   # none yet\\nb: 2|a.x|3|a: {x: 3}   # none yet\\nb: 2",
        "a: {\\n  b: 1,   # one\\n  c: 2    # two\\n}|a.d|3|a: {\\n  b: 1,   # one\\n  c: 2, d: 3    # two\\n}",
        "a: {b: 1, c: 2,}|a.d|3|a: {b: 1, c: 2, d: 3,}",
        "a: >\\n  one\\n  two\\n\\n# after\\nb: 2|a|three|a: three\\n\\n# after\\nb: 2",
        "a:\\n- x: 1   # first\\n- x: 2\\nb: 1|a.1.x|5|a:\\n- x: 1   # first\\n- x: 5\\nb: 1",
        "a:\\n  - x: 1   # first\\n  - x: 2|a.0.y|5|a:\\n  - x: 1   # first\\n    y: 5\\n  - x: 2",
        "a:\\n  1\\nb: 2|a|3|a:\\n  3\\nb: 2",
        "m:\\n  a:\\n    p: 1\\n  # about b\\n  b: 2|m.a.q|3|m:\\n  a:\\n    p: 1\\n    q: 3\\n  # about b\\n  b: 2",
        "a: 1\\nb:\\n  c: 2|b.d|3|a: 1\\nb:\\n  c: 2\\n  d: 3",
        "a: &x 1\\nb: *x|b|2|a: &x 1\\nb: 2",
        "a: [[1, 2], [3, 4]] # pairs|a.1.0|9|a: [[1, 2], [9, 4]] # pairs",
        "a:\\n  b: 1\\n  c: 2\\nd: 1|a|7|a: 7\\nd: 1",
        "m:\\n  a: 1\\n|m.b|{p: 1, q: 2}|m:\\n  a: 1\\n  b:\\n    p: 1\\n    q: 2\\n",
        "a: 20 kW # power|a|x1.5|a: 30 kW # power",
        "a: 2027-03-01 # begins|a|+30d|a: 2027-03-31 # begins",
        "# \uD83C\uDF3E\uD83C\uDF3E\\na: {b: 1, c: 2} # \uD83D\uDE9C|a.c|3|# \uD83C\uDF3E\uD83C\uDF3E\\na: {b: 1, c: 3} # \uD83D\uDE9C"
      })
  void aValueIsPutInItsPlace(String text, String path, String value, String due) {
    assertThat(set(lines(text, "\n"), path, value)).isEqualTo(lines(due, "\n"));
    assertThat(set(lines(text, "\r\n"), path, value)).isEqualTo(lines(due, "\r\n"));
  }

  private static String lines(String text, String end) {
    return text.replace("\\n", end).replace('`', '"');
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a: 1\\nb: 2 # two\\nc: 3|b|a: 1\\nc: 3",
        "a: {b: 1, c: 2, d: 3}|a.b|a: {c: 2, d: 3}",
        "a: {b: 1, c: 2, d: 3}|a.c|a: {b: 1, d: 3}",
        "a: {b: 1, c: 2, d: 3}|a.d|a: {b: 1, c: 2}",
        "a:\\n  b:\\n    c: 1\\n    d: 2\\n  # on e\\n  e: 3|a.b|a:\\n  # on e\\n  e: 3"
      })
  void aKeyIsTakenAway(String text, String path, String due) {
    String before = lines(text, "\n");
    assertThat(PlantEdit.removal(before, path).in(before)).isEqualTo(lines(due, "\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a: &x {p: 1}\\nb: *x|b.p|2|b.p: b repeats what \"&x\" names; expected the change where it is first said",
        "a: &x {p: 1}\\nb: *x|a.p|2|a.p: the edit would change something else too; expected the change to be made in the text",
        "a:\\n  b: 1 # why\\n  c: 2\\nd: 1|a|7|a: there is a comment inside of what would be replaced; expected the change to be made in the text",
        "a: 1|a.b|7|a.b: \"a\" holds one value and no \"b\"; expected a path that ends there",
        "a: [1, 2]|a.2|7|a.2: \"2\" is no place in the list a; expected a place from 0 to 1, or * for every one",
        "a: {b: 1, c: 2}|a.*|7|a.*: it names several places; expected one place, or the change to be made in the text",
        "a: {b: 1,400 bales}|a.b|7|a.b: the edit would change something else too; expected the change to be made in the text",
        "a: {b: 1|a.b|7|a.b: the brace \"{\" that opens here is not closed; expected a \"}\" behind its last entry"
      })
  void whatCannotBeDoneWithoutHarmIsRefused(String text, String path, String value, String said) {
    assertThatThrownBy(() -> set(lines(text, "\n"), path, value))
        .isInstanceOfSatisfying(
            ProblemsException.class,
            wrong -> assertThat(String.join("\n", wrong.lines())).endsWith(said));
  }

  @Test
  void whatIsNotThereIsNotTakenAway() {
    assertThatThrownBy(() -> PlantEdit.removal("a: 1", "b"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("there is no b to take away");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Gin, the \"old\" one # 2",
        "a: b",
        "- dash",
        "*star",
        "25 hp",
        "-15 USD/ton",
        "~",
        "#",
        "it's",
        "null",
        "tail:",
        "{brace",
        "%"
      })
  void whatSomebodyTypesIsReadAsTyped(String typed) {
    String text = "plant: old # name\nm: {x: old}\n";
    for (String path : List.of("plant", "m.x")) {
      String after = set(text, path, PlantEdit.word(typed));
      assertThat(Tree.find(TreeReader.read(after, new Findings()), path))
          .hasValueSatisfying(v -> assertThat(((Tree.Scalar) v).text()).isEqualTo(typed));
      assertThat(after).contains("# name");
    }
  }

  private static String set(String text, String path, String value) {
    return PlantEdit.setting(text, path, value).in(text);
  }
}
