package hurdline.records;

import hurdline.records.DateReader.Moment;
import hurdline.records.RecordsMap.FileWords;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Reads files with a value a day, month or interval: yard counts, rain, bills, power. */
final class DayReader {
  /**
   * Of what all motors draw together; what is not in the plant file draws less than a fifth of it.
   */
  private static final double SPIKE = 1.2;

  private static final double HOUR_S = 3600;

  private final RecordTable table;
  private final DateReader dates;
  private final Map<String, Integer> lines = new HashMap<>();

  DayReader(RecordTable table, FileWords words, String dateColumn) {
    this.table = table;
    dates = DateReader.of(table.column(dateColumn), words.dates());
  }

  /**
   * @param named what a row is of; empty for one that is not read here
   */
  List<DayRecord> counts(Function<Row, Optional<String>> named, String value) {
    NumberReader numbers = NumberReader.of(table, value);
    List<DayRecord> found = new ArrayList<>();
    for (Row row : table.rows()) {
      Optional<String> of = named.apply(row);
      if (of.isEmpty()) {
        continue;
      }
      String name = of.get();
      OptionalDouble number = numbers.read(table.text(row, value));
      day(row, "date", name)
          .filter(date -> isGiven(row, number, numbers, value))
          .ifPresent(
              date -> {
                row.use(table.kind().word());
                found.add(new DayRecord(row.line(), date, name, number.getAsDouble()));
              });
    }
    return found;
  }

  private static boolean isGiven(
      Row row, OptionalDouble number, NumberReader numbers, String value) {
    if (number.isEmpty() || number.getAsDouble() < 0) {
      row.setAside(
          !numbers.found().isEmpty()
              ? numbers.found()
              : number.isEmpty() ? "no " + value : "below 0: no reading");
      return false;
    }
    return true;
  }

  /** Daily rain; {@code T} is a trace, which is dry. */
  List<DayRecord> rain() {
    NumberReader numbers = NumberReader.of(table, "rain");
    List<DayRecord> found = new ArrayList<>();
    double scale = table.unit("rain", "mm").toLowerCase(Locale.ROOT).startsWith("in") ? 25.4 : 1;
    for (Row row : table.rows()) {
      String cell = table.text(row, "rain");
      boolean trace = cell.equalsIgnoreCase("T");
      OptionalDouble mm = trace ? OptionalDouble.of(0) : numbers.read(cell);
      if (trace) {
        row.note("a trace: dry");
      }
      day(row, "date", "")
          .filter(date -> isGiven(row, mm, numbers, "rain"))
          .ifPresent(
              date -> {
                row.use("weather");
                found.add(new DayRecord(row.line(), date, "", mm.getAsDouble() * scale));
              });
    }
    found.sort(java.util.Comparator.comparing(DayRecord::date));
    return found;
  }

  private Optional<LocalDate> day(Row row, String column, String name) {
    Optional<LocalDate> date = dates.read(table.text(row, column)).flatMap(Moment::date);
    if (date.isEmpty()) {
      row.setAside(dates.found().isEmpty() ? "no date" : dates.found());
      return date;
    }
    Integer first = lines.putIfAbsent(date.get() + "|" + name, row.line());
    if (first != null) {
      row.setAside("same day as line " + first);
      return Optional.empty();
    }
    return date;
  }

  List<DayRecord> bills() {
    NumberReader numbers = NumberReader.of(table, "kWh");
    List<DayRecord> found = new ArrayList<>();
    for (Row row : table.rows()) {
      OptionalDouble kWh = numbers.read(table.text(row, "kWh"));
      Optional<LocalDate> month = month(table.text(row, "month"));
      if (month.isEmpty()) {
        row.setAside("no month, such as 2026-01");
      } else if (isGiven(row, kWh, numbers, "kWh")) {
        row.use("bills");
        found.add(new DayRecord(row.line(), month.get(), "", kWh.getAsDouble()));
      }
    }
    return found;
  }

