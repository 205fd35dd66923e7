package hurdline.study.season;

import hurdline.simulation.results.Outcome;
import hurdline.study.replicate.PeriodResults;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What one season plan came to: its figures, those of sharing the building, months and strips. */
final class SeasonResults {
  private final ReplicationResults figures = new ReplicationResults();
  private final PeriodResults months = new PeriodResults();
  private List<Outcome.Column> columns = List.of();
  private double[][] stripSums;

  /** Takes replications in their order. */
  void add(Outcome outcome) {
    Outcome.Shared shared = outcome.shared();
    if (stripSums == null) {
      columns = new ArrayList<>(outcome.columns());
      columns.addAll(shared.columns());
      stripSums = new double[shared.strips().length][shared.strips()[0].length];
    }
    double[] usual = outcome.values();
    double[] all = Arrays.copyOf(usual, usual.length + shared.values().length);
    System.arraycopy(shared.values(), 0, all, usual.length, shared.values().length);
    figures.add(columns, all);
    months.add(outcome.monthColumns(), outcome.months());
    for (int week = 0; week < stripSums.length; week++) {
      for (int k = 0; k < stripSums[week].length; k++) {
        stripSums[week][k] += shared.strips()[week][k];
      }
    }
  }

  ReplicationResults figures() {
    return figures;
  }

  PeriodResults months() {
    return months;
  }

  int weeks() {
    return stripSums.length;
  }

  /** Mean over the replications, at a place as {@link Outcome.Shared#strips} has it. */
  double strip(int week, int at) {
    return stripSums[week][at] / figures.count();
  }
}
