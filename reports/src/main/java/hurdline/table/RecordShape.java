package hurdline.table;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import hurdline.answer.Fact;
import hurdline.answer.Trace;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Whether JSON has all that a record has, so that nothing that is missing becomes a 0. */
final class RecordShape {
  private RecordShape() {}

  /** The first thing that is not as it should be, with its place; empty if all is there. */
  static Optional<String> problem(JsonElement found, Type type, String path) {
    if (type instanceof ParameterizedType many) {
      return many.getRawType() == Map.class ? inMap(found, many, path) : inList(found, many, path);
    }
    Class<?> expected = (Class<?>) type;
    if (expected == Fact.class) {
      return fact(found, path);
    }
    if (expected.isRecord()) {
      return found.isJsonObject()
          ? inRecord(found.getAsJsonObject(), expected, path)
          : Optional.of(path + " is no object");
    }
    if (expected.isArray()) {
      return found.isJsonArray() ? Optional.empty() : Optional.of(path + " is no list");
    }
    return isPlain(found, expected)
        ? Optional.empty()
        : Optional.of(path + " is no " + word(expected));
  }

  private static Optional<String> inMap(JsonElement found, ParameterizedType map, String path) {
    return found.isJsonObject()
        ? found.getAsJsonObject().entrySet().stream()
            .flatMap(
                of ->
                    problem(
                        of.getValue(), map.getActualTypeArguments()[1], path + "." + of.getKey())
                        .stream())
            .findFirst()
        : Optional.of(path + " is no object");
  }

  private static Optional<String> inList(JsonElement found, ParameterizedType list, String path) {
    if (!found.isJsonArray()) {
      return Optional.of(path + " is no list");
    }
    Type of = list.getActualTypeArguments()[0];
    return IntStream.range(0, found.getAsJsonArray().size())
        .mapToObj(at -> problem(found.getAsJsonArray().get(at), of, path + "[" + at + "]"))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<String> fact(JsonElement found, String path) {
    if (!found.isJsonObject() || !found.getAsJsonObject().has("fact")) {
      return Optional.of(path + ".fact is missing");
    }
    String word = found.getAsJsonObject().get("fact").getAsString();
    return Fact.kinds().stream()
        .filter(kind -> Fact.word(kind).equals(word))
        .findFirst()
        .map(kind -> inRecord(found.getAsJsonObject(), kind, path))
        .orElse(Optional.of(path + ".fact \"" + word + "\" is not known"));
  }

  private static Optional<String> inRecord(JsonObject found, Class<?> record, String path) {
    return Stream.of(record.getRecordComponents())
        .filter(part -> !Json.isLeftOut(record, part.getName(), part.getType()))
        .flatMap(part -> inPart(found, record, part, path).stream())
        .findFirst();
  }

  private static Optional<String> inPart(
      JsonObject found, Class<?> record, RecordComponent part, String path) {
    String name = CsvNames.name(record, part.getName());
    JsonElement value = found.get(name);
    String there = path + "." + name;
    if (value == null) {
      return Optional.of(there + " is missing");
    }
    boolean mayBeNothing = record == Trace.class && part.getName().equals("day");
    return value.isJsonNull() && mayBeNothing
        ? Optional.empty()
        : problem(value, part.getGenericType(), there);
  }

  private static boolean isPlain(JsonElement found, Class<?> expected) {
    if (found.isJsonNull()) {
      return expected == double.class || expected == Double.class;
    }
    if (!found.isJsonPrimitive()) {
      return false;
    }
    var value = found.getAsJsonPrimitive();
    return expected == boolean.class
        ? value.isBoolean()
        : isNumber(expected) ? value.isNumber() : value.isString();
  }

  private static boolean isNumber(Class<?> type) {
    return List.of(double.class, Double.class, int.class, Integer.class, long.class).contains(type);
  }

  private static String word(Class<?> expected) {
    return expected == boolean.class ? "true or false" : isNumber(expected) ? "number" : "text";
  }
}
