package hurdline.plant;

import hurdline.random.Distribution;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A kind of stop of a machine.
 *
 * @param every amount between two stops: kg where counted on {@code MASS}, else seconds; of no
 *     meaning where it is planned
 * @param count what the amount is counted on
 * @param lastsS how long the repair takes
 * @param already what was counted before the first day, in the unit of {@code every}
 * @param repairAnyTime whether the repair goes forward outside crewed hours
 * @param needs resources that the repair holds, taken together
 * @param cost money for each stop
 */
public record Stop(
    String name,
    Distribution every,
    Count count,
    Distribution lastsS,
    double already,
    boolean repairAnyTime,
    List<String> needs,
    double cost) {
  public Stop {
    needs = List.copyOf(needs);
    Check.notBelow0("already", already);
    Check.notBelow0("cost", cost);
  }

  /** The same stop with another amount counted before the first day. */
  public Stop aged(double otherAlready) {
    return new Stop(name, every, count, lastsS, otherAlready, repairAnyTime, needs, cost);
  }

  public Counted counted() {
    return count.on();
  }

  /** The dates for which it is planned; empty where it comes due on a count. */
  public Optional<Dates> planned() {
    return count.planned();
  }

  /** The names of the lines to which it belongs; empty where it belongs to all. */
  public Set<String> lines(List<Line> all) {
    return count.onlyFor().stream()
        .flatMap(name -> linesOf(name, all).stream())
        .collect(Collectors.toSet());
  }

  /** The names of the lines that a name stands for, which is a line's own or its crop's. */
  static Set<String> linesOf(String lineOrCrop, List<Line> all) {
    return all.stream()
        .filter(line -> line.name().equals(lineOrCrop) || line.crop().equals(lineOrCrop))
        .map(Line::name)
        .collect(Collectors.toSet());
  }

  /**
   * @param onlyFor lines, or crops for all their lines, whose work alone is counted; empty for all
   * @param planned dates in place of a count
   */
  public record Count(Counted on, List<String> onlyFor, Optional<Dates> planned) {
    public Count {
      onlyFor = List.copyOf(onlyFor);
    }

    public Count(Counted on, List<String> onlyFor) {
      this(on, onlyFor, Optional.empty());
    }

    public boolean isOfAll() {
      return onlyFor.isEmpty();
    }
  }

  /**
   * When a planned stop begins.
   *
   * @param on dates, in order
   * @param yearly whether each stands for its month and day of every year
   * @param atS seconds after midnight
   */
  public record Dates(List<LocalDate> on, boolean yearly, int atS) {
    public Dates {
      on = on.stream().sorted().toList();
      Check.count(0, "atS", atS);
    }

    /** The dates that lie between two, both included, in order. */
    public List<LocalDate> between(LocalDate from, LocalDate to) {
      return on.stream()
          .flatMap(date -> yearly ? everyYear(date, from, to) : Stream.of(date))
          .filter(date -> !date.isBefore(from) && !date.isAfter(to))
          .sorted()
          .toList();
    }

    private static Stream<LocalDate> everyYear(LocalDate date, LocalDate from, LocalDate to) {
      MonthDay day = MonthDay.from(date);
      return IntStream.rangeClosed(from.getYear(), to.getYear())
          .filter(day::isValidYear)
          .mapToObj(day::atYear);
    }
  }

  /** What a stop's amount is counted on. */
  public enum Counted {
    RUNNING,
    MASS,
    CREWED,
    CALENDAR
  }
}
