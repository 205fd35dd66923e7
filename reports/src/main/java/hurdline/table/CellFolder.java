package hurdline.table;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import hurdline.answer.SimulatedCell;
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
 * The finished cells of a grid that is not whole yet, a file each in a folder within that of the
 * answer, beside one that says what they hang on.
 */
public final class CellFolder {
  private static final String NAME = "cells";
  private static final String SETTINGS = "settings.txt";
  private static final String RECORD = "record.json";
  private static final Gson GSON = Json.gson();

  private final AnswerFolder answer;

  public CellFolder(AnswerFolder answer) {
    this.answer = answer;
  }

  /** Whether a folder holds a grid that was begun and is not whole. */
  public static boolean isBegunIn(Path folder) {
    return Files.isRegularFile(folder.resolve(NAME).resolve(SETTINGS))
        && !Files.exists(folder.resolve(RECORD));
  }

  /** The settings by which the grid in a folder was begun, a line each. */
  public static List<String> settingsIn(Path folder) throws IOException {
    return Files.readAllLines(folder.resolve(NAME).resolve(SETTINGS), StandardCharsets.UTF_8);
  }

  /** Begins a grid. */
  public void begin(List<String> settings) throws IOException {
    answer.write(
        NAME + "/" + SETTINGS,
        out -> {
          for (String line : settings) {
            out.write(line + "\n");
          }
        });
  }

  /** A cell that was finished before; none where its file is not whole, which is then made anew. */
  public Optional<SimulatedCell> read(int cell) throws IOException {
    try (Reader in = Files.newBufferedReader(file(cell), StandardCharsets.UTF_8)) {
      JsonElement read = JsonParser.parseReader(in);
      if (RecordShape.problem(read, SimulatedCell.class, "cell").isPresent()) {
        return Optional.empty();
      }
      return Optional.of(GSON.fromJson(read, SimulatedCell.class))
          .filter(found -> found.cell() == cell);
    } catch (NoSuchFileException missing) {
      return Optional.empty();
    } catch (JsonParseException | NullPointerException damaged) {
      return Optional.empty();
    }
  }

  public void write(SimulatedCell cell) throws IOException {
    answer.write(
        NAME + "/" + name(cell.cell()),
        out -> {
          GSON.toJson(cell, SimulatedCell.class, out);
          out.write('\n');
        });
  }

  /** How many cells are there. */
  public int count() throws IOException {
    try (Stream<Path> inside = Files.list(answer.path().resolve(NAME))) {
      return (int) inside.filter(path -> path.toString().endsWith(".json")).count();
    }
  }

  /** Takes all away, once the answer is written. */
  public void clear() throws IOException {
    Path folder = answer.path().resolve(NAME);
    List<Path> all = new ArrayList<>();
    try (Stream<Path> inside = Files.walk(folder)) {
      inside.forEach(all::add);
    }
    Collections.reverse(all);
    for (Path path : all) {
      Files.deleteIfExists(path);
    }
  }

  private Path file(int cell) {
    return answer.path().resolve(NAME).resolve(name(cell));
  }

  /** Cells count from 1 in their names. */
  private static String name(int cell) {
    return "cell-" + (cell + 1) + ".json";
  }
}
