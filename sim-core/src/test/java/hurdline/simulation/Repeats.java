package hurdline.simulation;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;

/** Many replications of one plant, by measure. */
final class Repeats {
  private final List<String> names;
  private final double[][] values;
  final double hours;

  /** Simulates one plant again and again. */
  static final class Simulator {
    private final Replication replication;
    private final double hours;

    Simulator(Plant plant) {
      CompiledLines layout = CompiledLines.of(plant);
      Roster roster = Roster.of(plant);
      YardPlan yard = YardPlan.of(plant);
      replication = new Replication(layout, roster, yard, Haulage.of(plant, yard, roster));
      hours = roster.horizonS() / 3600;
    }

    Repeats simulate(RandomStreams streams, int replications) {
      double[][] values = new double[replications][];
      List<String> names = List.of();
      for (int r = 0; r < replications; r++) {
        Outcome outcome = replication.run(streams, r + 1, null);
        values[r] = outcome.values();
        if (r == 0) {
          names = outcome.columns().stream().map(Outcome.Column::name).toList();
        }
      }
      return new Repeats(names, values, hours);
    }
  }

  Repeats(Plant plant, long seed, int replications) {
    this(new Simulator(plant).simulate(new RandomStreams(seed), replications));
  }

  private Repeats(Repeats simulated) {
    this(simulated.names, simulated.values, simulated.hours);
  }

  private Repeats(List<String> names, double[][] values, double hours) {
    this.names = names;
    this.values = values;
    this.hours = hours;
  }

  double[] of(String measure) {
    int column = names.indexOf(measure);
    if (column < 0) {
      throw new AssertionError("no measure " + measure + " among " + names);
    }
    double[] each = new double[values.length];
    for (int r = 0; r < each.length; r++) {
      each[r] = values[r][column];
    }
    return each;
  }

  /** A measure's mean over the replications and the standard error of that mean. */
  static double[] meanAndError(double[] each) {
    double sd = new StandardDeviation().evaluate(each);
    return new double[] {new Mean().evaluate(each), sd / Math.sqrt(each.length)};
  }
}
