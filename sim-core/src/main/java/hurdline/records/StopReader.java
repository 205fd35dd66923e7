package hurdline.records;

import hurdline.records.DateReader.Moment;
import hurdline.records.RecordsMap.FileWords;
import hurdline.records.StopRecord.Repair;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the log of stops row by row: which machine, which stop, from when to when. What several
 * rows say together is {@link StopOverlaps}' to sort out.
 */
final class StopReader {
  private static final double MINUTE_S = 60;
  private static final double HOUR_S = 3600;
  private static final double FAR_S = 14 * 24 * HOUR_S;
  private static final double LONGEST_GUESS_S = 4 * HOUR_S;
  private static final Set<String> ALL =
      Set.of("all", "line", "plant", "everything", "allmachines", "wholeline");

  private final RecordTable table;
  private final RecordsMap map;
  private final WallClock clock;
  private final StopNames names;
  private final Map<String, Spans> crewed;
  private final List<ShiftRecord> shifts;
  private final DateReader began;
  private final DateReader ended;
  private final DateReader day;
  private final LengthReader lasted;

  /** A row whose words are understood. */
  record Told(Row row, LocalDateTime wall, StopRecord stop) {}

  /**
   * @param crewed hours of each machine
   */
  StopReader(
      RecordTable table,
      RecordsMap map,
      WallClock clock,
      StopNames names,
      Map<String, Spans> crewed,
      List<ShiftRecord> shifts) {
    this.shifts = shifts;
    this.table = table;
    this.map = map;
    this.clock = clock;
    this.names = names;
    this.crewed = crewed;
    FileWords words = map.words(RecordKind.STOPS);
    began = DateReader.of(table.column("began"), words.dates());
    ended =
        DateReader.of(
            table.column("ended"),
            words.dates() == DateReader.Order.UNKNOWN ? began.order() : words.dates());
    day = DateReader.of(table.column("date"), words.dates());
    lasted = new LengthReader(table, "lasted");
  }

  List<StopRecord> read() {
    List<Told> told = new ArrayList<>();
    for (Row row : table.rows()) {
      names
          .of(row, table.text(row, "machine"), table.text(row, "reason"), ALL)
          .flatMap(found -> times(row, found))
          .ifPresent(told::add);
    }
    return new StopOverlaps(withoutFar(told), crewed, shifts).read();
  }

  private Optional<Told> times(Row row, StopNames.Found found) {
    Optional<LocalDate> date = day.read(table.text(row, "date")).flatMap(Moment::date);
    Optional<Moment> start = began.read(table.text(row, "began"));
    if (start.isEmpty() || start.get().date().isEmpty() && date.isEmpty()) {
      row.setAside(!began.found().isEmpty() ? began.found() : "no beginning");
      return Optional.empty();
    }
    boolean swap = map.taken(table.file(), row.line()).equals("day and month");
    Optional<LocalDateTime> wall = swapped(start.get().at(date.orElse(null)), swap);
    if (wall.isEmpty()) {
      row.setAside("day and month cannot be changed round");
      return Optional.empty();
    }
    if (start.get().offset().isEmpty() && clock.isSkipped(wall.get())) {
      row.note(
          wall.get().toLocalTime()
              + " was not on that night; read as "
              + clock.wall(clock.epochS(wall.get())).toLocalTime());
    }
    double beganS =
        start.get().offset().isPresent()
            ? clock.epochS(start.get(), date.orElse(null))
            : clock.epochS(wall.get());
    double endedS = ended(row, wall.get(), beganS, swap);
    return Optional.of(new Told(row, wall.get(), stop(row, found, wall.get(), beganS, endedS)));
  }

  private StopRecord stop(
      Row row, StopNames.Found found, LocalDateTime wall, double beganS, double endedS) {
    Spans hours = crewed.getOrDefault(found.machine(), Spans.of(List.of()));
    double workS = work(row, wall.toLocalDate());
    boolean isLater = workS > beganS && (Double.isNaN(endedS) || workS < endedS);
    return new StopRecord(
        row.line(),
        found.machine(),
        found.stop(),
        beganS,
        isLater ? workS : beganS,
        endedS,
        repair(row, beganS, endedS),
        hours.holds(beganS) || hours.holds(beganS - 5 * MINUTE_S) || hours.isEmpty(),
        MINUTE_S);
  }

