package hurdline.records;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The files that a folder of records may hold, each with its columns. */
public enum RecordKind {
  STOPS(
      Column.required("machine", "unit", "equipment", "asset"),
      Column.of("date", "day"),
      Column.required("began", "start", "started", "from", "down", "begin"),
      Column.of("ended", "end", "to", "up", "stop"),
      Column.of("lasted", "duration", "minutes", "downtime"),
      Column.required("reason", "cause", "code", "fault"),
      Column.of("work began", "repair began", "mechanic came"),
      Column.of("note", "notes", "remark", "remarks", "comment")),
  SHIFTS(
      Column.required("date", "day"),
      Column.of("shift", "crew"),
      Column.of("line"),
      Column.required("from", "start", "began"),
      Column.required("to", "end", "ended"),
      Column.of("rest from", "break from"),
      Column.of("rest to", "break to"),
      Column.of("hands", "people", "crew size"),
      Column.of("hours paid", "paid hours", "hours")),
  TICKETS(
      Column.required("ticket", "ticket no", "number", "no"),
      Column.of("crop"),
      Column.of("form", "packed as"),
      Column.of("field", "farm"),
      Column.of("truck", "plate", "truck no"),
      Column.of("gate in", "in", "arrived", "time in"),
      Column.of("gate out", "out", "left", "time out"),
      Column.of("gross"),
      Column.of("tare"),
      Column.of("net"),
      Column.of("unit"),
      Column.of("bales", "count", "modules"),
      Column.of("moisture"),
      Column.of("weighed in", "gross at"),
      Column.of("weighed out", "tare at"),
      Column.of("unload began", "unloading began"),
      Column.of("unload ended", "unloading ended"),
      Column.of("load began", "loading began"),
      Column.of("load ended", "loading ended", "left field")),
  MADE(
      Column.required("date", "day"),
      Column.of("shift", "crew"),
      Column.required("what", "product", "item"),
      Column.of("form", "packed as"),
      Column.of("count", "packages", "bales", "bags", "pieces"),
      Column.of("mass", "weight"),
      Column.of("unit"),
      Column.of("from"),
      Column.of("to")),
  CHANGES(
      Column.required("what", "package", "product", "machine"),
      Column.of("date", "day"),
      Column.required("began", "start", "started", "from", "full", "begin"),
      Column.of("ended", "end", "to", "stop"),
      Column.of("lasted", "duration", "minutes"),
      Column.of("note", "notes", "remark", "remarks", "comment")),
  YARD(
      Column.required("date", "day"),
      Column.of("place"),
      Column.of("crop", "product"),
      Column.required("count", "bales", "bales counted", "modules counted"),
      Column.of("level", "mass", "weight"),
      Column.of("unit")),
  POWER(
      Column.required("from", "hour from", "interval start", "time", "hour"),
      Column.required("kWh", "energy")),
  BILLS(
      Column.required("month"),
      Column.required("kWh", "energy"),
      Column.of("highest hour kW", "highest kW", "peak")),
  RAIN(Column.required("date", "day"), Column.required("rain", "rain_mm", "prcp", "precipitation"));

  private final List<Column> columns;

  RecordKind(Column... columns) {
    this.columns = List.of(columns);
  }

  public List<Column> columns() {
    return columns;
  }

  /** As {@code records.yaml} calls it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The file that is read where {@code records.yaml} names no other. */
  public String file() {
    return word() + ".csv";
  }

  static Optional<RecordKind> of(String word) {
    return Stream.of(values()).filter(kind -> kind.word().equals(word)).findAny();
  }

  /**
   * @param name its own head word
   * @param words other head words that mean it
   */
  public record Column(String name, boolean isRequired, List<String> words) {
    private static Column of(String name, String... words) {
      return new Column(name, false, List.of(words));
    }

    private static Column required(String name, String... words) {
      return new Column(name, true, List.of(words));
    }
  }
}
