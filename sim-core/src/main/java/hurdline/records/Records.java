package hurdline.records;

import hurdline.plant.Plant;
import hurdline.problem.LocatedProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * All that a folder of records says.
 *
 * @param contents of bins and stores
 * @param crewed hours of each machine, from shifts
 * @param cautions what is to be known of the files as a whole
 * @param hash of all files, so that figures can say from which records they are
 */
public record Records(
    RecordsMap map,
    List<ShiftRecord> shifts,
    List<StopRecord> stops,
    List<TicketRecord> tickets,
    List<MadeRecord> made,
    List<ChangeRecord> changes,
    List<DayRecord> yard,
    List<ContentRecord> contents,
    List<PowerRecord> power,
    List<DayRecord> bills,
    List<DayRecord> rain,
    Map<String, Spans> crewed,
    Account account,
    List<LocatedProblem> cautions,
    String hash) {
  private static final int SAID = 5;

  /** The rows that are of days before a date; account, cautions and hash are still those of all. */
  public Records before(LocalDate date) {
    double atS = new WallClock(map.zone()).epochS(date.atStartOfDay());
    Spans later = Spans.of(List.of(new Spans.Span(atS, Double.MAX_VALUE)));
    Map<String, Spans> crewedBefore = new LinkedHashMap<>();
    crewed.forEach((machine, spans) -> crewedBefore.put(machine, spans.less(later)));
    return new Records(
        map,
        shifts.stream().filter(row -> row.date().isBefore(date)).toList(),
        stops.stream().filter(row -> row.beganS() < atS).toList(),
        tickets.stream().filter(row -> row.inS() < atS).toList(),
        made.stream().filter(row -> row.date().isBefore(date)).toList(),
        changes.stream().filter(row -> row.beganS() < atS).toList(),
        yard.stream().filter(row -> !row.date().isAfter(date)).toList(), // counted in the morning
        contents.stream().filter(row -> !row.date().isAfter(date)).toList(), // likewise
        power.stream().filter(row -> row.fromS() < atS).toList(),
        bills.stream().filter(row -> row.date().isBefore(date)).toList(),
        rain.stream().filter(row -> row.date().isBefore(date)).toList(),
        crewedBefore,
        account,
        cautions,
        hash);
  }

  /**
   * What is to be known of the files, and the last counts of the yard, of bins and stores up to a
   * day that are set aside: a season that goes on from there begins without them.
   */
  public List<LocatedProblem> cautionsUpTo(LocalDate date) {
    List<LocatedProblem> all = new ArrayList<>(cautions);
    String file = map.words(RecordKind.YARD).file();
    List<Account.Entry> aside =
        account.entries().stream()
            .filter(row -> row.file().equals(file) && row.verdict() == Account.Verdict.SET_ASIDE)
            .toList();
    int last = lines(row -> row.isBefore(date)).max(Integer::compare).orElse(0);
    int next = lines(row -> row.isAfter(date)).min(Integer::compare).orElse(Integer.MAX_VALUE);
    aside.stream()
        .filter(row -> row.line() > last && row.line() < next)
        .limit(SAID)
        .forEach(
            row ->
                all.add(
                    new LocatedProblem(
                        LocatedProblem.Severity.WARNING,
                        file,
                        row.line(),
                        0,
                        "",
                        "set aside: " + row.why(),
                        "what it counts is not in the answer",
                        "",
                        "")));
    return all;
  }

  /** Lines of counts of such dates; rows are in the order of time as a rule. */
  private Stream<Integer> lines(Predicate<LocalDate> of) {
    return Stream.concat(
        yard.stream().filter(row -> of.test(row.date())).map(DayRecord::line),
        contents.stream().filter(row -> of.test(row.date())).map(ContentRecord::line));
  }

  /**
   * Counts of a crop in the yard. One that names no crop is of the one that its place alone takes,
   * else of the file's first.
   */
  public Stream<DayRecord> counted(Plant plant, String crop) {
    return yard.stream().filter(row -> YardReader.isOf(row, plant, crop));
  }

  /** The package of each machine that fills one kind alone, by the machine. */
  public Map<String, String> packageOf(Plant plant) {
    return PackageNames.filled(plant);
  }

  /** The days that are covered: as records.yaml says, else from the first shift to the last. */
  public Optional<LocalDate> first() {
    return map.from().or(() -> shifts.stream().map(ShiftRecord::date).min(LocalDate::compareTo));
  }

  public Optional<LocalDate> last() {
    return map.to().or(() -> shifts.stream().map(ShiftRecord::date).max(LocalDate::compareTo));
  }
}
