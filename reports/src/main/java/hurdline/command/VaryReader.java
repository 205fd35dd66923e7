package hurdline.command;

import hurdline.answer.GridKey;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code KEY=FROM..TO..STEP}: amounts with a unit or bare, factors such as {@code x0.8}, or dates. */
final class VaryReader {
  /** More cells than this no picture shows and few have the time for. */
  static final int MOST_CELLS = 400;

  private static final Pattern AMOUNT =
      Pattern.compile(
          "(x?)\\s*([-+]?(?:[0-9]{1,12}(?:\\.[0-9]{0,12})?|\\.[0-9]{1,12}))\\s*([A-Za-z%][^.]*)?");
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final Pattern DAYS = Pattern.compile("([0-9]{1,5})\\s*(d|wk)");

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

  /** One number of the three, taken apart. */
  private record Amount(boolean factor, BigDecimal number, String unit) {
    String text(BigDecimal value) {
      BigDecimal plain = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
      return (factor ? "x" : "") + plain.toPlainString() + (unit.isEmpty() ? "" : " " + unit);
    }
  }

  static GridKey of(String text) {
    int equals = text.indexOf('=');
    String key = equals < 0 ? "" : text.substring(0, equals).strip();
    String range = text.substring(equals + 1).strip();
    String[] parts = range.split("\\.\\.", -1);
    for (int part = 0; part < parts.length; part++) {
      parts[part] = parts[part].strip();
    }
    if (key.isEmpty() || parts.length != 3) {
      throw wrong(
          text,
          "is no range of values",
          "KEY=FROM..TO..STEP such as machines.mill.power=\"20 hp..80 hp..10 hp\" or"
              + " deliveries.stalk.fields.*.area=x0.8..x1.4..x0.1");
    }
    VaryReader reader = new VaryReader(text, key, range, parts);
    return DATE.matcher(parts[0]).matches() ? reader.dates() : reader.amounts();
  }

  private GridKey dates() {
    try {
      LocalDate from = LocalDate.parse(parts[0]);
      LocalDate to = LocalDate.parse(parts[1]);
      Matcher step = DAYS.matcher(parts[2]);
      if (!step.matches()) {
        throw wrong("has no step in whole days or weeks", "one such as 7d or 1wk");
      }
      int days = Integer.parseInt(step.group(1)) * (step.group(2).equals("wk") ? 7 : 1);
      Amount whole = new Amount(false, BigDecimal.ZERO, "d");
      int count =
          count(
              BigDecimal.valueOf(to.toEpochDay() - from.toEpochDay()),
              BigDecimal.valueOf(days),
              gone -> from.plusDays(gone.longValue()).toString(),
              whole);
      List<GridKey.Value> values = new ArrayList<>();
      for (int at = 0; at < count; at++) {
        LocalDate date = from.plusDays((long) at * days);
        values.add(new GridKey.Value(date.toString(), date.toEpochDay()));
      }
      return new GridKey(key, range, GridKey.Scale.DATE, "", values);
    } catch (DateTimeParseException none) {
      throw wrong("has a date that there is not", "dates such as 2027-06-01..2027-07-06..7d");
    }
  }

  private GridKey amounts() {
    Amount from = amount(parts[0]);
    Amount to = amount(parts[1]);
    Amount step = amount(parts[2]);
    if (from.factor() != to.factor() || to.factor() != step.factor()) {
      throw wrong("has an x before some of its numbers only", "x before all three or before none");
    }
    if (!from.unit().equals(to.unit()) || !to.unit().equals(step.unit())) {
      throw wrong("has different units", "one unit in all three, such as 2d..10d..1d");
    }
    int count =
        count(
            to.number().subtract(from.number()),
            step.number(),
            gone -> from.text(from.number().add(gone)),
            step);
    List<GridKey.Value> values = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      BigDecimal value = from.number().add(step.number().multiply(BigDecimal.valueOf(at)));
      values.add(new GridKey.Value(from.text(value), value.doubleValue()));
    }
    return new GridKey(
        key,
        range,
        from.factor() ? GridKey.Scale.FACTOR : GridKey.Scale.AMOUNT,
        from.unit(),
        values);
  }

  private Amount amount(String part) {
    Matcher found = AMOUNT.matcher(part);
    if (!found.matches()) {
      throw wrong(
          "has \"" + part + "\" where a number is due",
          "numbers with a unit (20 hp), bare (3), as factors (x0.8), or dates");
    }
    String unit = found.group(3) == null ? "" : found.group(3).strip();
    boolean factor = !found.group(1).isEmpty();
    if (factor && !unit.isEmpty()) {
      throw wrong("has a unit behind a factor", "a bare factor such as x0.8");
    }
    return new Amount(factor, new BigDecimal(found.group(2)), unit);
  }

  private interface Reached {
    String text(BigDecimal gone);
  }

  /** How many values there are from the first to the last. */
  private int count(BigDecimal way, BigDecimal step, Reached reached, Amount said) {
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
              + said.text(step)
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
