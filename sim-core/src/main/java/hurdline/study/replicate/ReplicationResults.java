package hurdline.study.replicate;

import hurdline.simulation.results.Outcome;
import hurdline.statistics.Summary;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Every measure of every replication, and nothing else: enough to set plants side by side. */
public final class ReplicationResults {
  private final List<double[]> values = new ArrayList<>();
  private final List<Integer> balesLeft = new ArrayList<>();
  private final List<double[][]> years = new ArrayList<>();
  private final Map<String, Integer> columnOf = new HashMap<>();
  private List<Outcome.Column> columns = List.of();
  private List<Outcome.Column> yearColumns = List.of();

  public void add(Outcome outcome) {
    add(outcome.columns(), outcome.values());
    balesLeft.add(outcome.balesLeft());
    yearColumns = outcome.years().columns();
    years.add(outcome.years().values());
  }

  public void add(List<Outcome.Column> named, double[] one) {
    if (values.isEmpty()) {
      columns = List.copyOf(named);
      for (int k = 0; k < columns.size(); k++) {
        columnOf.put(columns.get(k).name(), k);
      }
    }
    values.add(one);
  }

  /** Puts the replications that follow behind these; neither may be empty. */
  public void append(ReplicationResults next) {
    values.addAll(next.values);
    balesLeft.addAll(next.balesLeft);
    years.addAll(next.years);
  }

  /** Replications taken, all from the first on without a gap. */
  public int count() {
    return values.size();
  }

  /** Bales that a replication left, wherever they were; counts from 0. */
  int balesLeft(int replication) {
    return balesLeft.get(replication);
  }

  /** Whether any replication left some. */
  public boolean leavesCrop() {
    return balesLeft.stream().anyMatch(left -> left > 0);
  }

  /** Other measures of the same replications, [replication][column]. */
  public ReplicationResults with(List<Outcome.Column> others, double[][] rows) {
    ReplicationResults figures = new ReplicationResults();
    figures.add(others, rows);
    figures.balesLeft.addAll(balesLeft);
    return figures;
  }

  /** Of groups of so many, the first few of each. */
  public ReplicationResults firstOf(int group, int few) {
    if (group == few) {
      return this;
    }
    ReplicationResults first = new ReplicationResults();
    for (int at = 0; at < count(); at++) {
      if (at % group < few) {
        first.add(columns, values.get(at));
      }
    }
    return first;
  }

  /** What each year of a replication earned and cost; counts from 0. */
  double[][] years(int replication) {
    return years.get(replication);
  }

  /** What the values of a year are. */
  List<Outcome.Column> yearColumns() {
    return yearColumns;
  }

  /** The same by year: a row for each year of each replication. */
  public ReplicationResults byYear() {
    ReplicationResults byYear = new ReplicationResults();
    years.forEach(of -> byYear.add(yearColumns, of));
    return byYear;
  }

  /** Rows behind each other. */
  public void add(List<Outcome.Column> named, double[][] rows) {
    for (double[] row : rows) {
      add(named, row);
    }
  }

  public List<Outcome.Column> columns() {
    return columns;
  }

  public boolean has(String measure) {
    return columnOf.containsKey(measure);
  }

  /** A measure over the replications. */
  public double[] series(String measure) {
    return series(columnOf.get(measure));
  }

  public double[] series(int column) {
    return values.stream().mapToDouble(of -> of[column]).toArray();
  }

  /**
   * The mean over the replications that gave the measure a value; 0 if none did or it is not
   * measured.
   */
  public double mean(String measure) {
    double mean = has(measure) ? Summary.of(series(measure)).mean() : 0;
    return Double.isNaN(mean) ? 0 : mean;
  }

  /** [replication][column] */
  public double[][] values() {
    return values.toArray(double[][]::new);
  }
}
