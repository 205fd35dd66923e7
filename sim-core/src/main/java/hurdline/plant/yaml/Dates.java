package hurdline.plant.yaml;

import hurdline.plant.Nearest;
import hurdline.plant.yaml.tree.Tree.Scalar;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads dates, clock times and days of the week. */
final class Dates {
  private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
  private static final Pattern CLOCK = Pattern.compile("([01][0-9]|2[0-3]):([0-5][0-9])|24:00");
  private static final String SOME_DATE = "a date such as 2027-06-07";
  private static final String SOME_CLOCK =
      "a clock time in quotes such as \"06:00\", up to \"24:00\"";
  private static final Map<String, DayOfWeek> DAYS = byWord(DayOfWeek.values());
  private static final Map<String, Month> MONTHS = byWord(Month.values());

  private Dates() {}

  /** By the first three letters, such as {@code Mon} and {@code Jan}. */
  private static <T extends Enum<T>> Map<String, T> byWord(T[] all) {
    Map<String, T> words = new LinkedHashMap<>();
    for (T one : all) {
      words.put(one.name().charAt(0) + one.name().substring(1, 3).toLowerCase(Locale.ROOT), one);
    }
    return words;
  }

  static Optional<LocalDate> date(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Matcher parts = DATE.matcher(at.scalar().map(Scalar::text).orElse(""));
    if (!parts.matches()) {
      at.wrong(at.shown() + " is not a date", SOME_DATE);
      return Optional.empty();
    }
    return exists(at, parts);
  }

  private static Optional<LocalDate> exists(NodeReader at, Matcher parts) {
    int year = Integer.parseInt(parts.group(1));
    int month = Integer.parseInt(parts.group(2));
    int day = Integer.parseInt(parts.group(3));
    try {
      if (year >= 1900 && year < 2200) {
        return Optional.of(LocalDate.of(year, month, day));
      }
      at.wrong(at.shown() + " is too far away", "a date from 1900 to 2199");
    } catch (DateTimeException e) {
      at.wrong(at.shown() + " is a date that does not exist", daysOf(year, month));
    }
    return Optional.empty();
  }

  private static String daysOf(int year, int month) {
    if (month < 1 || month > 12) {
      return "a month from 01 to 12, as in 2027-06-07";
    }
    int length = LocalDate.of(year, month, 1).lengthOfMonth();
    return String.format("a day from 01 to %d in %04d-%02d", length, year, month);
  }

  /** Seconds after midnight. */
  static OptionalInt clock(NodeReader at) {
    if (!at.isGiven()) {
      return OptionalInt.empty();
    }
    Optional<Scalar> scalar = at.scalar();
    Matcher parts = CLOCK.matcher(scalar.map(Scalar::text).orElse(""));
    if (!parts.matches()) {
      at.wrong(at.shown() + " is not a clock time", SOME_CLOCK);
      return OptionalInt.empty();
    }
    if (scalar.orElseThrow().plain()) {
      at.wrong(
          scalar.get().text() + " stands without quotes, which YAML may read as a number",
          SOME_CLOCK);
      return OptionalInt.empty();
    }
    return OptionalInt.of(
        parts.group(1) == null
            ? 86_400
            : 3600 * Integer.parseInt(parts.group(1)) + 60 * Integer.parseInt(parts.group(2)));
  }

  /** Days of the week; all where none are given. */
  static Set<DayOfWeek> weekdays(NodeReader at) {
    Set<DayOfWeek> found =
        words(at, DAYS, "a day", "day of the week", "days of the week, such as [Mon, Tue]");
    return found.isEmpty() ? EnumSet.allOf(DayOfWeek.class) : found;
  }

  /** Months of the year; all where none are given. */
  static Set<Month> months(NodeReader at) {
    Set<Month> found = words(at, MONTHS, "a month", "month of the year", "months of the year");
    return found.isEmpty() ? EnumSet.allOf(Month.class) : found;
  }

  /** A month that is a key. */
  static Optional<Month> month(NodeReader key, String word) {
    if (!MONTHS.containsKey(word)) {
      key.wrong(
          "\"" + word + "\" is no month of the year",
          Nearest.expected("a month", word, MONTHS.keySet()));
    }
    return Optional.ofNullable(MONTHS.get(word));
  }

  /** In the order of the calendar. */
  private static <T extends Enum<T>> Set<T> words(
      NodeReader at, Map<String, T> known, String kind, String named, String list) {
    Set<T> found = new TreeSet<>();
    for (NodeReader item : at.items(list)) {
      String word = Words.name(item, kind);
      if (!known.containsKey(word)) {
        item.wrong(item.shown() + " is no " + named, Nearest.expected(kind, word, known.keySet()));
      } else {
        found.add(known.get(word));
      }
    }
    return found;
  }
}
