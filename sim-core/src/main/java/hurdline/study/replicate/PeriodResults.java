package hurdline.study.replicate;

import hurdline.simulation.results.Outcome;
import java.util.List;

/** What went on week by week or month by month, over the replications. */
public final class PeriodResults {
  private final int from;
  private List<Outcome.Column> columns = List.of();
  private QuantileStore cells;
  private int count;

  public PeriodResults() {
    this(1);
  }

  /**
   * @param from number of the first replication that comes
   */
  public PeriodResults(int from) {
    this.from = from;
  }

  /**
   * @param periods of one replication, [period][column]
   */
  public void add(List<Outcome.Column> named, double[][] periods) {
    if (cells == null) {
      columns = named;
      count = periods.length;
      cells = new QuantileStore(count * columns.size(), from);
    }
    cells.next();
    int cell = 0;
    for (double[] period : periods) {
      for (double value : period) {
        cells.put(cell++, value);
      }
    }
  }

  /** Puts those of the range that follows behind these; neither may be empty. */
  public void append(PeriodResults next) {
    cells.append(next.cells);
  }

  public List<Outcome.Column> columns() {
    return columns;
  }

  public int count() {
    return count;
  }

  public QuantileStore.Spread of(int period, int column) {
    return cells.figures(cell(period, column));
  }

  /** Whether nothing of this ever came in any period. */
  public boolean isNever(int column) {
    for (int period = 0; period < count; period++) {
      if (!cells.isZero(cell(period, column))) {
        return false;
      }
    }
    return true;
  }

  private int cell(int period, int column) {
    return period * columns.size() + column;
  }
}
