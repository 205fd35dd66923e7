package hurdline.command;

import hurdline.answer.GridKey;
import hurdline.unit.Amount;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import hurdline.unit.Level;
import hurdline.unit.Quantity;
import hurdline.unit.QuantityException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Reads {@code KEY=FROM..TO..STEP}: amounts with a unit or bare, factors such as {@code x0.8},
 * dates, or moves of a date.
 */
final class VaryReader {
  /** More cells than this no picture shows and few have the time for. */
  static final int MOST_CELLS = 400;

  /** More than two centuries; a calendar has less. */
  private static final int MOST_DAYS = 100_000;

  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private final String text;
  private final String key;
  private final String range;
  private final String[] parts;

  private VaryReader(String text, String key, String range, String[] parts) {
    this.text = text;
    this.key = key;
    this.range = range;
    this.parts = parts;
  }

  static GridKey of(String text) {
    int equals = text.indexOf('=');
    String key = equals < 0 ? "" : text.substring(0, equals).strip();
    String range = text.substring(equals + 1).strip();
    String[] parts = range.split("\\.\\.", -1);
    for (int part = 0; part < parts.length; part++) {
      parts[part] = parts[part].strip();
    }
    if (key.isEmpty() || parts.length != 3 || range.contains("...")) {
      throw wrong(
          text,
          "is no range of values",
          "KEY=FROM..TO..STEP such as machines.mill.power=\"20 hp..80 hp..10 hp\" or"
              + " deliveries.stalk.fields.*.area=x0.8..x1.4..x0.1");
    }
    VaryReader reader = new VaryReader(text, key, range, parts);
    if (Amount.daysMoved(parts[0]).isPresent()) {
      return reader.moves();
    }
    return DATE.matcher(parts[0]).matches() ? reader.dates() : reader.amounts();
  }

  private GridKey dates() {
    try {
      LocalDate from = LocalDate.parse(parts[0]);
      LocalDate to = LocalDate.parse(parts[1]);
      long days = days(parts[2]);
      int count =
          count(
              BigDecimal.valueOf(to.toEpochDay() - from.toEpochDay()),
              BigDecimal.valueOf(days),
              gone -> from.plusDays(gone.longValue()).toString(),
              days + " d");
      List<GridKey.Value> values = new ArrayList<>();
      for (int at = 0; at < count; at++) {
        LocalDate date = from.plusDays(at * days);
        values.add(new GridKey.Value(date.toString(), date.toEpochDay()));
      }
      return new GridKey(key, range, GridKey.Scale.DATE, "", values);
    } catch (DateTimeParseException none) {
      throw wrong("has a date that there is not", "dates such as 2027-06-01..2027-07-06..7d");
    }
  }

  private GridKey moves() {
    int from = Amount.daysMoved(parts[0]).orElseThrow();
    int to =
        Amount.daysMoved(parts[1])
            .orElseThrow(
                () ->
                    wrong(
                        "has a sign before some of its days only",
                        "signs before FROM and TO, such as -14d..+14d..7d"));
    long days = days(parts[2]);
    int count =
        count(
            BigDecimal.valueOf(to - from),
            BigDecimal.valueOf(days),
            gone -> move(from + gone.longValue()),
            days + " d");
    List<GridKey.Value> values = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      values.add(new GridKey.Value(move(from + at * days), from + at * days));
    }
    return new GridKey(key, range, GridKey.Scale.AMOUNT, FileUnit.DAY.symbol(), values);
  }

  private static String move(long days) {
    return (days < 0 ? "" : "+") + days + " " + FileUnit.DAY.symbol();
  }

  private long days(String step) {
    try {
      double days = FileUnit.DAY.fromSi(Quantity.read(step, Dimension.TIME).si());
      if (days == Math.rint(days) && Math.abs(days) <= MOST_DAYS) {
        return (long) days;
      }
    } catch (QuantityException e) {
      // Falls through to the message that covers every way of being wrong.
    }
    throw wrong("has no step in whole days or weeks", "one such as 7d or 1wk");
  }

  private GridKey amounts() {
    Level from = level(parts[0]);
    Level to = level(parts[1]);
    Level step = level(parts[2]);
    if (from.isFactor() != to.isFactor() || to.isFactor() != step.isFactor()) {
      throw wrong("has an x before some of its numbers only", "x before all three or before none");
    }
    if (!from.unit().equals(to.unit()) || !to.unit().equals(step.unit())) {
      throw wrong("has different units", "one unit in all three, such as 2d..10d..1d");
    }
    int count =
        count(
            to.number().subtract(from.number()),
            step.number(),
            gone -> from.with(from.number().add(gone)).text(),
            step.text());
    List<GridKey.Value> values = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      Level value = from.with(from.number().add(step.number().multiply(BigDecimal.valueOf(at))));
      values.add(new GridKey.Value(value.text(), value.number().doubleValue()));
    }
    return new GridKey(
        key,
        range,
        from.isFactor() ? GridKey.Scale.FACTOR : GridKey.Scale.AMOUNT,
        from.amount().unit(),
        values);
  }

  private Level level(String part) {
    try {
      return Level.read(part);
    } catch (QuantityException e) {
      throw new CallException(
          "--vary \""
              + text
              + "\": "
              + e.getMessage()
              + "; expected numbers with a unit (20 hp), bare (3), as factors (x0.8), or dates");
    }
  }

  private interface Reached {
    String text(BigDecimal gone);
  }

  /** How many values there are from the first to the last. */
  private int count(BigDecimal way, BigDecimal step, Reached reached, String said) {
    if (step.signum() <= 0) {
      throw wrong("has a step that never gets on", "a step above 0");
    }
    if (way.signum() <= 0) {
      throw wrong(
          way.signum() == 0 ? "has one value only" : "runs backwards",
          "FROM below TO; a single value is set with --set");
    }
    BigDecimal[] steps = way.divideAndRemainder(step);
    if (steps[0].compareTo(BigDecimal.valueOf(MOST_CELLS)) >= 0) {
      throw wrong(
          "has more than " + MOST_CELLS + " values", "at most " + MOST_CELLS + " cells in all");
    }
    if (steps[1].signum() != 0) {
      BigDecimal short0 = steps[0].multiply(step);
      throw wrong(
          "does not come out: steps of "
              + said
              + " reach "
              + reached.text(short0)
              + " and then "
              + reached.text(short0.add(step)),
          "a TO that the steps reach");
    }
    return steps[0].intValueExact() + 1;
  }

  private CallException wrong(String said, String expected) {
    return wrong(text, said, expected);
  }

  private static CallException wrong(String text, String said, String expected) {
    return new CallException("--vary \"" + text + "\" " + said + "; expected " + expected);
  }
}
