package hurdline.text;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.Locale;

/**
 * Dates in the reader's order. Months are words where the order is not the one of the tables, so
 * that no reader takes a day for a month; they are English, as the sentences around them are.
 */
final class Dates {
  private enum Order {
    YEAR_FIRST("uuuu-MM-dd", "MM-dd", "uuuu-MM"),
    MONTH_FIRST("MMM d, uuuu", "MMM d", "MMM uuuu"),
    DAY_FIRST("d MMM uuuu", "d MMM", "MMM uuuu");

    private final DateTimeFormatter date;
    private final DateTimeFormatter day;
    private final DateTimeFormatter month;

    Order(String date, String day, String month) {
      this.date = DateTimeFormatter.ofPattern(date, Locale.ENGLISH);
      this.day = DateTimeFormatter.ofPattern(day, Locale.ENGLISH);
      this.month = DateTimeFormatter.ofPattern(month, Locale.ENGLISH);
    }
  }

  private final Order order;

  Dates(Locale locale) {
    String pattern =
        DateTimeFormatterBuilder.getLocalizedDateTimePattern(
            FormatStyle.SHORT, null, IsoChronology.INSTANCE, locale);
    int year = pattern.indexOf('y');
    int month = pattern.indexOf('M');
    int day = pattern.indexOf('d');
    order =
        year < month && year < day
            ? Order.YEAR_FIRST
            : month < day ? Order.MONTH_FIRST : Order.DAY_FIRST;
  }

  String date(LocalDate date) {
    return order.date.format(date);
  }

  /** Without its year. */
  String day(LocalDate date) {
    return order.day.format(date);
  }

  String month(YearMonth month) {
    return order.month.format(month);
  }
}
