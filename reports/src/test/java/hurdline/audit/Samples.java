package hurdline.audit;

import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The lowest level of an answer: each measure of each replication of one plant, as measures.csv has
 * it.
 */
final class Samples {
  private final Map<String, double[]> series = new LinkedHashMap<>();
  private final Map<String, String> units = new LinkedHashMap<>();
  private final Map<Measure, List<MeasureName>> matches = new EnumMap<>(Measure.class);
  private final int replications;

  /**
   * @param option whose rows, as the first column names it
   */
  Samples(Table measures, String option) {
    List<Table.Row> rows = measures.rows(Columns.OPTION, option).toList();
    replications =
        rows.stream().mapToInt(row -> (int) row.number(Columns.REPLICATION)).max().orElse(0);
    for (Table.Row row : rows) {
      units.put(row.text(Columns.MEASURE), row.text(Columns.UNIT));
      series
              .computeIfAbsent(row.text(Columns.MEASURE), name -> empty())[
              (int) row.number(Columns.REPLICATION) - 1] =
          row.number(Columns.VALUE);
    }
    for (String name : series.keySet()) {
      Measure.find(name)
          .filter(match -> !match.dry())
          .ifPresent(
              match ->
                  matches.computeIfAbsent(match.measure(), of -> new ArrayList<>()).add(match));
    }
  }

  private double[] empty() {
    double[] values = new double[replications];
    Arrays.fill(values, Double.NaN);
    return values;
  }

  /** The plants of an answer in their order. */
  static List<String> options(Table measures) {
    Set<String> options = new LinkedHashSet<>();
    measures.rows().forEach(row -> options.add(row.text(Columns.OPTION)));
    return List.copyOf(options);
  }

  int replications() {
    return replications;
  }

  Set<String> measures() {
    return series.keySet();
  }

  String unit(String measure) {
    return units.get(measure);
  }

  boolean has(String measure) {
    return series.containsKey(measure);
  }

  double[] all(String measure) {
    double[] values = series.get(measure);
    if (values == null) {
      throw new IllegalArgumentException("measures.csv has no " + measure);
    }
    return values;
  }

  double[] all(Measure measure, String... names) {
    return all(measure.of(names));
  }

  Statistic statistic(String measure) {
    return Statistic.of(all(measure));
  }

  /** The value in a replication, counted from 0; 0 where the plant has no such measure. */
  double at(int replication, Measure measure, String... names) {
    return at(replication, measure.of(names));
  }

  double at(int replication, String measure) {
    double[] values = series.get(measure);
    return values == null ? 0 : values[replication];
  }

  /** The names that stand in a measure's first place, such as all machines. */
  List<String> names(Measure measure) {
    return matches(measure).stream().map(match -> match.names().get(0)).distinct().toList();
  }

  /** All filled names of a measure, its dry twins left out. */
  List<MeasureName> matches(Measure measure) {
    return matches.getOrDefault(measure, List.of());
  }

  /** The sum over all filled names of a measure, or of their dry twins. */
  double sum(int replication, Measure measure, boolean dry) {
    double sum = 0;
    for (MeasureName match : matches(measure)) {
      String[] names = match.names().toArray(String[]::new);
      sum += at(replication, dry ? measure.dryOf(names) : measure.of(names));
    }
    return sum;
  }

  IntStream each() {
    return IntStream.range(0, replications);
  }
}
