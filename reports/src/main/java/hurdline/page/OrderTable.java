package hurdline.page;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.text.Wording;

/** What became of each order, a row each. */
final class OrderTable {
  private final RunAnswer answer;
  private final Wording wording;

  OrderTable(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  Chart.Grid grid() {
    String currency = answer.header().currency();
    GridColumns<OrderRow> columns =
        new GridColumns<OrderRow>(wording)
            .text("order", row -> wording.titles().product(row.product()) + " " + row.order())
            .number("ordered", 1, "t", OrderRow::massT)
            .text("due", row -> wording.date(row.due()))
            .text("on time in % of years", this::onTime)
            .text("met, in years", row -> wording.count(row.met()))
            .text("met on, median", this::metOn)
            .number("late, mean", 1, "d", OrderRow::lateDays)
            .number("late, 95th percentile", 1, "d", OrderRow::lateDays95)
            .number("missing", 1, "t", OrderRow::missingT);
    if (!currency.isEmpty()) {
      columns.number("penalty", 0, currency, OrderRow::penalty);
    }
    return columns.of(answer.orders());
  }

  private String onTime(OrderRow row) {
    double share = (double) row.onTime() / row.years();
    return wording.cell(share, row.onTimeLow95(), row.onTimeHigh95(), "share");
  }

  private String metOn(OrderRow row) {
    return row.metDay() > 0
        ? wording.date(answer.header().from().plusDays(Math.round(row.metDay()) - 1))
        : "never";
  }
}
