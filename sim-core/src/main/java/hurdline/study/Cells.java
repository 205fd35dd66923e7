package hurdline.study;

import hurdline.estimate.Quantiles;
import java.util.Arrays;

/**
 * One series over the replications for each of many cells; most weeks are idle and most levels 0, so a
 * cell whose value never changes keeps that one value.
 */
final class Cells {
  private static final int FIRST_ROOM = 16;

  private final double[] first;
  private final double[][] series;
  private int replications;

  Cells(int cells) {
    first = new double[cells];
    series = new double[cells][];
  }

  /** Begins the next replication, of which every cell must then be put. */
  void next() {
    replications++;
  }

  void put(int cell, double value) {
    int at = replications - 1;
    if (at == 0) {
      first[cell] = value;
      return;
    }
    double[] kept = series[cell];
    if (kept == null) {
      if (Double.compare(value, first[cell]) == 0) {
        return;
      }
      kept = new double[Math.max(FIRST_ROOM, 2 * at)];
      Arrays.fill(kept, 0, at, first[cell]);
      series[cell] = kept;
    } else if (at == kept.length) {
      kept = Arrays.copyOf(kept, 2 * at);
      series[cell] = kept;
    }
    kept[at] = value;
  }

  /** Whether the cell was 0 in every replication. */
  boolean isZero(int cell) {
    return series[cell] == null && first[cell] == 0;
  }

  Spread figures(int cell) {
    if (series[cell] == null) {
      return new Spread(first[cell], first[cell], first[cell], first[cell]);
    }
    double[] values = Arrays.copyOf(series[cell], replications);
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    double[] quantiles = Quantiles.of(values, 0.05, 0.5, 0.95);
    return new Spread(sum / replications, quantiles[0], quantiles[1], quantiles[2]);
  }

  /** Mean and quantiles over the replications. */
  record Spread(double mean, double p05, double p50, double p95) {}
}
