package hurdline.simulation.results;

import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Measures of weeks or months, each with what it comes to in a period, so that no value stands
 * under another's name.
 */
final class PeriodMeasures {
  private final List<Outcome.Column> columns = new ArrayList<>();
  private final List<IntToDoubleFunction> values = new ArrayList<>();

  /**
   * @param value of a period by its number
   */
  void add(IntToDoubleFunction value, Measure measure, String... names) {
    columns.add(new Outcome.Column(measure.of(names), measure, ""));
    values.add(value);
  }

  int count() {
    return columns.size();
  }

  List<Outcome.Column> columns() {
    return List.copyOf(columns);
  }

  /** Writes what a period comes to, in the order of {@link #columns}. */
  void write(int period, double[] to) {
    for (int k = 0; k < to.length; k++) {
      to[k] = values.get(k).applyAsDouble(period);
    }
  }
}
