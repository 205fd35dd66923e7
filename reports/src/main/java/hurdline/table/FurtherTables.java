package hurdline.table;

import static hurdline.table.SharedTables.row;
import static hurdline.table.SharedTables.table;

import hurdline.answer.BreakEvenRow;
import hurdline.answer.FollowUps;
import hurdline.answer.Selection;
import java.util.ArrayList;
import java.util.List;

/** The tables of what is asked of a comparison besides; each only where it was asked. */
final class FurtherTables {
  private static final String TORNADO =
      "alternative,input,low,high,unit,net_present_value_at_low,net_present_value_at_high,net_present_value,swing";

  private final FollowUps further;

  FurtherTables(FollowUps further) {
    this.further = further;
  }

  List<Table> all() {
    List<Table> tables = new ArrayList<>();
    if (further.best().isAsked()) {
      tables.add(best());
    }
    if (!further.gains().isEmpty()) {
      tables.add(SharedTables.gain(further.gains()));
    }
    if (!further.tornado().isEmpty()) {
      tables.add(tornado());
    }
    if (!further.breakEven().isEmpty()) {
      tables.add(breakEven());
    }
    if (further.tornado().stream().anyMatch(row -> !Double.isNaN(row.afterTax()))) {
      tables.add(tornadoAfterTax());
    }
    if (further.breakEven().stream()
        .anyMatch(row -> !Double.isNaN(row.netPresentValueAfterTax()))) {
      tables.add(breakEvenAfterTax());
    }
    return tables;
  }

  private Table best() {
    Selection best = further.best();
    return table(
        "selection.csv",
        "alternative,measure,unit,mean,replications,left",
        best.rows(),
        r ->
            row(
                r.option(),
                best.measure(),
                best.unit(),
                r.mean(),
                r.replications(),
                r.left() ? "yes" : "no"));
  }

  private Table tornado() {
    return table(
        "tornado.csv",
        TORNADO,
        further.tornado(),
        r ->
            row(
                r.option(),
                r.input(),
                r.low(),
                r.high(),
                r.unit(),
                r.netPresentValueAtLow(),
                r.netPresentValueAtHigh(),
                r.netPresentValue(),
                r.swing()));
  }

  private Table tornadoAfterTax() {
    return table(
        "tornado_after_tax.csv",
        TORNADO,
        further.tornado(),
        r ->
            row(
                r.option(),
                r.input(),
                r.low(),
                r.high(),
                r.unit(),
                r.afterTaxAtLow(),
                r.afterTaxAtHigh(),
                r.afterTax(),
                r.swingAfterTax()));
  }

  private Table breakEvenAfterTax() {
    return table(
        "break_even_after_tax.csv",
        "alternative,input,unit,value,found",
        further.breakEven(),
        r ->
            row(
                r.option(),
                r.input(),
                r.unit(),
                r.valueAfterTax(),
                !Double.isNaN(r.valueAfterTax())));
  }

  private Table breakEven() {
    return table(
        "break_even.csv",
        BreakEvenRow.class,
        "alternative,input,unit,value,from,to,found",
        further.breakEven());
  }
}
