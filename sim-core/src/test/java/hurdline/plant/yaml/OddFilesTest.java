package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.ProblemsException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no plant files: one clear line each. */
class OddFilesTest {
  @TempDir private Path folder;

  private static List<String> refused(Path file) {
    return Assertions.assertThrows(ProblemsException.class, () -> PlantFile.read(file))
        .lines()
        .stream()
        .map(line -> line.replace(file.toString(), "FILE"))
        .toList();
  }

  private void says(byte[] bytes, String line) throws IOException {
    Path file = Files.write(folder.resolve("odd.yaml"), bytes);
    assertThat(refused(file)).containsExactly(line);
  }

  private void says(String text, String line) throws IOException {
    says(text.getBytes(StandardCharsets.UTF_8), line);
  }

  @Test
  void aFileThatIsNotThere() {
    assertThat(refused(folder.resolve("none.yaml")))
        .containsExactly("FILE: there is no such file; expected the path of a plant file");
  }

  @Test
  void aDirectory() {
    assertThat(refused(folder))
        .containsExactly("FILE: it is a directory; expected a plant file in it");
  }

  @Test
  void anEmptyFile() throws IOException {
    says("", "FILE: it is empty; expected a plant file that begins with \"hurdline: 1\"");
    says(" \n\n", "FILE: it is empty; expected a plant file that begins with \"hurdline: 1\"");
    says(
        "# nothing here\n",
        "FILE:1:1: it holds nothing but comments; expected a plant file that begins with"
            + " \"hurdline: 1\"");
  }

  @Test
  void aHugeFileIsRefusedByItsSize() throws IOException {
    Path file = folder.resolve("huge.yaml");
    try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength(100_000_000);
    }
    assertThat(refused(file))
        .containsExactly(
            "FILE: it is larger than 4 MB; expected a plant file: YAML text in UTF-8 of at most 4"
                + " MB");
  }

  /** Where a brace is left open, the next line may become part of a key. */
  @Test
  void aKeyOverTwoLinesIsToldOnOne() throws IOException {
    assertThat(
            refused(
                Files.writeString(
                    folder.resolve("key.yaml"), "season:\n  - {line: a, from\n\nlate, to: b}\n")))
        .contains(
            "FILE:2:15 season.0.from late: no colon and space between \"from\" and its value in \"from late\";"
                + " expected \"from: late\"")
        .noneMatch(line -> line.contains("\n"));
  }

  @Test
  void aBinaryFile() throws IOException {
    says(
        new byte[] {'P', 'K', 3, 4, 0, 0},
        "FILE: it is a binary file; expected a plant file: YAML text in UTF-8 of at most 4 MB");
    says(
        "hurdline: \u0001",
        "FILE:1:11: the character U+0001 may not stand in a text; expected a text file; this one"
            + " looks binary");
  }

  @Test
  void aFileInAnotherEncoding() throws IOException {
    says(
        "plant: Caf\u00e9".getBytes(StandardCharsets.ISO_8859_1),
        "FILE: it is not text in UTF-8; expected the file saved as UTF-8");
    says(
        "plant: x".getBytes(StandardCharsets.UTF_16),
        "FILE: it begins with a byte-order mark of UTF-16; expected the file saved as UTF-8 without"
            + " one");
  }

  @Test
  void aTabInTheIndentation() throws IOException {
    says(
        "hurdline: 1\ncalendar:\n\tfrom: 2027-01-04\n",
        "FILE:3:1: a tab in the indentation; expected spaces; YAML does not allow tabs there");
  }

  @Test
  void textThatIsNotYaml() throws IOException {
    says(
        "hurdline: {a: 1\nb: 2\n",
        "FILE:1:11: the brace \"{\" that opens here is not closed; expected a \"}\" behind its last entry");
  }

  @Test
  void severalDocuments() throws IOException {
    says(
        "hurdline: 1\n---\nplant: x\n",
        "FILE:2:1: a second document begins here; expected one document in a plant file");
  }

  @Test
  void deepNesting() throws IOException {
    says(
        "a: " + "[".repeat(10_000),
        "FILE:1:36: it is nested more than 32 deep; expected the few levels of a plant file");
    says(
        "- ".repeat(3_000) + "x",
        "FILE:1:67: it is nested more than 32 deep; expected the few levels of a plant file");
  }

  @Test
  void aBombOfAliases() throws IOException {
    String bomb =
        "a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n"
            + IntStream.range(1, 12)
                .mapToObj(
                    i ->
                        "a"
                            + i
                            + ": &a"
                            + i
                            + " ["
                            + ("*a" + (i - 1) + ", ").repeat(9)
                            + "*a"
                            + (i - 1)
                            + "]\n")
                .collect(Collectors.joining());
    says(
        bomb,
        "FILE:5:45: it holds more than 100,000 values, repeated ones counted; expected a plant file"
            + " of a reasonable size");
  }

  @Test
  void anAliasWithinItself() throws IOException {
    says(
        "a: &a [*a]\n",
        "FILE:1:8: \"*a\" would repeat what \"&a\" names, and nothing before it has that name; expected a name"
            + " that is given further up, or quotation marks around a text that begins with \"*\"");
  }

  @Test
  void anythingButAMap() throws IOException {
    assertThat(refused(Files.writeString(folder.resolve("list.yaml"), "- 1\n")))
        .singleElement()
        .asString()
        .startsWith("FILE:1:1: a list is not a map; expected a plant: a map of hurdline, plant, ");
  }

  @Test
  void tagsAndKeysThatStandTwiceAreToldWithTheRest() {
    Edited.with("cost: 13 USD", "cost: !!java.net.URL 13 USD")
        .saysOnly(
            "packages.bag.cost: the YAML tag \"tag:yaml.org,2002:java.net.URL\" is not allowed;"
                + " expected plain keys and values without tags");
    Edited.with("cost: 13 USD", "cost: 13 USD, cost: 14 USD")
        .saysOnly(
            "packages.bag.cost: the key \"cost\" stands here a second time, first in line 76;"
                + " expected each key once in its map");
    Edited.with("  lint:   {}", "  lint:   {}\n  ? [a]\n  : {}")
        .saysOnly("products: a key is a list or a map; expected a plain word as a key");
  }

  @Test
  void anAnchorMayBeUsedAgain() {
    assertThat(
            Edited.with("(cost: 13 USD)".substring(1, 13), "cost: &cost 13 USD")
                .and("bale: {mass: 500 lb}", "bale: {mass: 500 lb, cost: *cost}")
                .plant()
                .packages()
                .get(1)
                .cost())
        .isEqualTo(13);
  }

  @Test
  void theHashIsOfTheBytes() throws IOException {
    Path file = Files.writeString(folder.resolve("p.yaml"), Edited.plantFile().text());
    assertThat(PlantFile.read(file).contentHash())
        .hasSize(64)
        .isEqualTo(Edited.plantFile().read().contentHash());
    assertThat(Edited.with("plant: Every", "plant: every").read().contentHash())
        .isNotEqualTo(PlantFile.read(file).contentHash());
  }

  @Test
  void rubbishWithoutEndIsToldToAnEnd() throws IOException {
    String keys =
        IntStream.range(0, 5_000).mapToObj(i -> "key" + i + ": x\n").collect(Collectors.joining());
    assertThat(refused(Files.writeString(folder.resolve("keys.yaml"), keys)))
        .hasSize(1001)
        .last()
        .isEqualTo("FILE: 4008 more problems are not shown; expected a plant file");
  }
}
