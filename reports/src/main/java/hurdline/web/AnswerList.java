package hurdline.web;

import hurdline.answer.Answer;
import hurdline.table.RecordFault;
import hurdline.table.RecordFile;
import hurdline.web.http.Refusal;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The answers that lie in the folder: those of the page and those of the terminal alike. */
final class AnswerList {
  private static final String RECORD = "record.json";

  private final PlantFolder folders;
  private final Path folder;
  private final Map<String, Read> read = new HashMap<>();

  private record Read(long changedMs, Answer answer) {}

  AnswerList(PlantFolder folder) {
    this.folders = folder;
    this.folder = folder.path();
  }

  /** Names of folders that hold a whole answer, the newest first. */
  List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> whole =
          all.filter(one -> Files.isDirectory(one, LinkOption.NOFOLLOW_LINKS))
              .filter(one -> isFile(one.resolve(RECORD)) && isFile(one.resolve("report.html")))
              .toList();
      Map<Path, Long> when = new HashMap<>();
      for (Path one : whole) {
        try {
          when.put(one, changedMs(one));
        } catch (NoSuchFileException gone) {
          continue; // deleted by another program meanwhile
        }
      }
      return when.keySet().stream()
          .sorted((a, b) -> Long.compare(when.get(b), when.get(a)))
          .map(one -> one.getFileName().toString())
          .toList();
    }
  }

  private static boolean isFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  long changedMs(Path answer) throws IOException {
    return Files.getLastModifiedTime(answer.resolve(RECORD), LinkOption.NOFOLLOW_LINKS).toMillis();
  }

  /**
   * The folder of an answer.
   *
   * @throws Refusal if there is none of that name
   */
  Path path(String name) throws IOException {
    if (!names().contains(name)) {
      throw new Refusal(404, "There is no answer of that name.");
    }
    return folder.resolve(name);
  }

  /** What an answer says; empty where its record is of another version of the program. */
  synchronized Optional<Answer> answer(String name) throws IOException {
    Path record = path(name).resolve(RECORD);
    long changed = changedMs(record.getParent());
    Read known = read.get(name);
    if (known == null || known.changedMs() != changed) {
      try (Reader in = Files.newBufferedReader(record)) {
        known = new Read(changed, RecordFile.read(name, in));
      } catch (RecordFault other) {
        return Optional.empty();
      }
      read.put(name, known);
    }
    return Optional.of(known.answer());
  }

  /** Whether the folder has a plant file of that name with the text that an answer keeps. */
  boolean isPlantOf(Path answer, String file) throws IOException {
    Path kept = answer.resolve("plant.yaml");
    return folders.plants().contains(file)
        && isFile(kept)
        && Files.mismatch(kept, folder.resolve(file)) < 0;
  }

  /** Takes an answer away with all that is in its folder; links are not followed. */
  void delete(String name) throws IOException {
    Path answer = path(name);
    List<Path> inside = new ArrayList<>();
    try (Stream<Path> all = Files.walk(answer)) {
      all.forEach(inside::add);
    }
    inside.sort(Comparator.reverseOrder());
    for (Path one : inside) {
      Files.delete(one);
    }
  }
}
