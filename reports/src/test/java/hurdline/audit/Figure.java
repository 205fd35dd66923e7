package hurdline.audit;

import hurdline.measure.Measure;

/**
 * A figure of the tables that the page or the terminal shows, in the table's unit.
 *
 * @param low lower limit of its interval; NaN where it has none
 * @param high upper limit
 */
record Figure(double value, double low, double high, String unit) {
  /** A row of summary.csv. */
  static Figure summary(WrittenAnswer answer, String option, String measure) {
    Table.Row row =
        answer
            .table(Tables.SUMMARY)
            .row(of -> of.is(Columns.OPTION, option) && of.is(Columns.MEASURE, measure));
    return of(row, Columns.MEAN, Columns.LOW_95, Columns.HIGH_95);
  }

  static Figure of(Table.Row row, String value, String low, String high) {
    return new Figure(row.number(value), row.number(low), row.number(high), row.text(Columns.UNIT));
  }

  static Figure alone(double value, String unit) {
    return new Figure(value, Double.NaN, Double.NaN, unit);
  }

  /** The mean of a measure over the replications, without an interval. */
  static Figure mean(WrittenAnswer answer, String option, Measure measure, String... names) {
    Samples samples = answer.samples(option);
    return alone(samples.statistic(measure.of(names)).mean(), samples.unit(measure.of(names)));
  }

  Figure withValue(double other) {
    return new Figure(other, low, high, unit);
  }

  double halfWidth() {
    return high > low ? (high - low) / 2 : 0;
  }
}