  private double work(Row row, LocalDate date) {
    return table.has("work began")
        ? ended
            .read(table.text(row, "work began"))
            .map(m -> (double) clock.epochS(m, date))
            .orElse(Double.NaN)
        : Double.NaN;
  }

  private static Repair repair(Row row, double beganS, double endedS) {
    if (Double.isNaN(endedS)) {
      return Repair.NO_END;
    }
    if (endedS == beganS) {
      row.note("no length: repair below a minute");
      return Repair.BELOW_A_STEP;
    }
    return Repair.WHOLE;
  }

  /** When it ended; NaN where that is not known, with the reason in the row's notes. */
  private double ended(Row row, LocalDateTime wall, double beganS, boolean swap) {
    String cell = table.text(row, "ended");
    if (cell.isEmpty()) {
      return beganS + lasted.lengthS(row);
    }
    Optional<Moment> end = ended.read(cell);
    if (end.isEmpty()) {
      row.note(ended.found() + ": end not used");
      return Double.NaN;
    }
    Optional<LocalDateTime> at =
        swapped(end.get().at(wall.toLocalDate()), swap && end.get().date().isPresent());
    double endedS =
        end.get().offset().isPresent() || at.isEmpty()
            ? clock.epochS(end.get(), wall.toLocalDate())
            : clock.epochS(at.get());
    if (endedS < beganS
        && at.isPresent()
        && clock.isTwice(at.get())
        && clock.secondEpochS(at.get()) > beganS) {
      row.note(
          at.get().toLocalTime()
              + " taken as the second "
              + at.get().toLocalTime()
              + " of that night");
      return clock.secondEpochS(at.get());
    }
    return endedS < beganS ? backward(row, wall, beganS, end.get(), endedS) : endedS;
  }

  /** An end before the start: the next day where it has no date of its own, else not used. */
  private double backward(Row row, LocalDateTime wall, double beganS, Moment end, double endedS) {
    if (end.date().isEmpty()) {
      double nextS = clock.epochS(end, wall.toLocalDate().plusDays(1));
      if (nextS - beganS <= 12 * HOUR_S) {
        return nextS;
      }
    }
    double half = endedS + 12 * HOUR_S;
    if (map.taken(table.file(), row.line()).equals("ended +12 h")) {
      row.note("ended 12 h later, as records.yaml says");
      return half;
    }
    boolean isLikely = half - beganS >= MINUTE_S && half - beganS <= LONGEST_GUESS_S;
    row.note(
        "ended "
            + clock.wall(endedS).toLocalTime()
            + " before it began "
            + wall.toLocalTime()
            + (isLikely ? ": +12 h?" : "")
            + " End not used");
    return Double.NaN;
  }

  private static Optional<LocalDateTime> swapped(LocalDateTime wall, boolean swap) {
    try {
      return Optional.of(
          swap
              ? wall.withDayOfMonth(1)
                  .withMonth(wall.getDayOfMonth())
                  .withDayOfMonth(wall.getMonthValue())
              : wall);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** Those whose date is not far from the two rows before and the two after in the file. */
  private List<Told> withoutFar(List<Told> told) {
    List<Told> near = new ArrayList<>();
    for (int i = 0; i < told.size(); i++) {
      if (i < 2 || i + 2 >= told.size() || !isFar(told, i)) {
        near.add(told.get(i));
        continue;
      }
      Told far = told.get(i);
      Optional<LocalDateTime> round = swapped(far.wall(), true);
      boolean home =
          round.isPresent()
              && Math.abs(clock.epochS(round.get()) - told.get(i - 1).stop().beganS()) <= FAR_S;
      far.row()
          .setAside(
              far.wall().toLocalDate()
                  + " is far from the rows around it"
                  + (home ? ": " + round.get().toLocalDate() + "?" : ""));
    }
    return near;
  }

  private static boolean isFar(List<Told> told, int at) {
    double[] around = {
      told.get(at - 2).stop().beganS(),
      told.get(at - 1).stop().beganS(),
      told.get(at + 1).stop().beganS(),
      told.get(at + 2).stop().beganS()
    };
    java.util.Arrays.sort(around);
    double itsS = told.get(at).stop().beganS();
    return Math.abs(itsS - around[1]) > FAR_S && Math.abs(itsS - around[2]) > FAR_S;
  }
}
