package hurdline.text;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import hurdline.unit.Counted;
import java.util.List;

/** What became of each order: in how many years it was met, when, and what it cost to be late. */
public final class OrderRecord {
  private final List<OrderRow> orders;
  private final String currency;
  private final Wording wording;

  public OrderRecord(RunAnswer answer, Wording wording) {
    orders = answer.orders();
    currency = answer.header().currency();
    this.wording = wording;
  }

  /** A sentence for each order, without a stop at its end. */
  public List<String> sentences() {
    return orders.stream().map(this::told).toList();
  }

  private String told(OrderRow row) {
    String late = row.lateDays() > 0 ? ", " + days(row.lateDays()) + " days late on average" : "";
    String paid =
        row.penalty() > 0 ? ", at " + wording.rough(row.penalty(), currency) + " a year" : "";
    String missing =
        row.missingT() > 0
            ? "; " + wording.rough(row.missingT(), "t") + " are missing on average"
            : "";
    return wording.titles().product(row.product())
        + ", "
        + wording.asGiven(row.massT(), "t")
        + " due "
        + wording.date(row.due())
        + ": on time in "
        + wording.count(row.onTime())
        + " of "
        + years(row.years())
        + (row.met() == row.onTime() ? "" : ", met in " + wording.count(row.met()))
        + late
        + paid
        + missing;
  }

  private String years(int count) {
    return Counted.of(count, wording.count(count), "year");
  }

  private String days(double days) {
    return wording.fixed(days, 1, "d");
  }
}
