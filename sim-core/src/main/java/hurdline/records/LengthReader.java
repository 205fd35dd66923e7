package hurdline.records;

import java.util.OptionalDouble;

/** Reads a column of lengths of time; one without a unit has that of the head, else minutes. */
final class LengthReader {
  private final RecordTable table;
  private final String column;
  private final NumberReader number;

  LengthReader(RecordTable table, String column) {
    this.table = table;
    this.column = column;
    number = NumberReader.of(table, column);
  }

  /** The length in the row; NaN where there is none, with the reason in the row's notes. */
  double lengthS(Row row) {
    OptionalDouble length = number.read(table.text(row, column));
    row.note(number.found());
    return length.isEmpty() ? Double.NaN : length.getAsDouble() * unitS();
  }

  /** Seconds of the unit of the length that was read last. */
  double unitS() {
    return NumberReader.secondsIn(
        number.unit().isEmpty() ? table.unit(column, "min") : number.unit());
  }
}
