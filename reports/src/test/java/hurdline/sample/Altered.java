package hurdline.sample;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/**
 * The same record with every number that is not a whole one changed, however deep it lies, so that
 * what is made of answers can be tried with numbers that no sample would think of. What says where
 * something stands, as an hour or a date on a time axis, is left.
 */
public final class Altered {
  /** Points in time, and values of a key as a user types them or between two of these. */
  private static final Set<String> LEFT = Set.of("Bar", "Value", "GridChange");

  private final DoubleUnaryOperator change;
  private final int rows;

  private Altered(DoubleUnaryOperator change, int rows) {
    this.change = change;
    this.rows = rows;
  }

  /**
   * @param change what becomes of each number; in the order in which they stand in the record
   */
  public static <R extends Record> R numbers(R record, DoubleUnaryOperator change) {
    return new Altered(change, Integer.MAX_VALUE).of(record);
  }

  /** With no more rows of any table than the first of each. */
  public static <R extends Record> R firstRows(R record) {
    return new Altered(value -> value, 1).of(record);
  }

  private <R extends Record> R of(R record) {
    return LEFT.contains(record.getClass().getSimpleName()) || isDay(record)
        ? record
        : Draft.from(record).change(this::value).made();
  }

  /** A row whose figures are days of the calendar; a date has bounds of its own. */
  private static boolean isDay(Object record) {
    return Arrays.stream(record.getClass().getRecordComponents())
            .anyMatch(part -> part.getName().equals("unit"))
        && record.toString().contains("unit=d,");
  }

  private Object value(String name, Object value) {
    return name.equals("hours") && value instanceof double[] ? value : value(value);
  }

  private Object value(Object value) {
    if (value instanceof Double number) {
      return change.applyAsDouble(number);
    }
    if (value instanceof double[] numbers) {
      return Arrays.stream(numbers).map(change).toArray();
    }
    if (value instanceof List<?> list) {
      return list(list);
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(this::value);
    }
    return value instanceof Record record ? of(record) : value;
  }

  private List<Object> list(List<?> list) {
    List<Object> all = new ArrayList<>();
    for (Object one : list) {
      boolean counted = one instanceof Record && one.getClass().getSimpleName().endsWith("Row");
      if (!counted || all.size() < rows) {
        all.add(value(one));
      }
    }
    return all;
  }
}
