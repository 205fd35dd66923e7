package hurdline.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table of an answer as it was read back from its file: text cells under named columns.
 *
 * @param file the name of the file
 * @param columns the header line
 * @param cells row by row, an empty text where a cell is empty
 */
record Table(String file, List<String> columns, List<List<String>> cells) {
  static Table read(Path path) throws IOException {
    List<List<String>> lines = lines(Files.readString(path));
    return new Table(path.getFileName().toString(), lines.get(0), lines.subList(1, lines.size()));
  }

  /** Cells of a text with commas, quotes doubled within quotes, and one line a row (RFC 4180). */
  private static List<List<String>> lines(String text) {
    List<List<String>> lines = new ArrayList<>();
    List<String> line = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int at = 0; at < text.length(); at++) {
      char letter = text.charAt(at);
      if (quoted && letter == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"') {
        cell.append('"');
        at++;
      } else if (letter == '"') {
        quoted = !quoted;
      } else if (quoted || letter != ',' && letter != '\n') {
        cell.append(letter);
      } else {
        line.add(cell.toString());
        cell.setLength(0);
        if (letter == '\n') {
          lines.add(line);
          line = new ArrayList<>();
        }
      }
    }
    return lines;
  }

  /** One row, read by the names of its columns. */
  record Row(Table table, int at) {
    boolean has(String column) {
      return table.columns.contains(column);
    }

    String text(String column) {
      int place = table.columns.indexOf(column);
      if (place < 0) {
        throw new IllegalArgumentException(
            table.file + " has no column " + column + ": " + table.columns);
      }
      return table.cells.get(at).get(place);
    }

    /** NaN where the cell is empty. */
    double number(String column) {
      String text = text(column);
      return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
    }

    boolean is(String column, String text) {
      return text(column).equals(text);
    }

    /** File, line and what stands before the first number, for a message. */
    @Override
    public String toString() {
      List<String> row = table.cells.get(at);
      return table.file
          + " line "
          + (at + 2)
          + " "
          + String.join(",", row.subList(0, Math.min(4, row.size())));
    }
  }

  Stream<Row> rows() {
    return IntStream.range(0, cells.size()).mapToObj(at -> new Row(this, at));
  }

  Stream<Row> rows(String column, String text) {
    return rows().filter(row -> row.is(column, text));
  }

  Row row(Predicate<Row> wanted) {
    return rows()
        .filter(wanted)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(file + " has no such row"));
  }

  /** The same with another text in one cell. */
  Table with(Row row, String column, String text) {
    List<List<String>> changed = new ArrayList<>(cells);
    List<String> line = new ArrayList<>(cells.get(row.at()));
    line.set(columns.indexOf(column), text);
    changed.set(row.at(), line);
    return new Table(file, columns, changed);
  }
}
