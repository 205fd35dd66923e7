package hurdline.audit;

import hurdline.measure.Measure;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** What became of each order, from the replications, the masses sold and the dates of the file. */
final class OrderCheck implements Check {
  static final String ORDERS = "orders met, late and missing";

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    if (!answer.has(Tables.ORDERS)) {
      return;
    }
    answer.table(Tables.ORDERS).rows().forEach(row -> row(answer, row, ledger));
  }

  private static void row(WrittenAnswer answer, Table.Row row, Ledger ledger) {
    String option = row.text(Columns.OPTION);
    String product = row.text("product");
    int n = (int) row.number("order");
    Samples samples = answer.samples(option);
    List<PlantFacts> byDue =
        answer.plant(option).list("products." + product + ".orders").stream()
            .sorted(Comparator.comparing(order -> order.text("due").orElseThrow()))
            .toList();
    PlantFacts order = byDue.get(n - 1);
    double massT = order.amount("mass");
    ledger.same(ORDERS, row, order.text("due").orElseThrow(), row.text("due"));
    ledger.near(ORDERS, row, massT, row.number("mass_t"));
    years(samples, row, product, String.valueOf(n), ledger);
    double before = byDue.stream().limit(n - 1).mapToDouble(one -> one.amount("mass")).sum();
    charged(samples, row, order, new double[] {before, massT}, ledger);
  }

  private static void years(
      Samples samples, Table.Row row, String product, String n, Ledger ledger) {
    double[] met = samples.all(Measure.PRODUCT_ORDER_MET, product, n);
    double[] late = samples.all(Measure.PRODUCT_ORDER_LATE_DAYS, product, n);
    int onTime = 0;
    for (int year = 0; year < met.length; year++) {
      onTime += !Double.isNaN(met[year]) && late[year] == 0 ? 1 : 0;
    }
    ledger.near(ORDERS, row, met.length, row.number("years"));
    ledger.near(
        ORDERS,
        row,
        Arrays.stream(met).filter(day -> !Double.isNaN(day)).count(),
        row.number("met"));
    ledger.near(ORDERS, row, onTime, row.number("on_time"));
    ledger.near(ORDERS, row, Statistic.chanceLow(onTime, met.length), row.number("on_time_low_95"));
    ledger.near(
        ORDERS, row, Statistic.chanceHigh(onTime, met.length), row.number("on_time_high_95"));
    ledger.near(ORDERS, row, Statistic.of(met).quantile(0.5), row.number("met_day"));
    ledger.near(ORDERS, row, Statistic.of(late).mean(), row.number("late_days"));
    ledger.near(ORDERS, row, Statistic.of(late).quantile(0.95), row.number("late_days_95"));
  }

  /** Missing is what was not sold, where all that is made is fit to sell. */
  private static void charged(
      Samples samples, Table.Row row, PlantFacts order, double[] massT, Ledger ledger) {
    double[] soldT = samples.all(Measure.PRODUCT_SOLD, row.text("product"));
    double[] missingT =
        Arrays.stream(soldT)
            .map(sold -> Math.min(massT[1], Math.max(0, massT[0] + massT[1] - sold)))
            .toArray();
    ledger.near(
        ORDERS, row, Statistic.of(missingT).mean(), row.number("missing_t"), 1e-9 * massT[1]);
    double perDay = 24 * order.amount("late_penalty");
    ledger.near(ORDERS, row, perDay * row.number("late_days"), row.number("penalty"));
  }
}
