package hurdline.plant.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The one table of the keys of a plant file, {@code plant-keys.txt} among the resources.
 *
 * <p>The reader takes from it which keys a map may and must have and what a missing one might look
 * like; the tests write the schema and the tables of the format reference from it. So a new key is
 * a row there, what the reader does with it, and the record that holds it.
 */
final class KeyTable {
  private static final String FILE = "/hurdline/plant-keys.txt";
  private static final Map<String, Section> SECTIONS = read();

  /**
   * The keys of one kind of map.
   *
   * @param phrase what messages call it, such as "a shift"
   * @param place where it stands, in Markdown
   * @param note what holds for the map as a whole; may be empty
   * @param keys in the order in which messages name them
   */
  record Section(String phrase, String place, String note, List<Key> keys) {}

  private KeyTable() {}

  /** Names of all maps, in the order of the table. */
  static List<String> names() {
    return List.copyOf(SECTIONS.keySet());
  }

  static Section section(String name) {
    if (!SECTIONS.containsKey(name)) {
      throw new IllegalArgumentException("the table of keys has no map " + name);
    }
    return SECTIONS.get(name);
  }

  private static Map<String, Section> read() {
    Map<String, Section> sections = new LinkedHashMap<>();
    Map<String, List<Key>> groups = new LinkedHashMap<>();
    List<Key> keys = new ArrayList<>();
    for (String line : text().split("\n")) {
      if (line.startsWith("[")) {
        keys = new ArrayList<>();
        begin(line, keys, sections);
      } else if (line.startsWith("<") && groups.containsKey(line)) {
        keys.addAll(groups.get(line));
      } else if (line.startsWith("<")) {
        keys = new ArrayList<>();
        groups.put(line, keys);
      } else if (!line.isBlank() && !line.startsWith("#")) {
        keys.add(Key.of(line));
      }
    }
    return sections;
  }

  private static void begin(String line, List<Key> keys, Map<String, Section> sections) {
    int end = line.indexOf(']');
    String[] cells = line.substring(end + 1).split("\\|", -1);
    sections.put(
        line.substring(1, end),
        new Section(cells[0].strip(), cells[1].strip(), cells[2].strip(), keys));
  }

  private static String text() {
    try (InputStream in = KeyTable.class.getResourceAsStream(FILE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
