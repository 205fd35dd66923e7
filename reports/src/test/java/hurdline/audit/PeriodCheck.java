package hurdline.audit;

import hurdline.measure.Measure;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * weeks.csv and months.csv: what adds up over the calendar gives the measure's mean, quantiles
 * stand in their order.
 */
final class PeriodCheck implements Check {
  static final String WEEKS = "weeks add up";
  static final String MONTHS = "months add up";
  static final String ORDER = "quantiles of periods in order";
  static final String DEMAND = "demand charge of months";

  private static final Set<Measure> NOT_A_SUM = Set.of(Measure.ENERGY_PEAK);

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    if (answer.has(Tables.WEEKS)) {
      sums(answer, answer.table(Tables.WEEKS), WEEKS, ledger);
    }
    sums(answer, answer.table(Tables.MONTHS), MONTHS, ledger);
    demand(answer, ledger);
    peaks(answer, ledger);
  }

  private record Of(String option, String measure) {}

  private static void sums(WrittenAnswer answer, Table periods, String what, Ledger ledger) {
    Map<Of, Double> sums = new LinkedHashMap<>();
    periods
        .rows()
        .forEach(
            row -> {
              Of of = new Of(row.text(Columns.OPTION), row.text(Columns.MEASURE));
              sums.merge(of, row.number(Columns.MEAN), Double::sum);
              ledger.between(
                  ORDER,
                  row,
                  row.number(Columns.P05),
                  row.number(Columns.P50),
                  row.number(Columns.P95));
            });
    sums.forEach(
        (of, sum) -> {
          if (!NOT_A_SUM.contains(Measure.find(of.measure()).orElseThrow().measure())) {
            double mean = answer.samples(of.option()).statistic(of.measure()).mean();
            ledger.near(what, periods.file() + " " + of, mean, sum);
          }
        });
  }

  /**
   * A month's charge is its peak times the price of a kilowatt, on the mean and at each quantile.
   */
  private static void demand(WrittenAnswer answer, Ledger ledger) {
    Table months = answer.table(Tables.MONTHS);
    for (String option : answer.options()) {
      double perKwMonth =
          answer.plant(option).amount("money.electricity.demand") * Amount.of("1 month");
      months
          .rows(Columns.OPTION, option)
          .filter(row -> row.is(Columns.MEASURE, Measure.MONEY_DEMAND.of()))
          .forEach(
              charge -> {
                Table.Row peak =
                    months.row(
                        row ->
                            row.is(Columns.OPTION, option)
                                && row.is(Columns.MONTH, charge.text(Columns.MONTH))
                                && row.is(Columns.MEASURE, Measure.ENERGY_PEAK.of()));
                for (String column :
                    new String[] {Columns.MEAN, Columns.P05, Columns.P50, Columns.P95}) {
                  ledger.near(
                      DEMAND, charge, peak.number(column) * perKwMonth, charge.number(column));
                }
              });
    }
  }

  /** The year's peak is no lower than the mean peak of any month. */
  private static void peaks(WrittenAnswer answer, Ledger ledger) {
    answer
        .table(Tables.MONTHS)
        .rows(Columns.MEASURE, Measure.ENERGY_PEAK.of())
        .forEach(
            row -> {
              double year =
                  answer
                      .samples(row.text(Columns.OPTION))
                      .statistic(Measure.ENERGY_PEAK.of())
                      .mean();
              ledger.between(ORDER, row, 0, row.number(Columns.MEAN), year);
            });
  }
}
