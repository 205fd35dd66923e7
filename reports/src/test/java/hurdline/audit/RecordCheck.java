package hurdline.audit;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * record.json against the tables: the same rows in the same order, and each figure digit for digit.
 */
final class RecordCheck implements Check {
  static final String RECORD = "record.json is the tables";

  /** Where in the record the rows of a table stand. */
  private static final Map<String, String> LISTS =
      Map.ofEntries(
          Map.entry(Tables.SUMMARY, "summary"),
          Map.entry(Tables.ADJUSTED, "adjusted"),
          Map.entry(Tables.WEEKS, "weeks"),
          Map.entry(Tables.MONTHS, "months"),
          Map.entry(Tables.YARD_LEVELS, "yard_levels"),
          Map.entry(Tables.STORE_LEVELS, "store_levels"),
          Map.entry(Tables.DIFFERENCES, "differences"),
          Map.entry(Tables.BOTTLENECKS, "bottlenecks"),
          Map.entry(Tables.PAYBACK, "payback"),
          Map.entry(Tables.CASH, "cash"),
          Map.entry(Tables.TORNADO, "further.tornado"),
          Map.entry(Tables.BREAK_EVEN, "further.break_even"),
          Map.entry(Tables.SELECTION, "further.best.rows"),
          Map.entry(Tables.PEAKS, "peaks"),
          Map.entry(Tables.YARD_SIZES, "yard_sizes"),
          Map.entry(Tables.CHEAPEST, "yard_sizes"),
          Map.entry(Tables.LOADS, "loads"),
          Map.entry(Tables.ACRES, "acres"),
          Map.entry(Tables.MACHINE_WEEKS, "machine_weeks"),
          Map.entry(Tables.CHANGEOVERS, "changeovers"));

  /** What follows from other columns of its row. */
  private static final Set<String> IN_TABLES_ALONE = Set.of(Columns.DEFINITION, Columns.SWING);

  /**
   * Inner objects whose fields are columns like any other: of a pair of plans, and of what a size
   * of the yard costs.
   */
  private static final Set<String> INNER = Set.of("row", "cost", "above");

  private static final Map<String, String> WORDS = Map.of("true", "yes", "false", "no");

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    for (Table table : answer.tables()) {
      if (table.file().equals(Tables.SERVICE_LIVES)) {
        lives(table, answer.record().getAsJsonArray("service_lives"), ledger);
      } else if (table.file().equals(Tables.GAIN)) {
        rows(
            table,
            list(answer.record(), answer.record().has("further") ? "further.gains" : "gains"),
            ledger);
      } else if (LISTS.containsKey(table.file())) {
        rows(table, list(answer.record(), LISTS.get(table.file())), ledger);
      }
    }
  }

  /** Of a row, for a message. */
  private record Cell(Table.Row row, String column) {
    @Override
    public String toString() {
      return row + " " + column;
    }
  }

  private static JsonArray list(JsonObject record, String path) {
    JsonElement found = record;
    for (String key : path.split("\\.")) {
      found = found.getAsJsonObject().get(key);
    }
    return found.getAsJsonArray();
  }

  private static void rows(Table table, JsonArray list, Ledger ledger) {
    ledger.same(RECORD, table.file() + " rows", list.size(), table.cells().size());
    for (int at = 0; at < Math.min(list.size(), table.cells().size()); at++) {
      Map<String, String> fields = new LinkedHashMap<>();
      flatten("", list.get(at).getAsJsonObject(), fields);
      Table.Row row = new Table.Row(table, at);
      for (String column : table.columns()) {
        if (IN_TABLES_ALONE.contains(column)) {
          ledger.same(RECORD, new Cell(row, column), false, row.text(column).isEmpty());
          continue;
        }
        String written = fields.get(column);
        ledger.same(RECORD, new Cell(row, column), String.valueOf(written), row.text(column));
      }
    }
  }

  /**
   * Fields by their names, which are those of the columns; true is yes, and nothing an empty cell.
   */
  private static void flatten(String path, JsonObject object, Map<String, String> fields) {
    for (Map.Entry<String, JsonElement> field : object.entrySet()) {
      JsonElement value = field.getValue();
      String name = path + field.getKey();
      if (value.isJsonObject()) {
        flatten(INNER.contains(field.getKey()) ? "" : name + ".", value.getAsJsonObject(), fields);
      } else if (value.isJsonNull()) {
        fields.put(name, "");
      } else if (value.isJsonPrimitive()) {
        fields.put(name, WORDS.getOrDefault(value.getAsString(), value.getAsString()));
      }
    }
  }

  /** A life is one object in the record and a row for each of its quantities in the table. */
  private static void lives(Table table, JsonArray list, Ledger ledger) {
    int each = list.isEmpty() ? 0 : table.cells().size() / list.size();
    ledger.same(RECORD, table.file() + " rows", each * list.size(), table.cells().size());
    for (int at = 0; at < table.cells().size(); at++) {
      JsonObject life = list.get(at / each).getAsJsonObject();
      Table.Row row = new Table.Row(table, at);
      JsonElement figure = life.get(row.text(Columns.QUANTITY));
      ledger.same(RECORD, row, life.get(Columns.OPTION).getAsString(), row.text(Columns.OPTION));
      ledger.same(RECORD, row, life.get(Columns.LIFE).getAsString(), row.text(Columns.LIFE));
      ledger.same(
          RECORD, row, figure.isJsonNull() ? "" : figure.getAsString(), row.text(Columns.VALUE));
    }
  }
}
