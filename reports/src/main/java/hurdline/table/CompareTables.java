package hurdline.table;

import static hurdline.table.SharedTables.row;
import static hurdline.table.SharedTables.table;

import hurdline.answer.CompareAnswer;
import hurdline.answer.LifeRow;
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
        "alternative,line,cause,hours,share,share_low_95,share_high_95,interval",
        answer.holders(),
        r ->
            row(
                r.option(), r.line(), r.cause(), r.hours(), r.share(), r.shareLow95(), r.shareHigh95(),
                r.interval()));
  }

  private Table payback() {
    return table(
        "payback.csv",
        "alternative,quantity,unit,mean,low_95,high_95,p05,p50,p95",
        answer.payback(),
        r ->
            row(
                r.option(), r.quantity().word(), r.unit(), r.mean(), r.low95(), r.high95(), r.p05(),
                r.p50(), r.p95()));
  }

  private Table lives() {
    return table(
        "service_lives.csv",
        "alternative,life,quantity,unit,value",
        () -> answer.lives().stream().flatMap(this::life));
  }

  private Stream<Object[]> life(LifeRow r) {
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
        "cash.csv",
        "alternative,year,unit,mean,p05,p50,p95",
        answer.cash(),
        r -> row(r.option(), r.year(), r.unit(), r.mean(), r.p05(), r.p50(), r.p95()));
  }
}
