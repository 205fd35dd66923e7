package hurdline.records;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the dates and times of one column. Where day and month could be changed round, the order is
 * that of the cells that can be read in one way only; else that in which the rows follow each other
 * in time; else it is not known.
 */
final class DateReader {
  private static final Pattern YEAR_FIRST =
      Pattern.compile("([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})");
  private static final Pattern POINTS =
      Pattern.compile("([0-9]{1,2})\\.([0-9]{1,2})\\.([0-9]{4}|[0-9]{2})");
  private static final Pattern SLASHES =
      Pattern.compile("([0-9]{1,2})[/-]([0-9]{1,2})[/-]([0-9]{4}|[0-9]{2})");
  private static final Pattern TIME =
      Pattern.compile(
          "([0-9]{1,2})[:.h]([0-9]{2})(?::([0-9]{2})(?:[.,][0-9]+)?)?\\s*([AaPp]\\.?[Mm]\\.?)?");
  private static final Pattern OFFSET = Pattern.compile("(.*[0-9])\\s*(Z|[+-][0-9]{2}:?[0-9]{2})");
  private static final Pattern BOTH = Pattern.compile("(\\S*[0-9])(?:T|\\s+)(\\S.*)");
  private static final int NOON = 12;

  /** Which stands first where slashes part day and month. */
  enum Order {
    MONTH_FIRST,
    DAY_FIRST,
    UNKNOWN
  }

  /**
   * @param date absent where the cell has a time alone
   * @param offset absent where the cell names none
   */
  record Moment(Optional<LocalDate> date, Optional<LocalTime> time, Optional<ZoneOffset> offset) {
    LocalDateTime at(LocalDate day) {
      return date.orElse(day).atTime(time.orElse(LocalTime.MIDNIGHT));
    }
  }

  private final Order order;
  private String found = "";

  private DateReader(Order order) {
    this.order = order;
  }

  /**
   * @param said the order of {@code records.yaml}; {@code UNKNOWN} where it says none
   */
  static DateReader of(List<String> cells, Order said) {
    return new DateReader(said == Order.UNKNOWN ? order(cells) : said);
  }

  Order order() {
    return order;
  }

  /** Why the last cell could not be read; empty where it could, or was empty. */
  String found() {
    return found;
  }

  /** The moment; empty where the cell is empty or cannot be read. */
  Optional<Moment> read(String cell) {
    found = "";
    String text = cell.strip();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      Optional<Moment> read = moment(text);
      if (read.isEmpty() && found.isEmpty()) {
        found = "\"" + NumberReader.shortened(text) + "\" is no date or time";
      }
      return read;
    } catch (DateTimeException e) {
      found = "\"" + NumberReader.shortened(text) + "\": no such date or time";
      return Optional.empty();
    }
  }

  private Optional<Moment> moment(String text) {
    Optional<ZoneOffset> offset = Optional.empty();
    String rest = text;
    Matcher zoned = OFFSET.matcher(text);
    if (zoned.matches() && text.contains(":")) {
      offset = Optional.of(ZoneOffset.of(zoned.group(2)));
      rest = zoned.group(1);
    }
    Matcher both = BOTH.matcher(rest);
    boolean parted = both.matches() && isDate(both.group(1));
    String day = parted ? both.group(1) : rest;
    Optional<LocalTime> time = parted ? time(both.group(2)) : Optional.empty();
    if (parted && time.isEmpty()) {
      return Optional.empty();
    }
    if (!isDate(day)) {
      Optional<LocalTime> alone = time(rest);
      return alone.map(at -> new Moment(Optional.empty(), alone, Optional.empty()));
    }
    Optional<LocalDate> date = date(day);
    Optional<ZoneOffset> zone = offset;
    return date.map(known -> new Moment(date, time, zone));
  }

  private static boolean isDate(String text) {
    return YEAR_FIRST.matcher(text).matches()
        || POINTS.matcher(text).matches()
        || SLASHES.matcher(text).matches();
  }

  private static Optional<LocalTime> time(String text) {
    Matcher parts = TIME.matcher(text.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    int hour = Integer.parseInt(parts.group(1));
    if (parts.group(4) != null) {
      boolean evening = Character.toLowerCase(parts.group(4).charAt(0)) == 'p';
      if (hour < 1 || hour > NOON) {
        throw new DateTimeException("hour " + hour);
      }
      hour = hour % NOON + (evening ? NOON : 0);
    }
    int second = parts.group(3) == null ? 0 : Integer.parseInt(parts.group(3));
    return Optional.of(LocalTime.of(hour, Integer.parseInt(parts.group(2)), second));
  }

  private Optional<LocalDate> date(String text) {
    Matcher first = YEAR_FIRST.matcher(text);
    if (first.matches()) {
      return Optional.of(LocalDate.of(number(first, 1), number(first, 2), number(first, 3)));
    }
    Matcher points = POINTS.matcher(text);
    if (points.matches()) {
      return Optional.of(
          LocalDate.of(year(number(points, 3)), number(points, 2), number(points, 1)));
    }
    Matcher slashes = SLASHES.matcher(text);
    return slashes.matches() ? slashed(text, slashes) : Optional.empty();
  }

  private Optional<LocalDate> slashed(String text, Matcher parts) {
    int a = number(parts, 1);
    int b = number(parts, 2);
    boolean dayFirst = a > NOON || b <= NOON && order == Order.DAY_FIRST;
    if (a <= NOON && b <= NOON && a != b && order == Order.UNKNOWN) {
      found =
          "\""
              + NumberReader.shortened(text)
              + "\": day or month first? Say \"dates: month-first\" or \"dates: day-first\" in records.yaml";
      return Optional.empty();
    }
    return Optional.of(LocalDate.of(year(number(parts, 3)), dayFirst ? b : a, dayFirst ? a : b));
  }

  private static int number(Matcher parts, int group) {
    return Integer.parseInt(parts.group(group));
  }

  private static int year(int written) {
    return written < 100 ? 2000 + written : written;
  }

  private static Order order(List<String> cells) {
    int monthFirst = 0;
    int dayFirst = 0;
    for (String cell : cells) {
      Matcher parts = SLASHES.matcher(cell.strip().replaceAll("[T ].*", ""));
      if (parts.matches()) {
        monthFirst += number(parts, 2) > NOON ? 1 : 0;
        dayFirst += number(parts, 1) > NOON ? 1 : 0;
      }
    }
    if (monthFirst > 0 != dayFirst > 0) {
      return monthFirst > 0 ? Order.MONTH_FIRST : Order.DAY_FIRST;
    }
    return monthFirst > 0
            || cells.stream()
                .noneMatch(
                    cell -> cell.indexOf('/') > 0 || SLASHES.matcher(cell.strip()).lookingAt())
        ? Order.UNKNOWN
        : byRows(cells);
  }

  /** The order in which fewer rows go back in time; unknown where neither is clearly better. */
  private static Order byRows(List<String> cells) {
    int month = backward(cells, Order.MONTH_FIRST);
    int day = backward(cells, Order.DAY_FIRST);
    if (month == day) {
      return Order.UNKNOWN;
    }
    return month < day ? Order.MONTH_FIRST : Order.DAY_FIRST;
  }

  private static int backward(List<String> cells, Order tried) {
    DateReader reader = new DateReader(tried);
    List<LocalDate> dates = new ArrayList<>();
    cells.forEach(cell -> reader.read(cell).flatMap(Moment::date).ifPresent(dates::add));
    int back = 0;
    for (int i = 1; i < dates.size(); i++) {
      back += dates.get(i).isBefore(dates.get(i - 1)) ? 1 : 0;
    }
    return back;
  }
}
