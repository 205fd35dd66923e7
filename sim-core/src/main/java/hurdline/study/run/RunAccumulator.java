package hurdline.study.run;

import hurdline.simulation.results.Outcome;
import hurdline.study.replicate.PeriodResults;
import hurdline.study.replicate.QuantileStore;
import hurdline.study.replicate.ReplicationResults;

/** What a range of replications came to: their figures, and what went on through the year. */
public final class RunAccumulator {
  private final int from;
  private final ReplicationResults figures = new ReplicationResults();
  private final PeriodResults weeks;
  private final PeriodResults months;
  private QuantileStore levels;
  private QuantileStore storesKg;
  private QuantileStore waysKg;
  private int places;
  private int[][] firstWay;

  /** All replications from the first on. */
  public RunAccumulator() {
    this(1);
  }

  /**
   * @param from number of the first replication that comes
   */
  public RunAccumulator(int from) {
    this.from = from;
    weeks = new PeriodResults(from);
    months = new PeriodResults(from);
  }

  /** Takes replications in their order. */
  public void add(Outcome outcome) {
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
    storesKg.next();
    int stored = 0;
    for (double[] ofStore : outcome.storeKg()) {
      for (double kg : ofStore) {
        storesKg.put(stored++, kg);
      }
    }
    waysKg.next();
    int way = 0;
    for (double[][] ofHead : outcome.wayKg()) {
      for (double[] ofNode : ofHead) {
        for (double kg : ofNode) {
          waysKg.put(way++, kg);
        }
      }
    }
  }

  private void shape(Outcome first) {
    places = first.levels()[0].length;
    int days = first.levels()[0][0].length;
    levels = new QuantileStore(first.levels().length * places * days, from);
    storesKg = new QuantileStore(first.storeKg().length * days, from);
    int ways = 0;
    firstWay = new int[first.wayKg().length][];
    for (int h = 0; h < firstWay.length; h++) {
      firstWay[h] = new int[first.wayKg()[h].length];
      for (int node = 0; node < firstWay[h].length; node++) {
        firstWay[h][node] = ways;
        ways += first.wayKg()[h][node].length;
      }
    }
    waysKg = new QuantileStore(ways, from);
  }

  /** Puts what the range that follows came to behind this; neither may be empty. */
  void append(RunAccumulator next) {
    figures.append(next.figures);
    weeks.append(next.weeks);
    months.append(next.months);
    levels.append(next.levels);
    storesKg.append(next.storesKg);
    waysKg.append(next.waysKg);
  }

  public ReplicationResults figures() {
    return figures;
  }

  PeriodResults byWeek() {
    return weeks;
  }

  PeriodResults byMonth() {
    return months;
  }

  /**
   * @param place after the last one all places together
   */
  QuantileStore.Spread level(int crop, int place, int day, int days) {
    return levels.figures((crop * places + place) * days + day);
  }

  /** The most that lay in a store on a day, kg. */
  QuantileStore.Spread storeKg(int store, int day, int days) {
    return storesKg.figures(store * days + day);
  }

  /** Mean mass that took a way in a replication, kg. */
  double wayKg(int head, int node, int outlet) {
    return waysKg.sum(firstWay[head][node] + outlet) / figures.count();
  }
}
