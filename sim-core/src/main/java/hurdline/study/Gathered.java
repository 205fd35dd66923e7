package hurdline.study;

import hurdline.estimate.Summary;
import hurdline.work.Outcome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the replications came to, taken in their order whoever finishes first, so that every sum is the
 * same on any number of threads.
 */
final class Gathered {
  private final TreeMap<Integer, Outcome> early = new TreeMap<>();
  private final List<double[]> values = new ArrayList<>();
  private final Map<String, Integer> columnOf = new HashMap<>();
  private Outcome shape;
  private Cells weeks;
  private Cells months;
  private Cells levels;
  private double[][][] wayKg;

  /** Takes an outcome; kept waiting until all before it have come. */
  synchronized void take(Outcome outcome) {
    early.put(outcome.replication(), outcome);
    Outcome next;
    while ((next = early.remove(values.size() + 1)) != null) {
      add(next);
    }
  }

  private void add(Outcome outcome) {
    if (shape == null) {
      shape(outcome);
    }
    values.add(outcome.values());
    put(weeks, outcome.weeks());
    put(months, outcome.months());
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
    for (int k = 0; k < first.columns().size(); k++) {
      columnOf.put(first.columns().get(k).name(), k);
    }
    weeks = new Cells(first.weeks().length * first.weekColumns().size());
    months = new Cells(first.months().length * first.monthColumns().size());
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
            null);
  }

  /** Replications taken, all from the first on without a gap. */
  synchronized int count() {
    return values.size();
  }

  List<Outcome.Column> columns() {
    return shape.columns();
  }

  List<Outcome.Column> weekColumns() {
    return shape.weekColumns();
  }

  List<Outcome.Column> monthColumns() {
    return shape.monthColumns();
  }

  int weeks() {
    return shape.weeks().length;
  }

  int months() {
    return shape.months().length;
  }

  boolean has(String measure) {
    return columnOf.containsKey(measure);
  }

  /** A measure over the replications. */
  double[] series(String measure) {
    return series(columnOf.get(measure));
  }

  double[] series(int column) {
    return values.stream().mapToDouble(of -> of[column]).toArray();
  }

  /** The mean over the replications that gave the measure a value; 0 if none did or it is not measured. */
  double mean(String measure) {
    double mean = has(measure) ? Summary.of(series(measure)).mean() : 0;
    return Double.isNaN(mean) ? 0 : mean;
  }

  /** [replication][column] */
  double[][] values() {
    return values.toArray(double[][]::new);
  }

  Cells.Figures week(int week, int column) {
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

  Cells.Figures month(int month, int column) {
    return months.figures(month * shape.monthColumns().size() + column);
  }

  /** @param place after the last one all places together */
  Cells.Figures level(int crop, int place, int day, int days) {
    return levels.figures((crop * shape.levels()[0].length + place) * days + day);
  }

  /** Mean mass that took a way in a replication, kg. */
  double wayKg(int head, int node, int outlet) {
    return wayKg[head][node][outlet] / values.size();
  }
}
