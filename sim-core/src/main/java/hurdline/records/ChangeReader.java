package hurdline.records;

import hurdline.plant.Plant;
import hurdline.records.DateReader.Moment;
import hurdline.records.RecordsMap.FileWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the log of package changes: which package, and how long its change took. */
final class ChangeReader {
  private static final double MINUTE_S = 60;
  private static final double HOUR_S = 3600;

  /** A change that took longer was something else too. */
  private static final double LONGEST_S = 4 * HOUR_S;

  private final RecordTable table;
  private final WallClock clock;
  private final PackageNames names;
  private final DateReader began;
  private final DateReader ended;
  private final DateReader day;
  private final LengthReader lasted;
  private final Map<List<String>, Integer> lines = new HashMap<>();

  ChangeReader(RecordTable table, RecordsMap map, Plant plant, WallClock clock) {
    this.table = table;
    this.clock = clock;
    names = new PackageNames(plant, map);
    FileWords words = map.words(RecordKind.CHANGES);
    began = DateReader.of(table.column("began"), words.dates());
    ended =
        DateReader.of(
            table.column("ended"),
            words.dates() == DateReader.Order.UNKNOWN ? began.order() : words.dates());
    day = DateReader.of(table.column("date"), words.dates());
    lasted = new LengthReader(table, "lasted");
  }

  List<ChangeRecord> read() {
    List<ChangeRecord> changes = new ArrayList<>();
    for (Row row : table.rows()) {
      Integer first = lines.putIfAbsent(row.cells(), row.line());
      if (first != null) {
        row.setAside("same as line " + first);
      } else {
        names
            .of(row, table.text(row, "what"))
            .flatMap(packaging -> change(row, packaging))
            .ifPresent(changes::add);
      }
    }
    return changes;
  }

  private Optional<ChangeRecord> change(Row row, String packaging) {
    Optional<LocalDate> date = day.read(table.text(row, "date")).flatMap(Moment::date);
    Optional<Moment> start = began.read(table.text(row, "began"));
    if (start.isEmpty() || start.get().date().isEmpty() && date.isEmpty()) {
      row.setAside(began.found().isEmpty() ? "no beginning" : began.found());
      return Optional.empty();
    }
    LocalDate on = start.get().date().or(() -> date).orElseThrow();
    double beganS = clock.epochS(start.get(), on);
    double lastedS = lastedS(row, beganS, on);
    if (Double.isNaN(lastedS) || lastedS < 0 || lastedS > LONGEST_S) {
      row.setAside(
          Double.isNaN(lastedS)
              ? "neither an end nor a length"
              : lastedS < 0 ? "ended before it began" : "longer than 4 h: no change of a package");
      return Optional.empty();
    }
    row.use("change");
    return Optional.of(new ChangeRecord(row.line(), packaging, beganS, lastedS, stepS(row)));
  }

  /** NaN where neither is told. */
  private double lastedS(Row row, double beganS, LocalDate on) {
    Optional<Moment> end = ended.read(table.text(row, "ended"));
    if (end.isPresent()) {
      double endedS = clock.epochS(end.get(), on);
      boolean isNext = endedS < beganS && end.get().date().isEmpty();
      return (isNext ? clock.epochS(end.get(), on.plusDays(1)) : endedS) - beganS;
    }
    return lasted.lengthS(row);
  }

  /** A second where the row tells seconds, else a minute. */
  private double stepS(Row row) {
    boolean hasSeconds =
        table.text(row, "began").matches(".*\\d:\\d+:\\d+.*")
            || table.text(row, "ended").isEmpty()
                && (lasted.unitS() == 1 || table.text(row, "lasted").matches(".*\\d[.,]\\d.*"));
    return hasSeconds ? 1 : MINUTE_S;
  }
}
