package hurdline.plant;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.Set;

/**
 * Hours of the clock that come again: on some days of the week, in some months. They begin and end
 * on full quarter-hours, since that is how meters count.
 *
 * @param months in which they hold; each instant goes by the month of its own date
 * @param days of the week on which they begin
 * @param fromS begin, seconds after midnight, 0 to below 86,400
 * @param toS end, seconds after midnight; at or before the begin it lies on the next date
 * @param holidays dates that count as Sundays
 */
public record ClockHours(
    Set<Month> months, Set<DayOfWeek> days, int fromS, int toS, Set<LocalDate> holidays) {
  /** What meters count by. */
  private static final int QUARTER_S = 900;

  private static final int DAY_S = 86_400;

  public ClockHours {
    months = InOrder.copy(months);
    days = InOrder.copy(days);
    holidays = InOrder.copy(holidays);
    quarter("fromS", fromS);
    quarter("toS", toS);
  }

  private static void quarter(String name, int atS) {
    if (!(atS >= 0 && atS <= DAY_S && isQuarter(atS))) {
      throw new IllegalArgumentException(
          name + " is " + atS + "; expected a full quarter-hour from 0 to " + DAY_S);
    }
  }

  /** Whether the instant, seconds after midnight, is one at which such hours can begin and end. */
  public static boolean isQuarter(int atS) {
    return atS % QUARTER_S == 0;
  }

  private DayOfWeek dayOf(LocalDate date) {
    return holidays.contains(date) ? DayOfWeek.SUNDAY : date.getDayOfWeek();
  }

  /** Whether the instant of a date, seconds after its midnight, lies in these hours. */
  public boolean hold(LocalDate date, int atS) {
    return months.contains(date.getMonth())
        && (days.contains(dayOf(date)) && atS >= fromS && (toS <= fromS || atS < toS)
            || days.contains(dayOf(date.minusDays(1))) && toS <= fromS && atS < toS);
  }
}
