package hurdline.study;

import hurdline.work.Outcome;
import java.util.function.Consumer;

/** What the replications came to: their figures, and what went on through the year. */
final class Gathered {
  private final Figures figures = new Figures();
  private final PeriodFigures weeks = new PeriodFigures();
  private final PeriodFigures months = new PeriodFigures();
  private Cells levels;
  private int places;
  private double[][][] wayKg;

  /** Filled by whoever plays. */
  static Consumer<Outcome> filling(Gathered gathered) {
    return new InTurn(gathered::add);
  }

  private void add(Outcome outcome) {
    if (levels == null) {
      shape(outcome);
    }
    figures.add(outcome);
    weeks.add(outcome.weekColumns(), outcome.weeks());
    months.add(outcome.monthColumns(), outcome.months());
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

  private void shape(Outcome first) {
    places = first.levels()[0].length;
    int days = first.levels()[0][0].length;
    levels = new Cells(first.levels().length * places * days);
    wayKg = new double[first.wayKg().length][][];
    for (int h = 0; h < wayKg.length; h++) {
      wayKg[h] = new double[first.wayKg()[h].length][];
      for (int node = 0; node < wayKg[h].length; node++) {
        wayKg[h][node] = new double[first.wayKg()[h][node].length];
      }
    }
  }

  Figures figures() {
    return figures;
  }

  PeriodFigures byWeek() {
    return weeks;
  }

  PeriodFigures byMonth() {
    return months;
  }

  /** @param place after the last one all places together */
  Cells.Spread level(int crop, int place, int day, int days) {
    return levels.figures((crop * places + place) * days + day);
  }

  /** Mean mass that took a way in a replication, kg. */
  double wayKg(int head, int node, int outlet) {
    return wayKg[head][node][outlet] / figures.count();
  }
}
