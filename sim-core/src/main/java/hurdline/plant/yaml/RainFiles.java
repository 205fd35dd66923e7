package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.FileText;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.problem.LocatedProblem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * The rain files that a plant file or its options and plans name, read once together with it, so
 * that a changed plant opens no file.
 *
 * <p>A plant file may come from anyone, so it opens files of its own folder and below only,
 * wherever links lead: else it could have any file of its reader quoted in the problems.
 */
final class RainFiles {
  private static final RainFiles NONE = new RainFiles();
  private static final int MOST_FILES = 50;

  private final Map<String, RainFile> files = new TreeMap<>();
  private final Map<String, byte[]> bytes = new TreeMap<>();
  private final Map<String, String> reasons = new TreeMap<>();

  private RainFiles() {}

  static RainFiles none() {
    return NONE;
  }

  /** All rain files named in the tree. */
  static RainFiles beside(Path plantFile, Tree tree) {
    RainFiles rains = new RainFiles();
    rains.readAll(tree, name -> rains.read(plantFile, name));
    return rains;
  }

  /** All rain files named in the tree, of these texts by name. */
  static RainFiles among(Map<String, String> texts, Tree tree) {
    RainFiles rains = new RainFiles();
    rains.readAll(
        tree,
        name -> {
          if (texts.containsKey(name)) {
            rains.take(name, name, texts.get(name).getBytes(StandardCharsets.UTF_8));
          }
        });
    return rains;
  }

  private void readAll(Tree tree, Consumer<String> reader) {
    List<Tree> plants = new ArrayList<>(List.of(tree));
    Stream.of("options", "plans")
        .flatMap(kind -> at(tree, kind).stream())
        .flatMap(RainFiles::values)
        .forEach(named -> at(named, "with").ifPresent(plants::add));
    List<String> names =
        plants.stream()
            .flatMap(plant -> at(plant, "deliveries").stream())
            .flatMap(RainFiles::values)
            .flatMap(delivery -> at(delivery, "weather").stream())
            .flatMap(weather -> at(weather, "file").stream())
            .filter(Scalar.class::isInstance)
            .filter(file -> !file.isNothing())
            .map(file -> ((Scalar) file).text())
            .distinct()
            .toList();
    for (int at = 0; at < names.size(); at++) {
      if (at < MOST_FILES) {
        read(names.get(at), reader);
      } else {
        reasons.put(
            names.get(at), "is one rain file more than the " + MOST_FILES + " that are read");
      }
    }
  }

  private void read(String name, Consumer<String> reader) {
    try {
      reader.accept(name);
    } catch (UnreadableException e) {
      reasons.put(name, "cannot be used: " + e.finding().problem().said());
    } catch (InvalidPathException e) {
      reasons.put(name, "is no path of a file");
    }
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
    Path file = plantFile.resolveSibling(name);
    if (isBeside(plantFile, file)) {
      take(name, file.toString(), FileText.bytes(file));
    } else {
      reasons.put(name, "lies outside the folder of the plant file and is not opened");
    }
  }

  /**
   * @param shown name of the file in messages
   */
  private void take(String name, String shown, byte[] read) {
    files.put(name, RainFile.of(shown, FileText.text(read)));
    bytes.put(name, read);
  }

  /**
   * Whether the file, where all links have been followed, lies in the plant file's folder or below
   * it.
   */
  private static boolean isBeside(Path plantFile, Path file) {
    try {
      Path folder = plantFile.toAbsolutePath().getParent();
      return Files.exists(file)
          ? file.toRealPath().startsWith(folder.toRealPath())
          : file.toAbsolutePath().normalize().startsWith(folder.normalize());
    } catch (IOException e) {
      return false;
    }
  }

  /** The text of each file by the name that the plant calls it. */
  Map<String, String> texts() {
    Map<String, String> texts = new TreeMap<>();
    bytes.forEach((name, content) -> texts.put(name, FileText.text(content)));
    return texts;
  }

  Optional<RainFile> file(String name) {
    return Optional.ofNullable(files.get(name));
  }

  /** Why there is no such file here. */
  String reason(String name) {
    return reasons.getOrDefault(name, "was not read together with the plant file");
  }

  /** Each problem inside the files. */
  List<LocatedProblem> problems() {
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
            all.writeBytes(
                ("\n" + FileText.hash(content) + " " + name).getBytes(StandardCharsets.UTF_8)));
    return FileText.hash(all.toByteArray());
  }
}
