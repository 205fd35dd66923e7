package hurdline.web;

import hurdline.answer.Answer;
import hurdline.answer.CheckAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.table.RecordFault;
import hurdline.table.RecordFile;
import hurdline.text.CheckHeadline;
import hurdline.text.CompareHeadline;
import hurdline.text.CompareTable;
import hurdline.text.GridHeadline;
import hurdline.text.GridTable;
import hurdline.text.MainTable;
import hurdline.text.RunHeadline;
import hurdline.text.RunTable;
import hurdline.text.SeasonHeadline;
import hurdline.text.SeasonTable;
import hurdline.text.Wording;
import hurdline.text.YardHeadline;
import hurdline.text.YardTable;
import hurdline.web.http.Refusal;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.LinkOption;
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

  private final Path folder;
  private final Map<String, Read> read = new HashMap<>();

  private record Read(long changedMs, Answer answer) {}

  AnswerList(PlantFolder folder) {
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
        when.put(one, changedMs(one));
      }
      return whole.stream()
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

  static List<String> sentences(Answer answer, Wording plain) {
    Wording wording = plain.reading(answer);
    if (answer instanceof RunAnswer run) {
      return new RunHeadline(run, wording).sentences();
    }
    if (answer instanceof CompareAnswer compare) {
      return new CompareHeadline(compare, wording).sentences();
    }
    if (answer instanceof SeasonAnswer season) {
      return new SeasonHeadline(season, wording).sentences();
    }
    if (answer instanceof YardAnswer yard) {
      return new YardHeadline(yard, wording).sentences();
    }
    if (answer instanceof GridAnswer grid) {
      return new GridHeadline(grid, wording).sentences();
    }
    return answer instanceof CheckAnswer check
        ? new CheckHeadline(check, wording).sentences()
        : List.of();
  }

  /** The question of the page that asks for such an answer; empty where there is none. */
  static String question(Answer answer) {
    Question asked =
        answer instanceof RunAnswer
            ? Question.RUN
            : answer instanceof CompareAnswer
                ? Question.COMPARE
                : answer instanceof SeasonAnswer
                    ? Question.SEASON
                    : answer instanceof YardAnswer
                        ? Question.YARD
                        : answer instanceof GridAnswer ? Question.GRID : null;
    return asked == null ? "" : asked.name();
  }

  /** The main figures; none of a check, which has no table of them. */
  static Optional<MainTable> table(Answer answer, Wording plain) {
    Wording wording = plain.reading(answer);
    if (answer instanceof RunAnswer run) {
      return Optional.of(RunTable.of(run, wording));
    }
    if (answer instanceof CompareAnswer compare) {
      return Optional.of(CompareTable.of(compare, wording));
    }
    if (answer instanceof SeasonAnswer season) {
      return Optional.of(SeasonTable.of(season, wording));
    }
    if (answer instanceof YardAnswer yard) {
      return Optional.of(YardTable.of(yard, wording));
    }
    return answer instanceof GridAnswer grid
        ? Optional.of(GridTable.of(grid, wording))
        : Optional.empty();
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
