package hurdline.study;

import hurdline.estimate.Quantiles;
import java.util.Arrays;

/**
 * One series over the replications for each of many cells; most weeks are idle and most levels 0, so a
 * cell whose value never changes keeps that one value.
 *
 * <p>Quantiles need every value, so some 4,500 cells of the example grow by 8 bytes a replication. From replication
 * {@value #MOST} on only sums are kept: the means rest on all replications, the quantiles on the first {@value #MOST},
 * which leaves half a point of share to chance, and memory stays where it is.
 */
final class Cells {
  private static final int FIRST_ROOM = 16;
  private static final int MOST = 2_000;

  private final int most;
  private final double[] first;
  private final double[][] series;
  private final double[] beyond; // sum of what came after those kept
  private int replications;

  Cells(int cells) {
    this(cells, MOST);
  }

  /** @param most replications whose values are kept, above 1 */
  Cells(int cells, int most) {
    this.most = most;
    first = new double[cells];
    series = new double[cells][];
    beyond = new double[cells];
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
    if (series[cell] == null) {
      if (Double.compare(value, first[cell]) == 0) {
        return;
      }
      begin(cell, at);
    }
    if (at >= most) {
      beyond[cell] += value;
      return;
    }
    if (at == series[cell].length) {
      series[cell] = Arrays.copyOf(series[cell], Math.min(most, 2 * at));
    }
    series[cell][at] = value;
  }

  /** A cell takes another value for the first time: what it had so far is written down. */
  private void begin(int cell, int before) {
    int kept = Math.min(before, most);
    series[cell] = new double[Math.min(most, Math.max(FIRST_ROOM, 2 * kept))];
    Arrays.fill(series[cell], 0, kept, first[cell]);
    beyond[cell] = (before - kept) * first[cell];
  }

  /** Whether the cell was 0 in every replication. */
  boolean isZero(int cell) {
    return series[cell] == null && first[cell] == 0;
  }

  Spread figures(int cell) {
    if (series[cell] == null) {
      return new Spread(first[cell], first[cell], first[cell], first[cell]);
    }
    double[] values = Arrays.copyOf(series[cell], Math.min(most, replications));
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    sum += beyond[cell];
    double[] quantiles = Quantiles.of(values, 0.05, 0.5, 0.95);
    return new Spread(sum / replications, quantiles[0], quantiles[1], quantiles[2]);
  }

  /** Mean and quantiles over the replications. */
  record Spread(double mean, double p05, double p50, double p95) {}
}
