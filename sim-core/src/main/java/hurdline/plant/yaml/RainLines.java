package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.MessageText;
import hurdline.problem.LocatedProblem;
import hurdline.unit.Amount;
import hurdline.unit.Counted;
import java.time.LocalDate;
import java.time.Year;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the lines of one rain file: each day of each year once, in order. */
final class RainLines {
  private static final String HEAD = "date,rain_mm";
  private static final String HEAD_INCHES = "date,rain_in";
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final Pattern MONTH_FIRST =
      Pattern.compile("([0-9]{1,2})/([0-9]{1,2})/([0-9]{4})");
  private static final double MM_PER_INCH = 25.4;
  private static final String DATE_DUE =
      "a date of the calendar, such as 2019-04-30, before the comma";
  private static final String RAIN_DUE =
      "millimetres of rain as a bare number from 0 on, such as 3.2, after the comma";
  private static final String WHOLE_YEARS =
      "whole calendar years, each day from 1 January to 31 December once and in order";

  /**
   * Above the most ever measured in a day, 1,825 mm (World Meteorological Organization, La Réunion,
   * 1966).
   */
  private static final double MOST_MM = 2_000;

  private static final int MOST_TOLD = 50;

  /** Days without a measurement that a year may have; chosen, no source. */
  private static final int MOST_MISSING = 10;

  private final String name;
  private final List<LocatedProblem> problems = new ArrayList<>();
  private final TreeMap<LocalDate, Double> mmByDay = new TreeMap<>();
  private final List<String> leftOut = new ArrayList<>();
  private boolean swapped;
  private boolean inches;
  private LocalDate startsLate; // first day, where it is not the first of its year
  private int startsLateLine;
  private int line;
  private int dayLine; // of the last day taken
  private LocalDate last; // day taken; null before the first
  private boolean guessed; // whether the last day stands for a line that could not be read

  RainLines(String name) {
    this.name = name;
  }

  RainFile read(String text) {
    for (String row : text.split("\r?\n|\r", -1)) {
      line++;
      if (line == 1) {
        head(row.strip());
      } else if (!row.isBlank()) {
        row(row.strip());
      }
    }
    if (last == null && problems.isEmpty()) {
      wrong(1, "no day follows the head", WHOLE_YEARS);
    } else if (last != null) {
      leaveOutStarted();
      leaveOutUnmeasured();
    }
    return new RainFile(mmByDay, told(), List.copyOf(leftOut));
  }

  /** The first year that begins late and the last that ends early, if any other is whole. */
  private void leaveOutStarted() {
    boolean endsEarly = last.isBefore(LocalDate.of(last.getYear(), 12, 31));
    Set<Integer> started = new TreeSet<>();
    if (startsLate != null) {
      started.add(startsLate.getYear());
    }
    if (endsEarly) {
      started.add(last.getYear());
    }
    if (started.size() == years().size()) {
      if (startsLate != null) {
        missingBefore(startsLateLine, startsLate);
      }
      ends(dayLine);
      return;
    }
    if (startsLate != null) {
      leaveOut(startsLate.getYear(), "begins on " + startsLate);
    }
    if (endsEarly) {
      leaveOut(last.getYear(), "ends on " + last);
    }
  }

  private void leaveOutUnmeasured() {
    Map<Integer, Integer> unmeasured = new TreeMap<>();
    mmByDay.forEach(
        (date, mm) -> unmeasured.merge(date.getYear(), mm.isNaN() ? 1 : 0, Integer::sum));
    unmeasured.values().removeIf(days -> days <= MOST_MISSING);
    if (unmeasured.size() == years().size()) {
      wrong(
          dayLine,
          "no year is measured on all but " + MOST_MISSING + " days",
          "a year with fewer days marked M");
      return;
    }
    unmeasured.forEach(
        (year, days) ->
            leaveOut(year, "has " + Counted.of(days, "day") + " without a measurement"));
  }

  private Set<Integer> years() {
    Set<Integer> years = new TreeSet<>();
    mmByDay.keySet().forEach(date -> years.add(date.getYear()));
    return years;
  }

  private void leaveOut(int year, String why) {
    leftOut.add(year + " " + why + " and is left out");
    mmByDay.keySet().removeIf(date -> date.getYear() == year);
  }

  private void head(String head) {
    swapped = head.equals("rain_mm,date") || head.equals("rain_in,date");
    inches = head.contains("rain_in");
    if (swapped) {
      wrong(line, "the columns are swapped", "\"" + HEAD + "\", the date first");
    } else if (!head.equals(HEAD) && !head.equals(HEAD_INCHES)) {
      wrong(
          line,
          MessageText.quoted(head) + " is not the head of a rain file",
          "\"" + HEAD + "\", or \"" + HEAD_INCHES + "\" for inches");
    }
  }

