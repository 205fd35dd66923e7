package hurdline.records;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A file of records whose columns are known.
 *
 * @param file its name, without a folder
 * @param at where each known column stands, by its own name
 * @param units what a head says of a column's unit, by the column's own name
 * @param others columns that nothing is known of, by their head
 */
record RecordTable(
    RecordKind kind,
    String file,
    char separator,
    Map<String, Integer> at,
    Map<String, String> units,
    Map<String, Integer> others,
    List<Row> rows) {
  RecordTable {
    at = Map.copyOf(at);
    units = Map.copyOf(units);
    others = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(others));
    rows = List.copyOf(rows);
  }

  boolean has(String column) {
    return at.containsKey(column);
  }

  String text(Row row, String column) {
    return row.cell(at.getOrDefault(column, -1));
  }

  /** All cells of a column, in the file's order. */
  List<String> column(String column) {
    return rows.stream().map(row -> text(row, column)).toList();
  }

  String unit(String column, String otherwise) {
    return units.getOrDefault(column, otherwise);
  }
}
