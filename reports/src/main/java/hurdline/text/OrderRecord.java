package hurdline.text;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What became of each order: in how many years it was met, when, and what it cost to be late. */
public final class OrderRecord {
  private final List<OrderRow> orders;
  private final LocalDate firstDay;
  private final String currency;
  private final Wording wording;

  public OrderRecord(RunAnswer answer, Wording wording) {
    orders = answer.orders();
    firstDay = answer.header().from();
    currency = answer.header().currency();
    this.wording = wording;
  }

  public boolean isEmpty() {
    return orders.isEmpty();
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
    return wording.count(count) + (count == 1 ? " year" : " years");
  }

  private String days(double days) {
    return wording.fixed(days, 1, "d");
  }

  /** The columns of {@link #rows}. */
  public List<String> head() {
    List<String> head =
        new ArrayList<>(
            List.of(
                "order",
                wording.unit("t"),
                "due",
                "on time, % of years",
                "met, years of " + wording.count(orders.get(0).years()),
                "met on, median",
                "days late",
                "95th percentile",
                "missing " + wording.unit("t")));
    if (!currency.isEmpty()) {
      head.add("penalty " + currency);
    }
    return head;
  }

  public List<List<String>> rows() {
    return orders.stream().map(this::cells).toList();
  }

  private List<String> cells(OrderRow row) {
    double share = (double) row.onTime() / row.years();
    List<String> cells =
        new ArrayList<>(
            List.of(
                wording.titles().product(row.product()) + " " + row.order(),
                wording.asGiven(row.massT(), "t").replaceFirst(" \\S+$", ""),
                wording.date(row.due()),
                wording.cell(share, row.onTimeLow95(), row.onTimeHigh95(), "share"),
                wording.count(row.met()),
                row.metDay() > 0
                    ? wording.date(firstDay.plusDays(Math.round(row.metDay()) - 1))
                    : "never",
                days(row.lateDays()),
                days(row.lateDays95()),
                wording.fixed(row.missingT(), 1, "t")));
    if (!currency.isEmpty()) {
      cells.add(wording.fixed(row.penalty(), 0, currency));
    }
    return cells;
  }
}
