package hurdline.study;

import hurdline.work.Outcome;
import java.util.List;

/** What went on week by week or month by month, over the replications. */
final class PeriodFigures {
  private final int from;
  private List<Outcome.Column> columns = List.of();
  private Cells cells;
  private int count;

  PeriodFigures() {
    this(1);
  }

  /** @param from number of the first replication that comes */
  PeriodFigures(int from) {
    this.from = from;
  }

  /** @param periods of one replication, [period][column] */
  void add(List<Outcome.Column> named, double[][] periods) {
    if (cells == null) {
      columns = named;
      count = periods.length;
      cells = new Cells(count * columns.size(), from);
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
  void append(PeriodFigures next) {
    cells.append(next.cells);
  }

  List<Outcome.Column> columns() {
    return columns;
  }

  int count() {
    return count;
  }

  Cells.Spread of(int period, int column) {
    return cells.figures(cell(period, column));
  }

  /** Whether nothing of this ever came in any period. */
  boolean isNever(int column) {
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
