package hurdline.records;

import hurdline.plant.InputDraws;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.tree.FileText;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.problem.LocatedProblem;
import hurdline.unit.AmountsInText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/** Reads {@code draws.csv}: keys of a plant file as its head, a row for each joint draw. */
public final class DrawsFile {
  private DrawsFile() {}

  /**
   * @throws ProblemsException if it is no such file
   */
  public static InputDraws read(Path file) {
    String name = file.toString();
    CsvRows csv = CsvRows.of(name, text(file));
    List<String> keys = csv.head().cells().stream().map(String::strip).toList();
    List<LocatedProblem> problems = new ArrayList<>();
    if (keys.stream().anyMatch(String::isEmpty) || new HashSet<>(keys).size() < keys.size()) {
      problems.add(
          wrong(name, csv.head(), "a key is missing or stands twice", "each key once, such as"));
    }
    if (csv.rows().isEmpty()) {
      problems.add(
          wrong(name, csv.head(), "no draw follows the head", "a row for each draw below"));
    }
    List<List<String>> rows = new ArrayList<>();
    for (Row row : csv.rows()) {
      List<String> cells = row.cells().stream().map(String::strip).toList();
      check(name, row, cells, keys, rows.isEmpty() ? cells : rows.get(0), problems);
      rows.add(cells);
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    return new InputDraws(file.getFileName().toString(), keys, rows);
  }

  private static void check(
      String name,
      Row row,
      List<String> cells,
      List<String> keys,
      List<String> first,
      List<LocatedProblem> problems) {
    if (cells.size() != keys.size() || cells.stream().anyMatch(String::isEmpty)) {
      problems.add(
          wrong(
              name,
              row,
              "it has not a value for each of the " + keys.size() + " keys",
              "a value for each key, as --set takes it, under"));
      return;
    }
    for (int at = 0; at < keys.size() && first.size() == keys.size(); at++) {
      if (!AmountsInText.form(cells.get(at)).equals(AmountsInText.form(first.get(at)))) {
        problems.add(
            wrong(
                name,
                row,
                keys.get(at)
                    + " is \""
                    + cells.get(at)
                    + "\" here and \""
                    + first.get(at)
                    + "\" in the first row",
                "one law and one unit for all draws of a key, under"));
      }
    }
  }

  private static LocatedProblem wrong(String name, Row row, String found, String expected) {
    return LocatedProblem.at(
        name, row.line(), found, expected + " machines.saw.stops.choke.every", "");
  }

  private static String text(Path file) {
    try {
      return FileText.text(FileText.bytes(file));
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().problemOf(file.toString())));
    }
  }
}
