package hurdline.audit;

import hurdline.sample.PlainYaml;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a plant file says, read as plain text by paths such as {@code machines.mill.power}: the
 * prices and rates by which an answer is recomputed. Amounts come in tonnes, hours, kilowatts,
 * square metres and the file's currency.
 */
final class PlantFacts {
  private static final Pattern SCALED = Pattern.compile("(money[.a-z_]*)=x([0-9.]+)");

  private final Map<?, ?> file;

  private PlantFacts(Map<?, ?> file) {
    this.file = file;
  }

  static PlantFacts read(Path path) throws IOException {
    return new PlantFacts(PlainYaml.of(Files.readString(path)));
  }

  /**
   * The plant with options or with a plan of its file, {@code base}, {@code A} or {@code A+B}, or
   * with scaled prices, {@code money.wage=x1.2}.
   */
  PlantFacts with(String names) {
    Map<?, ?> changed = file;
    if (names.contains("=")) {
      for (String change : names.split("; ")) {
        Matcher scaled = SCALED.matcher(change);
        changed =
            scaled.matches()
                ? scaled(
                    changed, scaled.group(1).split("\\."), 0, Double.parseDouble(scaled.group(2)))
                : changed;
      }
      return new PlantFacts(changed);
    }
    for (String name : names.split("\\+")) {
      for (String kind : List.of("options", "plans")) {
        if (at(kind + "." + name + ".with").orElse(null) instanceof Map<?, ?> patch) {
          changed = merged(changed, patch);
        }
      }
    }
    return new PlantFacts(changed);
  }

  private static Map<?, ?> scaled(Map<?, ?> map, String[] path, int depth, double factor) {
    Map<Object, Object> result = new LinkedHashMap<>(map);
    Object old = map.get(path[depth]);
    if (old instanceof Map<?, ?> inner) {
      result.put(path[depth], scaled(inner, path, depth + 1, factor));
    } else {
      String[] amount = old.toString().split(" ", 2);
      result.put(path[depth], Double.parseDouble(amount[0]) * factor + " " + amount[1]);
    }
    return result;
  }

  /** A merge patch (RFC 7396). */
  private static Map<?, ?> merged(Map<?, ?> base, Map<?, ?> patch) {
    Map<Object, Object> result = new LinkedHashMap<>(base);
    patch.forEach(
        (key, value) -> {
          if (value == null) {
            result.remove(key);
          } else if (value instanceof Map<?, ?> inner) {
            result.put(
                key, merged(result.get(key) instanceof Map<?, ?> old ? old : Map.of(), inner));
          } else {
            result.put(key, value);
          }
        });
    return result;
  }

  /** What stands at a path, if anything does. */
  Optional<Object> at(String path) {
    Object found = file;
    for (String key : path.split("\\.")) {
      if (!(found instanceof Map<?, ?> map) || !map.containsKey(key)) {
        return Optional.empty();
      }
      found = map.get(key);
    }
    return Optional.ofNullable(found);
  }

  boolean has(String path) {
    return at(path).isPresent();
  }

  Optional<String> text(String path) {
    return at(path).filter(String.class::isInstance).map(String.class::cast);
  }

  /** The keys of a map, none where there is no map. */
  List<String> names(String path) {
    List<String> names = new ArrayList<>();
    if (at(path).orElse(null) instanceof Map<?, ?> map) {
      map.keySet().forEach(key -> names.add(key.toString()));
    }
    return names;
  }

  /** The maps of a list, each as facts of its own. */
  List<PlantFacts> list(String path) {
    List<PlantFacts> entries = new ArrayList<>();
    if (at(path).orElse(null) instanceof List<?> list) {
      list.forEach(entry -> entries.add(new PlantFacts((Map<?, ?>) entry)));
    }
    return entries;
  }

  /** The texts of a list. */
  List<String> texts(String path) {
    List<String> texts = new ArrayList<>();
    if (at(path).orElse(null) instanceof List<?> list) {
      list.forEach(entry -> texts.add(entry.toString()));
    }
    return texts;
  }

  /** The pairs of a list, an amount and a bare factor each. */
  List<double[]> pairs(String path) {
    List<double[]> pairs = new ArrayList<>();
    if (at(path).orElse(null) instanceof List<?> list) {
      for (Object pair : list) {
        List<?> two = (List<?>) pair;
        pairs.add(
            new double[] {
              Amount.of(two.get(0).toString()), Double.parseDouble(two.get(1).toString())
            });
      }
    }
    return pairs;
  }

  /** Calendar months that the calendar touches. */
  int months() {
    LocalDate first = firstDay().withDayOfMonth(1);
    return (int) ChronoUnit.MONTHS.between(first, date("calendar.to")) + 1;
  }

  /** Years from the first day on, the last one begun. */
  int years() {
    return (int) ChronoUnit.YEARS.between(firstDay(), date("calendar.to")) + 1;
  }

  /** An amount in tonnes, hours, kilowatts or square metres; 0 where the file says nothing. */
  double amount(String path) {
    return text(path).map(Amount::of).orElse(0.0);
  }

  /** The mean of an amount that may vary: a quantity, or the mean of the one distribution named. */
  double mean(String path) {
    return text(path)
        .map(Amount::of)
        .orElseGet(() -> amount(path + "." + names(path).get(0) + ".mean"));
  }

  LocalDate date(String path) {
    return LocalDate.parse(
        text(path).orElseThrow(() -> new IllegalArgumentException("no date at " + path)));
  }

  LocalDate firstDay() {
    return date("calendar.from");
  }

  /** Hours from the first day's 00:00 to the last day's 24:00. */
  double horizonH() {
    return 24.0 * (ChronoUnit.DAYS.between(firstDay(), date("calendar.to")) + 1);
  }
}