  private Optional<LocalDate> month(String cell) {
    try {
      return Optional.of(YearMonth.parse(cell).atDay(1));
    } catch (DateTimeParseException e) {
      return dates.read(cell).flatMap(Moment::date).map(date -> date.withDayOfMonth(1));
    }
  }

  /**
   * @param motorsKW what all machines of the plant draw together; 0 where the plant file does not
   *     say
   * @param meters of single machines
   */
  List<PowerRecord> power(WallClock clock, double motorsKW, List<MeterColumn> meters) {
    NumberReader numbers = NumberReader.of(table, "kWh");
    List<PowerRecord> read = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    double beforeS = Double.NEGATIVE_INFINITY;
    for (Row row : table.rows()) {
      Optional<Moment> at = dates.read(table.text(row, "from"));
      OptionalDouble kWh = numbers.read(table.text(row, "kWh"));
      if (at.isEmpty() || at.get().date().isEmpty()) {
        row.setAside(dates.found().isEmpty() ? "no date and time" : dates.found());
      } else if (isGiven(row, kWh, numbers, "kWh")) {
        double fromS = instant(clock, at.get(), beforeS);
        beforeS = fromS;
        read.add(
            new PowerRecord(row.line(), fromS, HOUR_S, kWh.getAsDouble(), single(row, meters)));
        rows.add(row);
      }
    }
    return withoutSpikes(read, rows, motorsKW);
  }

  /** What single machines' meters read; without those that cannot be. */
  private static Map<String, Double> single(Row row, List<MeterColumn> meters) {
    Map<String, Double> read = new HashMap<>();
    for (MeterColumn meter : meters) {
      OptionalDouble kWh = meter.numbers().read(row.cell(meter.at()));
      row.note(meter.numbers().found());
      boolean isHigh = meter.highestKWh() > 0 && kWh.orElse(0) > SPIKE * meter.highestKWh();
      if (kWh.isPresent() && (isHigh || kWh.getAsDouble() < 0)) {
        row.note(
            String.format(
                Locale.ROOT,
                "%.1f kWh of %s %s: not used",
                kWh.getAsDouble(),
                meter.machine(),
                isHigh ? "is more than its motor draws" : "is below 0"));
      } else if (kWh.isPresent()) {
        read.put(meter.machine(), kWh.getAsDouble());
      }
    }
    return read;
  }

  private static double instant(WallClock clock, Moment at, double beforeS) {
    LocalDateTime wall = at.at(null);
    double fromS = at.offset().isPresent() ? clock.epochS(at, null) : clock.epochS(wall);
    return fromS <= beforeS && at.offset().isEmpty() && clock.isTwice(wall)
        ? clock.secondEpochS(wall)
        : fromS;
  }

  private static List<PowerRecord> withoutSpikes(
      List<PowerRecord> read, List<Row> rows, double motorsKW) {
    List<PowerRecord> right = new ArrayList<>();
    for (int i = 0; i < read.size(); i++) {
      PowerRecord at = read.get(i);
      if (motorsKW > 0 && at.kWh() > SPIKE * motorsKW * at.lengthS() / HOUR_S) {
        rows.get(i)
            .setAside(
                String.format(
                    Locale.ROOT,
                    "%.0f kWh is more than all motors draw, %.0f kW",
                    at.kWh(),
                    motorsKW));
        continue;
      }
      double gapS = i == 0 ? HOUR_S : at.fromS() - read.get(i - 1).fromS();
      if (gapS > 1.5 * HOUR_S) {
        rows.get(i)
            .note(
                String.format(Locale.ROOT, "%.0f h without readings before it", gapS / HOUR_S - 1));
      } else if (gapS <= 0) {
        rows.get(i).setAside("not after the row before it");
        continue;
      }
      rows.get(i).use("power");
      right.add(at);
    }
    return right;
  }
}
