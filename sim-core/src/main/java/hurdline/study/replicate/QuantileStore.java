package hurdline.study.replicate;

import hurdline.statistics.ExactSum;
import hurdline.statistics.Quantiles;
import java.util.Arrays;

/**
 * One series over a range of replications for each of many cells; most weeks are idle and most
 * levels 0, so a cell whose value never changes keeps that one value.
 *
 * <p>Quantiles need every value, so some 4,500 cells of the example grow by 8 bytes a replication.
 * From replication {@value #MOST} on only sums are kept: the means rest on all replications, the
 * quantiles on the first {@value #MOST}, which leaves half a point of share to chance, and memory
 * stays where it is. Those sums are exact, so the series of ranges that follow each other come to
 * the same as that of the whole, to the last bit.
 */
public final class QuantileStore {
  private static final int FIRST_ROOM = 16;
  private static final int MOST = 2_000;

  private final int most;
  private final double[] first;
  private final double[][] series;
  private final ExactSum[] beyond; // sums of what came after those kept; null where nothing did
  private int replications;

  /**
   * @param from number of the range's first replication
   */
  public QuantileStore(int cells, int from) {
    this(cells, from, MOST);
  }

  /**
   * @param most replications, counted from the study's first, whose values are kept; above 1
   */
  public QuantileStore(int cells, int from, int most) {
    this.most = Math.max(0, most - from + 1);
    first = new double[cells];
    series = new double[cells][];
    beyond = new ExactSum[cells];
  }

  /** Begins the next replication, of which every cell must then be put. */
  public void next() {
    replications++;
  }

  public void put(int cell, double value) {
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
    append(cell, at, value);
  }

  /** A cell takes another value for the first time: what it had so far is written down. */
  private void begin(int cell, int before) {
    int kept = Math.min(before, most);
    series[cell] = new double[Math.min(most, Math.max(FIRST_ROOM, 2 * kept))];
    Arrays.fill(series[cell], 0, kept, first[cell]);
    if (before > kept) {
      beyond(cell).add(first[cell], before - kept);
    }
  }

  private void append(int cell, int at, double value) {
    if (at >= most) {
      beyond(cell).add(value);
      return;
    }
    if (at == series[cell].length) {
      series[cell] = Arrays.copyOf(series[cell], Math.min(most, 2 * at));
    }
    series[cell][at] = value;
  }

  private ExactSum beyond(int cell) {
    if (beyond[cell] == null) {
      beyond[cell] = new ExactSum();
    }
    return beyond[cell];
  }

  /** Puts the series of the range that follows this one behind it; neither may be empty. */
  public void append(QuantileStore next) {
    for (int cell = 0; cell < first.length; cell++) {
      boolean still = series[cell] == null && next.series[cell] == null;
      if (!still || Double.compare(first[cell], next.first[cell]) != 0) {
        append(cell, next);
      }
    }
    replications += next.replications;
  }

  private void append(int cell, QuantileStore next) {
    if (series[cell] == null) {
      begin(cell, replications);
    }
    int kept = Math.min(next.most, next.replications);
    for (int at = 0; at < kept; at++) {
      append(
          cell,
          replications + at,
          next.series[cell] == null ? next.first[cell] : next.series[cell][at]);
    }
    if (next.beyond[cell] != null) {
      beyond(cell).add(next.beyond[cell]);
    } else if (next.replications > kept) {
      beyond(cell).add(next.first[cell], next.replications - kept);
    }
  }

  /** Whether the cell was 0 in every replication. */
  boolean isZero(int cell) {
    return series[cell] == null && first[cell] == 0;
  }

  public Spread figures(int cell) {
    if (series[cell] == null) {
      return new Spread(first[cell], first[cell], first[cell], first[cell]);
    }
    double[] values = Arrays.copyOf(series[cell], Math.min(most, replications));
    double[] quantiles = Quantiles.of(values, 0.05, 0.5, 0.95);
    return new Spread(sum(cell) / replications, quantiles[0], quantiles[1], quantiles[2]);
  }

  /** Over all replications, the kept ones in their order. */
  public double sum(int cell) {
    double sum = 0;
    for (int at = 0; at < Math.min(most, replications); at++) {
      sum += series[cell] == null ? first[cell] : series[cell][at];
    }
    if (series[cell] != null) {
      return beyond[cell] == null ? sum : sum + beyond[cell].value();
    }
    ExactSum rest = new ExactSum();
    rest.add(first[cell], Math.max(0, replications - most));
    return sum + rest.value();
  }

  /** Mean and quantiles over the replications. */
  public record Spread(double mean, double p05, double p50, double p95) {}
}