  private void row(String row) {
    String[] cells = row.split(",", -1);
    if (cells.length != 2) {
      wrong(
          line,
          MessageText.quoted(row) + " is not two columns",
          "a date, a comma and millimetres of rain");
      skip();
      return;
    }
    String date = yearFirst(cells[swapped ? 1 : 0].strip());
    String rain = cells[swapped ? 0 : 1].strip();
    if (isNumber(date) && DATE.matcher(rain).matches()) {
      wrong(line, "the columns are swapped", DATE_DUE);
      skip();
      return;
    }
    OptionalDouble mm = rain(rain);
    if (isDay(date)) {
      day(LocalDate.parse(date), mm.orElse(0));
    }
  }

  /** A date as stations in the US write it, 4/30/2019, in the way of all other files. */
  private static String yearFirst(String cell) {
    Matcher parts = MONTH_FIRST.matcher(cell);
    return parts.matches()
        ? String.format(
            "%s-%02d-%02d",
            parts.group(3), Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)))
        : cell;
  }

  /** {@code T} is a trace, which wets no gauge, {@code M} no measurement. */
  private OptionalDouble rain(String cell) {
    if (cell.equals("M")) {
      return OptionalDouble.of(Double.NaN);
    }
    if (cell.equals("T")) {
      return OptionalDouble.of(0);
    }
    if (!isNumber(cell)) {
      wrong(line, MessageText.quoted(cell) + " is no amount of rain", RAIN_DUE);
      return OptionalDouble.empty();
    }
    double mm = Amount.read(cell).value() * (inches ? MM_PER_INCH : 1);
    if (mm < 0) {
      wrong(line, "the rain is negative: " + cell, RAIN_DUE);
      return OptionalDouble.empty();
    }
    if (!(mm <= MOST_MM)) {
      wrong(line, cell + " mm is more rain than ever fell in a day", RAIN_DUE);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(mm);
  }

  private static boolean isNumber(String cell) {
    return Amount.find(cell).filter(Amount::isBare).isPresent();
  }

  private boolean isDay(String cell) {
    if (DATE.matcher(cell).matches()) {
      if (cell.endsWith("-02-29") && !Year.isLeap(Integer.parseInt(cell.substring(0, 4)))) {
        String year = cell.substring(0, 4);
        wrong(line, year + " has no 29 February", "365 days in " + year + ", without this line");
        return false;
      }
      try {
        LocalDate.parse(cell);
        return true;
      } catch (DateTimeParseException e) {
        // told below
      }
    }
    wrong(line, MessageText.quoted(cell) + " is not a date", DATE_DUE);
    skip();
    return false;
  }

  /** A line that cannot be read stands for the day that is due, so that no gap is told besides. */
  private void skip() {
    if (last != null) {
      last = last.plusDays(1);
      mmByDay.put(last, 0.0);
      dayLine = line;
      guessed = true;
    }
  }

  private void day(LocalDate date, double mm) {
    if (mmByDay.containsKey(date) && !(guessed && date.equals(last))) {
      wrong(line, date + " stands here twice", WHOLE_YEARS);
      return;
    }
    if (last != null && date.isBefore(last)) {
      wrong(line, date + " comes after " + last, WHOLE_YEARS);
      return;
    }
    if (!date.equals(last)) {
      follows(date);
    }
    mmByDay.put(date, mm);
    guessed = false;
    last = date;
    dayLine = line;
  }

  private void follows(LocalDate date) {
    if (last != null && date.getYear() == last.getYear()) {
      LocalDate due = last.plusDays(1);
      if (date.isAfter(due)) {
        wrong(line, missing(due, date.minusDays(1)) + " missing before " + date, WHOLE_YEARS);
      }
      return;
    }
    if (last != null) {
      ends(line);
    }
    if (date.getDayOfYear() != 1 && mayBegin()) {
      if (last == null) {
        startsLate = date;
        startsLateLine = line;
      } else {
        missingBefore(line, date);
      }
    }
  }

  private void missingBefore(int at, LocalDate date) {
    LocalDate first = date.withDayOfYear(1);
    wrong(at, missing(first, date.minusDays(1)) + " missing before " + date, WHOLE_YEARS);
  }

  /** Whether the lines before could all be read; else the first day may well stand among them. */
  private boolean mayBegin() {
    return last != null || problems.size() <= (swapped ? 1 : 0) || line == 2;
  }

  /** Tells what the year of the last day lacks at its end. */
  private void ends(int at) {
    LocalDate end = LocalDate.of(last.getYear(), 12, 31);
    if (last.isBefore(end)) {
      wrong(at, missing(last.plusDays(1), end) + " missing after " + last, WHOLE_YEARS);
    }
  }

  private static String missing(LocalDate from, LocalDate to) {
    return from.equals(to) ? from + " is" : from + " to " + to + " are";
  }

  private void wrong(int at, String said, String expected) {
    problems.add(LocatedProblem.at(name, at, said, expected, ""));
  }

  private List<LocatedProblem> told() {
    if (problems.size() <= MOST_TOLD) {
      return List.copyOf(problems);
    }
    List<LocatedProblem> told = new ArrayList<>(problems.subList(0, MOST_TOLD));
    int more = problems.size() - MOST_TOLD;
    told.add(
        LocatedProblem.of(
            name,
            more + (more == 1 ? " more problem is" : " more problems are") + " not shown",
            RainFile.WANTED,
            ""));
    return told;
  }
}
