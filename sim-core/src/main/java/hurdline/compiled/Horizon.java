package hurdline.compiled;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Set;

/**
 * The days that are simulated, counted from 0, and which of them are closed.
 *
 * @param first date of day 0
 * @param days how many there are, at least 1
 */
record Horizon(LocalDate first, int days, Set<LocalDate> closed) {
  static final double DAY_S = 86_400;

  static Horizon of(hurdline.plant.Calendar calendar) {
    long days = ChronoUnit.DAYS.between(calendar.from(), calendar.to()) + 1;
    if (!(days >= 1)) {
      throw new IllegalArgumentException(
          "to is " + calendar.to() + "; expected not before from, " + calendar.from());
    }
    return new Horizon(calendar.from(), Math.toIntExact(days), calendar.closed());
  }

  double lengthS() {
    return days * DAY_S;
  }

  /** Day of a date; below 0 or from {@link #days} on where it lies outside. */
  int day(LocalDate date) {
    return Math.toIntExact(ChronoUnit.DAYS.between(first, date));
  }

  LocalDate date(int day) {
    return first.plusDays(day);
  }

  DayOfWeek weekday(int day) {
    return first.getDayOfWeek().plus(day);
  }

  /** Whether what keeps these days of the week may start on this day. */
  boolean opens(int day, Set<DayOfWeek> on) {
    return on.contains(weekday(day)) && !closed.contains(date(day));
  }

  double cutS(double atS) {
    return Math.min(Math.max(atS, 0), lengthS());
  }
}
