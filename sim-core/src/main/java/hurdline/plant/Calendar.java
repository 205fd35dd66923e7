package hurdline.plant;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * The horizon and the shifts that may be worked in it.
 *
 * @param from first day
 * @param to last day, inclusive
 * @param closed dates on which no shift starts
 */
public record Calendar(LocalDate from, LocalDate to, List<Shift> shifts, Set<LocalDate> closed) {

  public Calendar {
    shifts = List.copyOf(shifts);
    closed = InOrder.copy(closed);
  }

  /** Whether any of these shifts starts on a date. */
  boolean anyStartsOn(LocalDate date, List<Shift> some) {
    return !closed.contains(date)
        && some.stream().anyMatch(shift -> shift.days().contains(date.getDayOfWeek()));
  }

  /** Whether any of these shifts starts on a later date of the calendar. */
  boolean anyStartsAfter(LocalDate date, List<Shift> some) {
    return date.isBefore(to)
        && date.plusDays(1)
            .datesUntil(to.plusDays(1))
            .anyMatch(later -> anyStartsOn(later, some));
  }

  /**
   * A shift; one whose end is at or before its start runs past midnight.
   *
   * @param fromS start, seconds after midnight, 0 to below 86,400
   * @param toS end, seconds after midnight, 0 to 86,400
   */
  public record Shift(String name, Set<DayOfWeek> days, int fromS, int toS, List<Rest> rests) {
    public Shift {
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
  public record Rest(int atS, double lastsS) {}
}
