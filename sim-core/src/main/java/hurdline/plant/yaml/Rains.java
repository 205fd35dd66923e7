package hurdline.plant.yaml;

import hurdline.plant.yaml.Tree.Entries;
import hurdline.plant.yaml.Tree.Entry;
import hurdline.plant.yaml.Tree.Scalar;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The rain files that a plant file or its options and plans name, read once together with it, so
 * that a changed plant opens no file.
 */
final class Rains {
  private static final Rains NONE = new Rains();

  private final Map<String, RainFile> files = new TreeMap<>();
  private final Map<String, byte[]> bytes = new TreeMap<>();
  private final Map<String, String> reasons = new TreeMap<>();

  private Rains() {}

  static Rains none() {
    return NONE;
  }

  /** All rain files named in the tree. */
  static Rains beside(Path plantFile, Tree tree) {
    Rains rains = new Rains();
    List<Tree> plants = new ArrayList<>(List.of(tree));
    Stream.of("options", "plans")
        .flatMap(kind -> at(tree, kind).stream())
        .flatMap(Rains::values)
        .forEach(named -> at(named, "with").ifPresent(plants::add));
    plants.stream()
        .flatMap(plant -> at(plant, "deliveries").stream())
        .flatMap(Rains::values)
        .flatMap(delivery -> at(delivery, "weather").stream())
        .flatMap(weather -> at(weather, "file").stream())
        .filter(Scalar.class::isInstance)
        .filter(file -> !file.isNothing())
        .map(file -> ((Scalar) file).text())
        .distinct()
        .forEach(name -> rains.read(plantFile, name));
    return rains;
  }

  private static Optional<Tree> at(Tree tree, String key) {
    return tree instanceof Entries entries ? entries.at(key) : Optional.empty();
  }

  private static Stream<Tree> values(Tree tree) {
    return tree instanceof Entries entries
        ? entries.map().values().stream().map(Entry::value)
        : Stream.empty();
  }

  private void read(Path plantFile, String name) {
    try {
      Path file = plantFile.resolveSibling(name);
      byte[] read = FileText.bytes(file);
      files.put(name, RainFile.of(file.toString(), FileText.text(withoutMark(read))));
      bytes.put(name, read);
    } catch (UnreadableException e) {
      reasons.put(name, "cannot be used: " + e.finding().problem().said());
    } catch (InvalidPathException e) {
      reasons.put(name, "is no path of a file");
    }
  }

  /** Spreadsheets put a byte-order mark before a CSV in UTF-8, and their users never see it. */
  private static byte[] withoutMark(byte[] read) {
    boolean marked = read.length > 2 && read[0] == (byte) 0xef && read[1] == (byte) 0xbb && read[2] == (byte) 0xbf;
    return marked ? Arrays.copyOfRange(read, 3, read.length) : read;
  }

  Optional<RainFile> file(String name) {
    return Optional.ofNullable(files.get(name));
  }

  /** Why there is no such file here. */
  String reason(String name) {
    return reasons.getOrDefault(name, "was not read together with the plant file");
  }

  /** One finished line for each problem inside the files. */
  List<String> problems() {
    return files.values().stream().flatMap(file -> file.problems().stream()).toList();
  }

  /** SHA-256 of the plant file alone or, where it names rain files, of it and of them by name. */
  String hash(byte[] plantFile) {
    if (bytes.isEmpty()) {
      return FileText.hash(plantFile);
    }
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.writeBytes(FileText.hash(plantFile).getBytes(StandardCharsets.UTF_8));
    bytes.forEach(
        (name, content) ->
            all.writeBytes(("\n" + FileText.hash(content) + " " + name).getBytes(StandardCharsets.UTF_8)));
    return FileText.hash(all.toByteArray());
  }
}
