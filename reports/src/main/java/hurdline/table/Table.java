package hurdline.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * One tidy table of an answer.
 *
 * @param file its file name
 * @param columns the header line
 * @param rows made anew at each call; cells are text, whole numbers or doubles
 */
public record Table(String file, List<String> columns, Supplier<Stream<Object[]>> rows) {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setRecordSeparator('\n').setNullString("").get();

  public Table {
    columns = List.copyOf(columns);
  }

  /** Writes the header line and all rows, an empty cell for what is not defined. */
  public void write(Appendable out) throws IOException {
    CSVPrinter printer = new CSVPrinter(out, FORMAT);
    printer.printRecord(columns);
    try (Stream<Object[]> all = rows.get()) {
      all.forEach(cells -> print(printer, cells));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    printer.flush();
  }

  private void print(CSVPrinter printer, Object[] cells) {
    if (cells.length != columns.size()) {
      throw new IllegalStateException(
          file + " has " + columns.size() + " columns and a row of " + cells.length + " cells");
    }
    try {
      for (Object cell : cells) {
        printer.print(cell instanceof Double number ? Exact.text(number) : cell);
      }
      printer.println();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
