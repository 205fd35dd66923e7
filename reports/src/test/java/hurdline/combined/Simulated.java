package hurdline.combined;

import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.PlainTwin;
import hurdline.simulation.results.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;

/** One replication of a plant: every figure by name, those of weeks, months and years too. */
final class Simulated {
  private final Map<String, Double> figures = new LinkedHashMap<>();
  private final Map<String, Measure> measures = new LinkedHashMap<>();

  private Simulated(Outcome outcome) {
    put("", outcome.columns(), outcome.values());
    put("", outcome.shared().columns(), outcome.shared().values());
    put("week", outcome.weekColumns(), outcome.weeks());
    put("month", outcome.monthColumns(), outcome.months());
    put("year", outcome.years().columns(), outcome.years().values());
  }

  static Simulated of(Plant plant) {
    return new Simulated(CompiledPlant.of(plant).replication().run(new RandomStreams(5), 2, null));
  }

  /** By someone who follows the trace. */
  static Simulated traced(Plant plant) {
    return new Simulated(
        CompiledPlant.of(plant)
            .replication()
            .run(new RandomStreams(5), 2, (clockS, where, what, amount) -> {}));
  }

  /** The second time by the same objects. */
  static Simulated again(Plant plant) {
    var replication = CompiledPlant.of(plant).replication();
    replication.run(new RandomStreams(5), 1, null);
    return new Simulated(replication.run(new RandomStreams(5), 2, null));
  }

  static Simulated plainly(Plant plant) {
    return new Simulated(PlainTwin.outcome(CompiledPlant.of(plant), 5, 2));
  }

  private void put(String period, List<Outcome.Column> columns, double[][] values) {
    for (int at = 0; at < values.length; at++) {
      put(period + " " + (at + 1) + " ", columns, values[at]);
    }
  }

  private void put(String before, List<Outcome.Column> columns, double[] values) {
    for (int at = 0; at < values.length; at++) {
      figures.put(before + columns.get(at).name(), values[at]);
      measures.put(before + columns.get(at).name(), columns.get(at).measure());
    }
  }

  Map<String, Double> figures() {
    return figures;
  }

  Measure measure(String name) {
    return measures.get(name);
  }

  double at(Measure measure, String... names) {
    return figures.getOrDefault(measure.of(names), 0.0);
  }

  boolean has(Measure measure, String... names) {
    return figures.containsKey(measure.of(names));
  }

  /** Sum over all names that fill a measure and fit. */
  double sum(Measure measure, boolean dry, Predicate<List<String>> wanted) {
    double sum = 0;
    for (MeasureName match : matches(measure, dry)) {
      if (wanted.test(match.names())) {
        String[] names = match.names().toArray(String[]::new);
        sum += figures.get(dry ? measure.dryOf(names) : measure.of(names));
      }
    }
    return sum;
  }

  List<MeasureName> matches(Measure measure, boolean dry) {
    List<MeasureName> found = new ArrayList<>();
    measures.forEach(
        (name, of) -> {
          if (of == measure && !name.contains(" ")) {
            Measure.find(name).filter(match -> match.dry() == dry).ifPresent(found::add);
          }
        });
    return found;
  }

  /**
   * Figures that another has otherwise than by a rule.
   *
   * @param rule what becomes of a figure of this measure; null where nothing is said of it
   * @param grain what may differ, of 1 or of the figure
   */
  List<String> unlike(Simulated other, Function<String, DoubleUnaryOperator> rule, double grain) {
    List<String> unlike = new ArrayList<>();
    figures.forEach(
        (name, value) -> {
          DoubleUnaryOperator is = rule.apply(name);
          if (is == null) {
            return;
          }
          Double got = other.figures.get(name);
          double due = is.applyAsDouble(value);
          boolean same =
              got != null
                  && (Double.compare(due, got) == 0
                      || due == got
                      || Math.abs(due - got) <= grain * Math.max(1, Math.abs(due)));
          if (!same) {
            unlike.add(name + ": " + due + " and " + got);
          }
        });
    return unlike;
  }
}
