package hurdline.audit;

import java.util.List;

/**
 * A purchase after loan and tax, recomputed year by year from the plant file alone and from what
 * each year adds: interest on what is owed, the rest of the even payment repaid, straight-line
 * depreciation, tax, and what that is worth. For calendars of a year, which pay at the years' ends.
 */
final class AfterTaxYears {
  private final WrittenAnswer answer;
  private final String option;
  private final Ledger ledger;
  private final PlantFacts plant;
  private final double yr = Amount.of("1 yr");

  AfterTaxYears(WrittenAnswer answer, String option, Ledger ledger) {
    this.answer = answer;
    this.option = option;
    this.ledger = ledger;
    plant = answer.plant(option);
  }

  void compare() {
    if (!answer.has(Tables.AFTER_TAX)) {
      return;
    }
    List<Table.Row> years = answer.table(Tables.AFTER_TAX).rows(Columns.OPTION, option).toList();
    String path = "options." + option;
    double cost = plant.amount(path + ".cost");
    String loan = plant.has(path + ".loan") ? path + ".loan" : "money.loan";
    double borrowed = cost * plant.amount(loan + ".share");
    double rate = plant.amount(loan + ".rate") * yr;
    double term = plant.amount(loan + ".term") / yr;
    double payment = borrowed * rate / (1 - Math.pow(1 + rate, -term));
    double over = plant.amount("money.tax.depreciation.over") / yr;
    double discount = plant.amount("money.discount_rate") * yr;
    double owed = borrowed;
    double book = cost;
    double worth = borrowed - cost;
    for (int k = 1; k <= years.size(); k++) {
      Table.Row row = years.get(k - 1);
      boolean last = k == years.size();
      double interest = owed * rate;
      double repaid = last ? owed : payment - interest;
      double writtenOff = last ? book : cost / over;
      double salvage = last ? plant.amount(path + ".salvage") : 0;
      double added = row.number("added");
      double tax = plant.amount("money.tax.rate") * (added + salvage - interest - writtenOff);
      double left = added + salvage - interest - repaid - tax;
      near(row, "salvage", salvage);
      near(row, "interest", interest);
      near(row, "repayment", repaid);
      near(row, "depreciation", writtenOff);
      near(row, "tax", tax);
      near(row, "left", left);
      owed -= repaid;
      book -= writtenOff;
      worth += left * Math.pow(1 + discount, -k);
    }
    Table.Row row =
        answer
            .table(Tables.PAYBACK)
            .row(
                of ->
                    of.is(Columns.OPTION, option)
                        && of.is(Columns.QUANTITY, "net_present_value_after_tax"));
    ledger.near(WorthCheck.CASH, row, worth, row.number(Columns.MEAN), 1e-8 * cost);
  }

  private void near(Table.Row row, String column, double expected) {
    ledger.near(WorthCheck.CASH, row, expected, row.number(column), 1e-6);
  }
}
