package hurdline.audit;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** record.json against the tables: the same rows in the same order, and each figure digit for digit. */
final class RecordCheck implements Check {
  static final String RECORD = "record.json is the tables";

  /** Where in the record the rows of a table stand. */
  private static final Map<String, String> LISTS =
      Map.ofEntries(
          Map.entry(Tables.SUMMARY, "summary"),
          Map.entry(Tables.ADJUSTED, "adjusted"),
          Map.entry(Tables.WEEKS, "weeks"),
          Map.entry(Tables.MONTHS, "months"),
          Map.entry(Tables.YARD_LEVELS, "levels"),
          Map.entry(Tables.DIFFERENCES, "differences"),
          Map.entry(Tables.BOTTLENECKS, "holders"),
          Map.entry(Tables.PAYBACK, "payback"),
          Map.entry(Tables.CASH, "cash"),
          Map.entry(Tables.TORNADO, "further.tornado"),
          Map.entry(Tables.BREAK_EVEN, "further.breakEven"),
          Map.entry(Tables.SELECTION, "further.best.rows"),
          Map.entry(Tables.PEAKS, "peaks"),
          Map.entry(Tables.YARD_SIZES, "capacity"),
          Map.entry(Tables.CHEAPEST, "capacity"),
          Map.entry(Tables.LOADS, "loads"),
          Map.entry(Tables.ACRES, "acres"),
          Map.entry(Tables.MACHINE_WEEKS, "strips"),
          Map.entry(Tables.CHANGEOVERS, "avoided"));

  /** Columns that the record calls otherwise, both without marks and in small letters; a dot leads into an inner object. */
  private static final Map<String, String> CALLED =
      Map.ofEntries(
          Map.entry("chanceofoverflow", "chance"),
          Map.entry("heldatfieldbales", "heldatfield"),
          Map.entry("truckwaitingd", "waitingd"),
          Map.entry("moneyperyear", "cost.peryear"),
          Map.entry("moneylow95", "cost.low95"),
          Map.entry("moneyhigh95", "cost.high95"),
          Map.entry("groundperyear", "cost.ground"),
          Map.entry("waitingperyear", "cost.waiting"),
          Map.entry("marginbelownolimit", "cost.marginbelow"),
          Map.entry("receivingwages", "cost.receiving"),
          Map.entry("chancefinished", "chance"),
          Map.entry("leftoverbales", "leftover"));

  /** Columns whose field in the record still has an older name; of several the one that a row has. */
  private static final Map<String, List<String>> CALLED_IN_RECORD =
      Map.of(
          "alternative", List.of("option", "plan", "plant"),
          "alternativemean", List.of("optionmean"),
          "min", List.of("least"),
          "max", List.of("most"),
          "significant", List.of("toldapart"),
          "massint", List.of("workedt"),
          "areafactor", List.of("times"));

  private static final Map<String, String> CALLED_IN_CHEAPEST =
      Map.of(
          "moneyabovecheapest", "cost.above.money",
          "lowjoint", "cost.above.low",
          "highjoint", "cost.above.high",
          "significant", "cost.above.toldapart");

  private static final Map<String, String> QUANTITIES =
      Map.of(
          "net_present_value", "netPresentValue",
          "internal_rate_of_return", "internalRate",
          "other_internal_rate", "otherRate",
          "simple_payback", "simplePayback",
          "discounted_payback", "discountedPayback");

  /** What follows from other columns of its row. */
  private static final Set<String> IN_TABLES_ALONE = Set.of(Columns.DEFINITION, Columns.SWING);

  /** The inner object of a pair of plans, whose fields are columns like any other. */
  private static final String PAIR = "row";

  private static final Map<String, String> WORDS = Map.of("true", "yes", "false", "no");

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    for (Table table : answer.tables()) {
      if (table.file().equals(Tables.SERVICE_LIVES)) {
        lives(table, answer.record().getAsJsonArray("lives"), ledger);
      } else if (table.file().equals(Tables.GAIN)) {
        rows(table, list(answer.record(), answer.record().has("further") ? "further.gains" : "gains"), ledger);
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
        String written = fields.get(called(table, column, fields));
        ledger.same(RECORD, new Cell(row, column), String.valueOf(written), row.text(column));
      }
    }
  }

  /** Fields by their names without marks; true is yes, and nothing an empty cell. */
  private static void flatten(String path, JsonObject object, Map<String, String> fields) {
    for (Map.Entry<String, JsonElement> field : object.entrySet()) {
      JsonElement value = field.getValue();
      String name = path + plain(field.getKey());
      if (value.isJsonObject()) {
        flatten(field.getKey().equals(PAIR) ? "" : name + ".", value.getAsJsonObject(), fields);
      } else if (value.isJsonNull()) {
        fields.put(name, "");
      } else if (value.isJsonPrimitive()) {
        String text = value.getAsString();
        boolean word = field.getKey().equals(Columns.QUANTITY);
        fields.put(name, WORDS.getOrDefault(text, word ? text.toLowerCase(Locale.ROOT) : text));
      }
    }
  }

  private static String called(Table table, String column, Map<String, String> fields) {
    String name = plain(column);
    if (table.file().equals(Tables.CHEAPEST) && CALLED_IN_CHEAPEST.containsKey(name)) {
      return CALLED_IN_CHEAPEST.get(name);
    }
    return CALLED_IN_RECORD.getOrDefault(name, List.of()).stream()
        .filter(fields::containsKey)
        .findFirst()
        .orElseGet(() -> CALLED.getOrDefault(name, name));
  }

  private static String plain(String name) {
    return name.replace("_", "").toLowerCase(Locale.ROOT);
  }

  /** A life is one object in the record and a row for each of its quantities in the table. */
  private static void lives(Table table, JsonArray list, Ledger ledger) {
    int each = list.isEmpty() ? 0 : table.cells().size() / list.size();
    ledger.same(RECORD, table.file() + " rows", each * list.size(), table.cells().size());
    for (int at = 0; at < table.cells().size(); at++) {
      JsonObject life = list.get(at / each).getAsJsonObject();
      Table.Row row = new Table.Row(table, at);
      JsonElement figure = life.get(QUANTITIES.get(row.text(Columns.QUANTITY)));
      ledger.same(RECORD, row, life.get("option").getAsString(), row.text(Columns.OPTION));
      ledger.same(RECORD, row, life.get(Columns.LIFE).getAsString(), row.text(Columns.LIFE));
      ledger.same(RECORD, row, figure.isJsonNull() ? "" : figure.getAsString(), row.text(Columns.VALUE));
    }
  }
}
