package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The schema and the tables of the reference are what the table of keys says. {@code scripts/keys}
 * writes them: it runs this with the property {@code hurdline.write}.
 */
class KeyTableTest {
  private static final Path CONFIGS = Path.of("../line-configs");
  private static final boolean WRITES = Boolean.getBoolean("hurdline.write");
  private static final String MENDED_BY =
      "%s is not what the table of keys says; scripts/keys writes it again";

  @Test
  void theTableHasEachKindOfMapOnce() {
    assertThat(KeyTable.names())
        .containsExactlyElementsOf(Stream.of(MapKeys.values()).map(MapKeys::name).toList());
  }

  @ParameterizedTest
  @EnumSource(MapKeys.class)
  void aKeyStandsOnceInItsMapAndSaysWhatItMeansAndItsDefault(MapKeys shape) {
    List<Key> keys = KeyTable.section(shape.name()).keys();
    assertThat(keys).extracting(Key::name).doesNotHaveDuplicates();
    for (Key key : keys) {
      assertThat(key.row().chars().filter(c -> c == '|'))
          .as("bars of \"%s\"", key.row())
          .hasSize(4);
      assertThat(key.meaning()).as(key.name()).matches("[A-Z`].*\\.");
      assertThat(key.fallback().isEmpty())
          .as("a key has a default or must be there: %s", key.name())
          .isEqualTo(key.isRequired());
    }
  }

  @Test
  void theSchemaIsWhatTheTableSays() throws IOException {
    holds("plant.schema.json", KeySchema.text());
  }

  @Test
  void theTablesOfTheReferenceAreWhatTheTableSays() throws IOException {
    String page = Files.readString(CONFIGS.resolve("FORMAT.md"));
    for (MapKeys shape : MapKeys.values()) {
      Matcher stands =
          Pattern.compile("\\*\\*.*\n\n<!-- " + shape + " -->\n(\\|.*\n)*").matcher(page);
      assertThat(stands.find())
          .as("a heading, \"<!-- " + shape + " -->\" and a table in FORMAT.md")
          .isTrue();
      page = page.substring(0, stands.start()) + table(shape) + page.substring(stands.end());
    }
    holds("FORMAT.md", page);
  }

  private static void holds(String file, String wanted) throws IOException {
    if (WRITES) {
      Files.writeString(CONFIGS.resolve(file), wanted);
    }
    assertThat(Files.readString(CONFIGS.resolve(file)).lines())
        .as(MENDED_BY, file)
        .containsExactlyElementsOf(wanted.lines().toList());
  }

  /** Its heading, mark and table. */
  private static String table(MapKeys shape) {
    KeyTable.Section section = KeyTable.section(shape.name());
    List<String> lines = new ArrayList<>();
    lines.add(
        "**" + section.place() + "**" + (section.note().isEmpty() ? "" : " — " + section.note()));
    lines.add("");
    lines.add("<!-- " + shape + " -->");
    lines.add("| key | type | default | meaning |");
    lines.add("|---|---|---|---|");
    for (Key key : section.keys()) {
      String fallback = key.isRequired() ? "required" : key.fallback();
      lines.add(
          "| `"
              + key.name()
              + "` | "
              + KeyType.phrase(key.type())
              + " | "
              + fallback
              + " | "
              + key.meaning()
              + " |");
    }
    return String.join("\n", lines) + "\n";
  }
}
