package hurdline.table;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The finished parts of an answer that is not whole yet, a file each in a folder within that of the
 * answer, next to one that says what they depend on.
 *
 * @param <T> what a part is
 */
public final class PartFolder<T> {
  private static final String SETTINGS = "settings.txt";
  private static final String RECORD = "record.json";
  private static final Gson GSON = Json.gson();

  private final AnswerFolder answer;
  private final String folder;
  private final Class<T> type;

  /**
   * @param folder within the answer's
   */
  public PartFolder(AnswerFolder answer, String folder, Class<T> type) {
    this.answer = answer;
    this.folder = folder;
    this.type = type;
  }

  /** Whether a folder holds an answer that was begun and is not whole. */
  public static boolean isBegunIn(Path answer, String folder) {
    return Files.isRegularFile(answer.resolve(folder).resolve(SETTINGS))
        && !Files.exists(answer.resolve(RECORD));
  }

  /** The settings by which the answer in a folder was begun, a line each. */
  public static List<String> settingsIn(Path answer, String folder) throws IOException {
    return Files.readAllLines(answer.resolve(folder).resolve(SETTINGS), StandardCharsets.UTF_8);
  }

  /** Begins an answer. */
  public void begin(List<String> settings) throws IOException {
    answer.write(
        folder + "/" + SETTINGS,
        out -> {
          for (String line : settings) {
            out.write(line + "\n");
          }
        });
  }

  /**
   * A part that was finished before; none where its file is not whole, which is then made again.
   *
   * @param name of its file, without the ending
   */
  public Optional<T> read(String name) throws IOException {
    try (Reader in = Files.newBufferedReader(file(name), StandardCharsets.UTF_8)) {
      JsonElement read = JsonParser.parseReader(in);
      if (RecordShape.problem(read, type, "part").isPresent()) {
        return Optional.empty();
      }
      return Optional.of(GSON.fromJson(read, type));
    } catch (NoSuchFileException missing) {
      return Optional.empty();
    } catch (JsonParseException | NullPointerException damaged) {
      return Optional.empty();
    }
  }

  public void write(String name, T part) throws IOException {
    answer.write(
        folder + "/" + name + ".json",
        out -> {
          GSON.toJson(part, type, out);
          out.write('\n');
        });
  }

  /** How many parts are there. */
  public int count() throws IOException {
    try (Stream<Path> inside = Files.list(answer.path().resolve(folder))) {
      return (int) inside.filter(path -> path.toString().endsWith(".json")).count();
    }
  }

  /** Takes all away, once the answer is written. */
  public void clear() throws IOException {
    List<Path> all = new ArrayList<>();
    try (Stream<Path> inside = Files.walk(answer.path().resolve(folder))) {
      inside.forEach(all::add);
    }
    Collections.reverse(all);
    for (Path path : all) {
      Files.deleteIfExists(path);
    }
  }

  private Path file(String name) {
    return answer.path().resolve(folder).resolve(name + ".json");
  }
}
