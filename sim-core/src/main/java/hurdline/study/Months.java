package hurdline.study;

import hurdline.work.Outcome;
import java.util.List;

/** What went on month by month, over the replications. */
final class Months {
  private List<Outcome.Column> columns = List.of();
  private Cells cells;
  private int count;

  void add(Outcome outcome) {
    if (cells == null) {
      columns = outcome.monthColumns();
      count = outcome.months().length;
      cells = new Cells(count * columns.size());
    }
    cells.next();
    int cell = 0;
    for (double[] month : outcome.months()) {
      for (double value : month) {
        cells.put(cell++, value);
      }
    }
  }

  List<Outcome.Column> columns() {
    return columns;
  }

  int count() {
    return count;
  }

  Cells.Spread of(int month, int column) {
    return cells.figures(month * columns.size() + column);
  }
}
