package hurdline.plant;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The horizon and the shifts that may be worked in it.
 *
 * @param from first day
 * @param to last day, inclusive
 * @param closed dates on which no shift starts
 * @param repeats absent where the file does not say
 */
public record Calendar(
    LocalDate from,
    LocalDate to,
    List<Shift> shifts,
    Set<LocalDate> closed,
    Optional<Repeats> repeats) {

  /** How calendars follow each other over the life of something bought. */
  public enum Repeats {
    /** Each begins a year after the one before. */
    YEARLY,
    /** Each begins as the one before ends. */
    END_TO_END;

    /** As a plant file has it: {@code end-to-end}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public Calendar {
    shifts = List.copyOf(shifts);
    closed = InOrder.copy(closed);
  }

  /** Days from the first to the last, both counted. */
  public int days() {
    return Math.toIntExact(ChronoUnit.DAYS.between(from, to) + 1);
  }

  /**
   * The first date of each of its years, counted from its own first day; the last may be cut short.
   */
  public List<LocalDate> years() {
    return IntStream.iterate(0, year -> year + 1)
        .mapToObj(from::plusYears)
        .takeWhile(first -> !first.isAfter(to))
        .toList();
  }

  /** Whether it ends before a year is over. */
  public boolean isShorterThanAYear() {
    return to.plusDays(1).isBefore(from.plusYears(1));
  }

  /**
   * For how many years of loan and tax it stands: its whole years, or one where it is a season that
   * comes every year; empty where it is neither.
   */
  public OptionalInt taxYears() {
    int years = years().size();
    if (to.plusDays(1).equals(from.plusYears(years))) {
      return OptionalInt.of(years);
    }
    boolean season = isShorterThanAYear() && repeats.equals(Optional.of(Repeats.YEARLY));
    return season ? OptionalInt.of(1) : OptionalInt.empty();
  }

  /** Whether any of these shifts starts on a date. */
  boolean anyStartsOn(LocalDate date, List<Shift> some) {
    return !closed.contains(date)
        && some.stream().anyMatch(shift -> shift.days().contains(date.getDayOfWeek()));
  }

  /** Whether any of these shifts starts on a later date of the calendar. */
  boolean anyStartsAfter(LocalDate date, List<Shift> some) {
    return date.isBefore(to)
        && date.plusDays(1).datesUntil(to.plusDays(1)).anyMatch(later -> anyStartsOn(later, some));
  }

  /**
   * A shift; one whose end is at or before its start runs past midnight.
   *
   * @param fromS start, seconds after midnight, 0 to below 86,400
   * @param toS end, seconds after midnight, 0 to 86,400
   */
  public record Shift(String name, Set<DayOfWeek> days, int fromS, int toS, List<Rest> rests) {
    public Shift {
      Check.count(0, "fromS", fromS);
      Check.count(0, "toS", toS);
      days = InOrder.copy(days);
      rests = List.copyOf(rests);
    }

    /** Length from start to end, rests included. */
    public int lengthS() {
      return toS > fromS ? toS - fromS : toS + 86_400 - fromS;
    }
  }

  /**
   * A paid pause within a shift.
   *
   * @param atS start, seconds after midnight; before the shift's own start it lies on the next date
   */
  public record Rest(int atS, double lastsS) {
    public Rest {
      Check.above0("lastsS", lastsS);
    }
  }
}
