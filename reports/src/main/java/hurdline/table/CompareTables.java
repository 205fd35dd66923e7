package hurdline.table;

import static hurdline.table.SharedTables.row;
import static hurdline.table.SharedTables.table;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.BottleneckRow;
import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow;
import hurdline.answer.ServiceLifeRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The tables of a comparison. */
public final class CompareTables {
  private final CompareAnswer answer;

  public CompareTables(CompareAnswer answer) {
    this.answer = answer;
  }

  /** All that a comparison writes; those of what is asked besides only where it was asked. */
  public List<Table> all() {
    List<Table> tables =
        new ArrayList<>(
            List.of(
                SharedTables.measures(answer.plants(), answer.samples().of()),
                SharedTables.summary(answer.summary()),
                differences(),
                holders(),
                SharedTables.months(answer.months()),
                payback(),
                lives(),
                cash()));
    tables.addAll(SharedTables.adjusted(answer.adjusted()));
    tables.addAll(SharedTables.inputs(answer.inputs()));
    if (!answer.afterTax().isEmpty()) {
      tables.add(afterTax());
    }
    tables.addAll(new FurtherTables(answer.further()).all());
    return tables;
  }

  private Table differences() {
    return table(
        "differences.csv",
        "alternative," + SharedTables.DIFFERENCE,
        answer.differences(),
        r -> SharedTables.difference(r, r.option()));
  }

  private Table holders() {
    return table(
        "bottlenecks.csv",
        BottleneckRow.class,
        "alternative,line,cause,hours,share,share_low_95,share_high_95,interval",
        answer.holders());
  }

  private Table payback() {
    return table(
        "payback.csv",
        PaybackRow.class,
        "alternative,quantity,unit,mean,low_95,high_95,p05,p50,p95",
        answer.payback());
  }

  private Table lives() {
    return table(
        "service_lives.csv",
        "alternative,life,quantity,unit,value",
        () -> answer.lives().stream().flatMap(this::life));
  }

  private Stream<Object[]> life(ServiceLifeRow r) {
    String currency = answer.header().currency();
    return Stream.of(
        row(r.option(), r.life(), "net_present_value", currency, r.netPresentValue()),
        row(r.option(), r.life(), "internal_rate_of_return", "share", r.internalRate()),
        row(r.option(), r.life(), "other_internal_rate", "share", r.otherRate()),
        row(r.option(), r.life(), "simple_payback", "yr", r.simplePayback()),
        row(r.option(), r.life(), "discounted_payback", "yr", r.discountedPayback()));
  }

  private Table cash() {
    return table(
        "cash.csv", CashRow.class, "alternative,year,unit,mean,p05,p50,p95", answer.cash());
  }

  private Table afterTax() {
    return table(
        "after_tax.csv",
        AfterTaxRow.class,
        "alternative,year,unit,added,salvage,interest,repayment,depreciation,tax,left",
        answer.afterTax());
  }
}
