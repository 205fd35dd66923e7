package hurdline.records;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** Empty files of records: a line that says what goes in, and the head. */
public final class RecordTemplates {
  private RecordTemplates() {}

  /** Texts by file name. */
  public static Map<String, String> all() {
    Map<String, String> files = new LinkedHashMap<>();
    for (RecordKind kind : RecordKind.values()) {
      String head =
          kind.columns().stream().map(RecordKind.Column::name).collect(Collectors.joining(","));
      files.put(
          kind.file(),
          "# " + explained(kind) + "\n" + (kind == RecordKind.RAIN ? "date,rain_mm" : head) + "\n");
    }
    files.put(
        "records.yaml",
        """
        # What heads and rows cannot say; line-configs/RECORDS.md describes every key. Take the mark off what you use.
        records: 1
        # zone: America/Chicago                         # whose wall clock; else one that never changes
        # from: 2026-01-05                              # what the records cover
        # to: 2026-12-12
        # files: {tickets: {unit: lb}}                  # where no column and no head names a unit
        # called: {machines: {saw: stalk_saw}, reasons: {plugged: choke}, products: {tow: short_fiber_bales}}
        # logged_from: {stalk_saw.choke: 5 min}         # shorter ones were never written down
        # changed: [{on: 2026-06-15, what: new saw, stops: [stalk_saw.choke]}]
        """);
    return files;
  }

  private static String explained(RecordKind kind) {
    return switch (kind) {
      case STOPS ->
          "One row a stop: which machine of the plant file, from when to when (2026-01-05 13:14), and why; leave empty what is not known.";
      case SHIFTS ->
          "One row a shift as it was worked: date, name, times (06:00), one rest, how many hands and the hours paid.";
      case TICKETS ->
          "One row a load over the scale: gross, tare or net in unit (kg, lb, t, ton), bales, moisture in percent; times at the field, the gate and the yard as far as they are noted.";
      case MADE ->
          "One row a shift and product with packages and mass; and one a shift for what was fed, such as: stalk fed, with its bales.";
      case CHANGES ->
          "One row a change of a full bag or bale: which package of the plant file, from when to when (2026-01-05 13:14:20) or how long it lasted; some days a year are enough.";
      case YARD ->
          "One row a count of the yard; of a bin its level (t, m3 or %) and of a store the packages of a product, on the morning from which --as-of simulates.";
      case POWER ->
          "One row an hour: when it began and the kWh of the main meter; behind them a column for each machine with a meter of its own, such as: mill kWh.";
      case BILLS -> "One row a month, such as 2026-01, from the power bills.";
      case RAIN -> "One row a day, days without rain too; T is a trace.";
    };
  }
}
