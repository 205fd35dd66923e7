package hurdline.audit;

import hurdline.measure.Measure;

/**
 * adjusted.csv: the mean at the file's mean crop, the intercept of the line of least squares
 * through the replications, with the standard error HC3 from its textbook form (X'X)⁻¹ X'
 * diag(e²/(1 − h)²) X (X'X)⁻¹.
 */
final class AdjustedCheck implements Check {
  static final String ADJUSTED = "means adjusted for the drawn crop";

  /** Of {@link Measure#MASS_DRAWN_OVER_MEAN}. */
  private static final double MEAN_OF_CONTROL = 1;

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    if (answer.has(Tables.ADJUSTED)) {
      String base = answer.options().get(0);
      boolean differences =
          answer.has(Tables.PAYBACK); // a comparison adjusts differences from its base
      for (Table.Row row : answer.table(Tables.ADJUSTED).rows().toList()) {
        Samples own = answer.samples(row.text(Columns.OPTION));
        double[] values = own.all(row.text(Columns.MEASURE)).clone();
        if (differences) {
          double[] less = answer.samples(base).all(row.text(Columns.MEASURE));
          for (int at = 0; at < values.length; at++) {
            double apart = values[at] - less[at];
            values[at] =
                Math.abs(apart) <= 1e-9 * Math.max(Math.abs(values[at]), Math.abs(less[at]))
                    ? 0
                    : apart;
          }
        }
        double[] control =
            (differences ? answer.samples(base) : own)
                .all(Measure.MASS_DRAWN_OVER_MEAN, row.text(Columns.CROP));
        row(answer, values, control, differences, row, ledger);
      }
    }
  }

  private static void row(
      WrittenAnswer answer,
      double[] y,
      double[] control,
      boolean differences,
      Table.Row row,
      Ledger ledger) {
    int n = y.length;
    double[] x = new double[n];
    double sx = 0;
    double sxx = 0;
    double sy = 0;
    double sxy = 0;
    for (int i = 0; i < n; i++) {
      x[i] = control[i] - MEAN_OF_CONTROL;
      sx += x[i];
      sxx += x[i] * x[i];
      sy += y[i];
      sxy += x[i] * y[i];
    }
    double det = n * sxx - sx * sx; // (X'X)⁻¹ is [[sxx, −sx], [−sx, n]] / det
    double intercept = (sxx * sy - sx * sxy) / det;
    double slope = (n * sxy - sx * sy) / det;
    double variance = 0;
    for (int i = 0; i < n; i++) {
      double leverage = (sxx - 2 * x[i] * sx + n * x[i] * x[i]) / det;
      double residual = (y[i] - intercept - slope * x[i]) / (1 - leverage);
      double pull = (sxx - sx * x[i]) / det; // of the replication on the intercept
      variance += pull * pull * residual * residual;
    }
    Statistic plain = Statistic.of(y);
    double error = Math.sqrt(variance);
    int comparisons = differences ? answer.options().size() - 1 : 1;
    double half = Statistic.student(n - 2, comparisons) * error;
    double rounding = 1e-8 * Math.max(Math.abs(intercept), plain.max());
    ledger.near(ADJUSTED, row, plain.mean(), row.number(Columns.MEAN));
    ledger.near(ADJUSTED, row, plain.sd() / Math.sqrt(n), row.number(Columns.ERROR), rounding);
    ledger.near(ADJUSTED, row, intercept, row.number(Columns.ADJUSTED_MEAN), rounding);
    ledger.near(ADJUSTED, row, error, row.number(Columns.ADJUSTED_ERROR), rounding);
    double low =
        differences ? intercept - half : Math.max(intercept - half, Bound.least(row, plain));
    double high =
        differences ? intercept + half : Math.min(intercept + half, Bound.most(answer, row, plain));
    ledger.near(ADJUSTED, row, low, row.number(Columns.LOW_95), rounding);
    ledger.near(ADJUSTED, row, high, row.number(Columns.HIGH_95), rounding);
  }
}
