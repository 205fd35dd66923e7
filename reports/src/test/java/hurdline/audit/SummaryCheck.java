package hurdline.audit;

import hurdline.measure.Measure;
import java.util.Set;

/** summary.csv, and plans.csv which repeats a part of it, from the replications of measures.csv. */
final class SummaryCheck implements Check {
  static final String SUMMARY = "summary of replications";
  static final String CHANCES = "chances by Clopper and Pearson";
  static final String PLANS = "plans as summarized";

  /** Measures that are 1 or 0 in a replication, so that their mean is a share of years. */
  private static final Set<Measure> YES_OR_NO =
      Set.of(Measure.SEASON_FINISHED, Measure.SEASON_LINE_FINISHED);

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    Table summary = answer.table(Tables.SUMMARY);
    for (String option : answer.options()) {
      Samples samples = answer.samples(option);
      ledger.same(
          SUMMARY,
          option + " rows",
          samples.measures().size(),
          (int) summary.rows(Columns.OPTION, option).count());
    }
    summary.rows().forEach(row -> row(answer, row, ledger));
    if (answer.has(Tables.PLANS)) {
      answer.table(Tables.PLANS).rows().forEach(row -> plan(summary, row, ledger));
    }
  }

  private static void row(WrittenAnswer answer, Table.Row row, Ledger ledger) {
    Samples samples = answer.samples(row.text(Columns.OPTION));
    String measure = row.text(Columns.MEASURE);
    Statistic values = samples.statistic(measure);
    ledger.same(SUMMARY, row, samples.unit(measure), row.text(Columns.UNIT));
    ledger.near(SUMMARY, row, values.count(), row.number(Columns.REPLICATIONS));
    ledger.near(SUMMARY, row, values.mean(), row.number(Columns.MEAN));
    // The spread of figures that hardly differ is what is left of them, so it is as far off as they
    // are.
    double rounding =
        1e-9 * (values.count() == 0 ? 0 : Math.max(Math.abs(values.min()), Math.abs(values.max())));
    ledger.near(SUMMARY, row, values.sd(), row.number(Columns.SD), rounding);
    ledger.near(SUMMARY, row, values.quantile(0.05), row.number(Columns.P05));
    ledger.near(SUMMARY, row, values.quantile(0.5), row.number(Columns.P50));
    ledger.near(SUMMARY, row, values.quantile(0.95), row.number(Columns.P95));
    ledger.near(SUMMARY, row, values.quantile(0), row.number(Columns.MIN));
    ledger.near(SUMMARY, row, values.quantile(1), row.number(Columns.MAX));
    if (Measure.find(measure).map(match -> YES_OR_NO.contains(match.measure())).orElse(false)) {
      int happened = (int) Math.round(values.sum());
      ledger.near(
          CHANCES, row, Statistic.chanceLow(happened, values.count()), row.number(Columns.LOW_95));
      ledger.near(
          CHANCES,
          row,
          Statistic.chanceHigh(happened, values.count()),
          row.number(Columns.HIGH_95));
      ledger.same(CHANCES, row, "clopper-pearson", row.text(Columns.INTERVAL));
    } else {
      limits(answer, row, values, rounding, ledger);
    }
  }

  /**
   * Limits of the mean, and none where the measure cannot lie; the table says which they are and
   * whether they are cut.
   */
  private static void limits(
      WrittenAnswer answer, Table.Row row, Statistic values, double rounding, Ledger ledger) {
    Statistic.Limits limits = values.limits();
    double low = Math.max(limits.low(), Bound.least(row, values));
    double high = Math.min(limits.high(), Bound.most(answer, row, values));
    double slack = rounding + 1e-9 * Math.max(Math.abs(limits.low()), Math.abs(limits.high()));
    boolean cut = low > limits.low() || high < limits.high();
    ledger.near(SUMMARY, row, low, row.number(Columns.LOW_95), slack);
    ledger.near(SUMMARY, row, high, row.number(Columns.HIGH_95), slack);
    String kind = row.text(Columns.INTERVAL).replace(" cut", "");
    ledger.same(SUMMARY, row + " is " + kind, true, values.isCalled(kind, rounding));
    ledger.same(SUMMARY, row + " is cut", cut, row.text(Columns.INTERVAL).endsWith(" cut"));
  }

  private static void plan(Table summary, Table.Row row, Ledger ledger) {
    Table.Row same =
        summary.row(
            of ->
                of.is(Columns.OPTION, row.text(Columns.PLAN))
                    && of.is(Columns.MEASURE, row.text(Columns.MEASURE)));
    for (String column :
        new String[] {
          Columns.UNIT, Columns.MEAN, Columns.LOW_95, Columns.HIGH_95, Columns.INTERVAL
        }) {
      ledger.same(PLANS, row, same.text(column), row.text(column));
    }
  }
}
