package hurdline.records;

import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of a CSV text (RFC 4180), its separator found from the head.
 *
 * @param separator a comma, semicolon or tab
 * @param head the first row that says anything
 * @param rows those after it; empty lines are no rows
 */
record CsvRows(char separator, Row head, List<Row> rows) {
  private static final int MOST_ROWS = 1_000_000;
  private static final int MOST_CELLS = 200;
  private static final int LONGEST_CELL = 2_000;
  private static final String EXPECTED =
      "a CSV file with a head, such as \"machine,began,ended,reason\"";

  /**
   * @param name the file's in messages
   * @throws ProblemsException if it is no CSV text within the limits
   */
  static CsvRows of(String name, String text) {
    char separator = separator(text);
    List<Row> rows = new ArrayList<>();
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
    String below = withoutRemarks(text);
    long above = text.substring(0, text.length() - below.length()).lines().count();
    try (CSVParser parser = CSVParser.parse(new StringReader(below), format)) {
      long line = above + 1;
      for (CSVRecord record : parser) {
        Row row = row(name, (int) line, record);
        line = above + parser.getCurrentLineNumber() + 1;
        if (!row.isEmpty()) {
          rows.add(row);
        }
        if (rows.size() > MOST_ROWS) {
          throw refuse(name, (int) line, "it has more than 1,000,000 rows");
        }
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      throw unreadable(name, above, e);
    }
    if (rows.isEmpty()) {
      throw refuse(name, 0, "it holds no row");
    }
    return new CsvRows(separator, rows.get(0), rows.subList(1, rows.size()));
  }

  /**
   * Lines above the head that begin with a # say what the file is; below it such a line is a row
   * like any other.
   */
  private static String withoutRemarks(String text) {
    int at = 0;
    while (at < text.length() && text.charAt(at) == '#') {
      int end = text.indexOf('\n', at);
      at = end < 0 ? text.length() : end + 1;
    }
    return text.substring(at);
  }

  private static Row row(String name, int line, CSVRecord record) {
    if (record.size() > MOST_CELLS) {
      throw refuse(name, line, "the row has " + record.size() + " cells, more than " + MOST_CELLS);
    }
    for (String cell : record) {
      if (cell.length() > LONGEST_CELL) {
        throw refuse(
            name, line, "a cell is longer than 2,000 characters; a quotation mark may be missing");
      }
    }
    return new Row(name, line, record.toList());
  }

  /** The library names the line in its words; ours name the file and what to do. */
  private static ProblemsException unreadable(String name, long above, Exception fault) {
    String said = fault.getMessage() == null ? "" : fault.getMessage();
    java.util.regex.Matcher line =
        java.util.regex.Pattern.compile("line:? ?([0-9]{1,9})|\\(line ([0-9]{1,9})\\)")
            .matcher(said);
    int at =
        line.find() ? Integer.parseInt(line.group(1) != null ? line.group(1) : line.group(2)) : 0;
    return refuse(
        name,
        at == 0 ? 0 : at + (int) above,
        "a quotation mark is not closed, or text follows a closed one");
  }

  static ProblemsException refuse(String name, int line, String found) {
    return new ProblemsException(List.of(LocatedProblem.at(name, line, found, EXPECTED, "")));
  }

  /** Whichever of the three the first line that says anything has most of. */
  private static char separator(String text) {
    String head =
        withoutRemarks(text).lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    char best = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(head, candidate) > count(head, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static long count(String text, char mark) {
    return text.chars().filter(c -> c == mark).count();
  }
}
