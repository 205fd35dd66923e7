package hurdline.table;

import hurdline.answer.PaybackRow;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Columns of a table, each the part of its rows that has the same name in {@code record.json}; so
 * head and cell are one thing, and a table and the record call it alike. A part of a part counts
 * where no own one has the name.
 */
final class Columns {
  private final List<String> names;
  private final List<List<Method>> parts = new ArrayList<>();

  /**
   * @param names with commas between
   * @throws IllegalArgumentException if the rows have no such part
   */
  Columns(Class<? extends Record> row, String names) {
    this.names = List.of(names.split(","));
    for (String name : this.names) {
      parts.add(
          part(row, name)
              .orElseThrow(
                  () -> new IllegalArgumentException(row.getSimpleName() + " has no " + name)));
    }
  }

  List<String> names() {
    return names;
  }

  /** The way to the part of that name, from the row on. */
  private static Optional<List<Method>> part(Class<?> record, String name) {
    RecordComponent[] own = record.getRecordComponents();
    Optional<List<Method>> direct =
        Stream.of(own)
            .filter(part -> CsvNames.name(record, part.getName()).equals(name))
            .findFirst()
            .map(part -> List.of(part.getAccessor()));
    return direct.or(
        () ->
            Stream.of(own)
                .filter(part -> part.getType().isRecord())
                .flatMap(part -> within(part, name))
                .findFirst());
  }

  private static Stream<List<Method>> within(RecordComponent part, String name) {
    return part(part.getType(), name)
        .map(inner -> Stream.concat(Stream.of(part.getAccessor()), inner.stream()).toList())
        .stream();
  }

  Object[] cells(Record row) {
    Object[] cells = new Object[parts.size()];
    for (int at = 0; at < cells.length; at++) {
      cells[at] = cell(row, parts.get(at));
    }
    return cells;
  }

  private static Object cell(Object row, List<Method> way) {
    Object at = row;
    try {
      for (Method step : way) {
        at = step.invoke(at);
      }
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("a part of a row cannot be read", e);
    }
    return shown(at);
  }

  private static Object shown(Object value) {
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof PaybackRow.Quantity quantity) {
      return quantity.word();
    }
    return value instanceof Enum<?> choice ? choice.name().toLowerCase(Locale.ROOT) : value;
  }
}
