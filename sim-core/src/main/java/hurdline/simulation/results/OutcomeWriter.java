package hurdline.simulation.results;

import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Values written one after another, always in the same order; their names are kept from the first
 * time.
 */
final class OutcomeWriter {
  private final List<Outcome.Column> columns = new ArrayList<>();
  private double[] values = new double[64];
  private int at;
  private boolean named;

  /** Begins anew. */
  void start() {
    named = at > 0;
    at = 0;
  }

  void put(Measure measure, double value, String... names) {
    put(measure, "", false, value, names);
  }

  /** A measure counted in the unit of a crop. */
  void putCrop(Measure measure, String crop, double value, String... names) {
    put(measure, crop, false, value, names);
  }

  /** A mass and its dry twin. */
  void putMass(Measure measure, double value, double dry, String... names) {
    put(measure, "", false, value, names);
    put(measure, "", true, dry, names);
  }

  private void put(Measure measure, String crop, boolean dry, double value, String... names) {
    if (!named) {
      String name = dry ? measure.dryOf(names) : measure.of(names);
      columns.add(new Outcome.Column(name, measure, crop));
    }
    if (at == values.length) {
      values = Arrays.copyOf(values, 2 * at);
    }
    values[at++] = value;
  }

  List<Outcome.Column> columns() {
    return columns;
  }

  double[] values() {
    return Arrays.copyOf(values, at);
  }
}
