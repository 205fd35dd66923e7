package hurdline.study;

import hurdline.work.Outcome;
import java.util.List;
import java.util.function.Consumer;

/** What the replications came to: their figures, and what went on through the year. */
final class Gathered {
  private final Figures figures = new Figures();
  private Outcome shape;
  private Cells weeks;
  private final Months months = new Months();
  private Cells levels;
  private double[][][] wayKg;

  /** Filled by whoever plays. */
  static Consumer<Outcome> filling(Gathered gathered) {
    return new InTurn(gathered::add);
  }

  private void add(Outcome outcome) {
    if (shape == null) {
      shape(outcome);
    }
    figures.add(outcome);
    put(weeks, outcome.weeks());
    months.add(outcome);
    levels.next();
    int cell = 0;
    for (int[][] ofCrop : outcome.levels()) {
      for (int[] ofPlace : ofCrop) {
        for (int level : ofPlace) {
          levels.put(cell++, level);
        }
      }
    }
    for (int h = 0; h < wayKg.length; h++) {
      for (int node = 0; node < wayKg[h].length; node++) {
        for (int o = 0; o < wayKg[h][node].length; o++) {
          wayKg[h][node][o] += outcome.wayKg()[h][node][o];
        }
      }
    }
  }

  private static void put(Cells cells, double[][] periods) {
    cells.next();
    int cell = 0;
    for (double[] period : periods) {
      for (double value : period) {
        cells.put(cell++, value);
      }
    }
  }

  private void shape(Outcome first) {
    weeks = new Cells(first.weeks().length * first.weekColumns().size());
    int days = first.levels()[0][0].length;
    levels = new Cells(first.levels().length * first.levels()[0].length * days);
    wayKg = new double[first.wayKg().length][][];
    for (int h = 0; h < wayKg.length; h++) {
      wayKg[h] = new double[first.wayKg()[h].length][];
      for (int node = 0; node < wayKg[h].length; node++) {
        wayKg[h][node] = new double[first.wayKg()[h][node].length];
      }
    }
    shape =
        new Outcome(
            1,
            first.columns(),
            null,
            first.weekColumns(),
            new double[first.weeks().length][],
            first.monthColumns(),
            new double[first.months().length][],
            new int[first.levels().length][first.levels()[0].length][0],
            null,
            null);
  }

  Figures figures() {
    return figures;
  }

  List<Outcome.Column> weekColumns() {
    return shape.weekColumns();
  }

  Months byMonth() {
    return months;
  }

  int weeks() {
    return shape.weeks().length;
  }

  Cells.Spread week(int week, int column) {
    return weeks.figures(week * shape.weekColumns().size() + column);
  }

  /** Whether nothing of this ever came in any week. */
  boolean isNeverInAWeek(int column) {
    for (int week = 0; week < weeks(); week++) {
      if (!weeks.isZero(week * shape.weekColumns().size() + column)) {
        return false;
      }
    }
    return true;
  }

  /** @param place after the last one all places together */
  Cells.Spread level(int crop, int place, int day, int days) {
    return levels.figures((crop * shape.levels()[0].length + place) * days + day);
  }

  /** Mean mass that took a way in a replication, kg. */
  double wayKg(int head, int node, int outlet) {
    return wayKg[head][node][outlet] / figures.count();
  }
}
