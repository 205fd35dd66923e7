package hurdline.records;

import hurdline.plant.Plant;
import hurdline.plant.SeasonEntry.Campaign;
import hurdline.records.DateReader.Moment;
import hurdline.records.RecordsMap.FileWords;
import hurdline.records.Spans.Span;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads shifts as they were worked, and which lines each crewed. */
final class ShiftReader {
  private static final double HOUR_S = 3600;
  private static final double DAY_S = 24 * HOUR_S;

  /**
   * Paid hours beyond hands times the shift's length: overtime, travel and the like reach no
   * further.
   */
  private static final double MOST_PAID = 1.5;

  private final RecordTable table;
  private final Plant plant;
  private final WallClock clock;
  private final DateReader dates;
  private final NameReader names = new NameReader(Map.of());
  private final NumberReader hands;
  private final NumberReader paid;
  private final Map<String, Integer> lines = new HashMap<>();

  ShiftReader(RecordTable table, FileWords words, Plant plant, WallClock clock) {
    this.table = table;
    this.plant = plant;
    this.clock = clock;
    dates = DateReader.of(table.column("date"), words.dates());
    hands = NumberReader.of(table, "hands");
    paid = NumberReader.of(table, "hours paid");
  }

  List<ShiftRecord> read() {
    List<ShiftRecord> shifts = new ArrayList<>();
    table.rows().forEach(row -> shift(row).ifPresent(shifts::add));
    shifts.sort(java.util.Comparator.comparingDouble(ShiftRecord::fromS));
    return shifts;
  }

  private Optional<ShiftRecord> shift(Row row) {
    Optional<Moment> date = dates.read(table.text(row, "date"));
    if (date.isEmpty() || date.get().date().isEmpty()) {
      row.setAside(dates.found().isEmpty() ? "no date" : dates.found());
      return Optional.empty();
    }
    LocalDate day = date.get().date().get();
    double fromS = instant(row, "from", day, Double.NEGATIVE_INFINITY);
    double toS = instant(row, "to", day, fromS);
    if (!(toS > fromS)) {
      row.setAside(
          Double.isNaN(fromS) || Double.isNaN(toS)
              ? "\"from\" or \"to\" is no time"
              : "it has no length");
      return Optional.empty();
    }
    String name = table.text(row, "shift");
    List<String> crewed = lines(row, name, day);
    if (crewed.isEmpty()) {
      row.setAside("no line of the plant works then; add a column \"line\"");
      return Optional.empty();
    }
    Integer first = lines.putIfAbsent(day + " " + name + " " + crewed + " " + fromS, row.line());
    if (first != null) {
      row.setAside("same as line " + first);
      return Optional.empty();
    }
    return Optional.of(
        new ShiftRecord(
            row.line(),
            day,
            name,
            crewed,
            worked(row, day, fromS, toS),
            read(hands, row, "hands"),
            paidS(row, toS - fromS)));
  }

  private List<Span> worked(Row row, LocalDate day, double fromS, double toS) {
    double restFromS = instant(row, "rest from", day, fromS);
    double restToS = instant(row, "rest to", day, restFromS);
    if (restToS > restFromS && restFromS >= fromS && restToS <= toS) {
      return Spans.of(List.of(new Span(fromS, restFromS), new Span(restToS, toS))).all();
    }
    if (!Double.isNaN(restFromS) || !Double.isNaN(restToS)) {
      row.note("the rest does not lie within the shift: not used");
    }
    return List.of(new Span(fromS, toS));
  }

  private double paidS(Row row, double lengthS) {
    double hours = read(paid, row, "hours paid");
    double count = read(hands, row, "hands");
    boolean isWrong = hours * HOUR_S > MOST_PAID * count * lengthS;
    if (isWrong) {
      row.note(
          String.format(
              java.util.Locale.ROOT,
              "%.0f paid hours for %.0f hands in %.1f h: not used",
              hours,
              count,
              lengthS / HOUR_S));
    }
    row.use(Double.isNaN(hours) || isWrong ? "hours" : "hours crew");
    return isWrong ? Double.NaN : hours * HOUR_S;
  }

  private double read(NumberReader reader, Row row, String column) {
    OptionalDouble value = reader.read(table.text(row, column));
    row.note(reader.found());
    return value.orElse(Double.NaN);
  }

  /**
   * The instant of a cell, on the next day where it would lie before {@code notBeforeS}; NaN where
   * it is none.
   */
  private double instant(Row row, String column, LocalDate day, double notBeforeS) {
    Optional<Moment> moment = dates.read(table.text(row, column));
    if (moment.isEmpty() || Double.isNaN(notBeforeS)) {
      return Double.NaN;
    }
    double atS = clock.epochS(moment.get(), day);
    if (atS < notBeforeS && moment.get().date().isEmpty()) {
      return clock.epochS(moment.get(), day.plusDays(1));
    }
    return atS - notBeforeS > DAY_S && notBeforeS > 0 ? Double.NaN : atS;
  }

  /** By the column of that name; else the lines whose season has the shift, or is then. */
  private List<String> lines(Row row, String shift, LocalDate day) {
    List<String> known = plant.lines().stream().map(hurdline.plant.Line::name).toList();
    String said = table.text(row, "line");
    if (!said.isEmpty()) {
      return names
          .read(said, known)
          .map(found -> List.of(row.note(found.how()) == null ? "" : found.name()))
          .orElse(List.of());
    }
    List<Campaign> all =
        plant.season().stream()
            .filter(Campaign.class::isInstance)
            .map(Campaign.class::cast)
            .toList();
    List<String> byName =
        all.stream()
            .filter(c -> c.shifts().contains(shift))
            .map(Campaign::line)
            .distinct()
            .toList();
    if (!byName.isEmpty() || known.size() == 1) {
      return byName.isEmpty() ? known : byName;
    }
    return all.stream()
        .filter(c -> isIn(c, MonthDay.from(day)))
        .map(Campaign::line)
        .distinct()
        .toList();
  }

  /** Whether a day of any year lies in a campaign's. */
  private static boolean isIn(Campaign campaign, MonthDay day) {
    MonthDay from = MonthDay.from(campaign.from());
    MonthDay to = MonthDay.from(campaign.to());
    return from.isAfter(to)
        ? !day.isBefore(from) || !day.isAfter(to)
        : !day.isBefore(from) && !day.isAfter(to);
  }
}
