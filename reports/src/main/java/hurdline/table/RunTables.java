package hurdline.table;

import static hurdline.table.SharedTables.table;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonRest;
import hurdline.answer.StoreLevelRow;
import hurdline.answer.Trace;
import hurdline.answer.WeekRow;
import hurdline.answer.YardLevelRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The tables of a run, each with the columns that other tables of the same name have under other
 * verbs.
 */
public final class RunTables {
  private final RunAnswer answer;

  public RunTables(RunAnswer answer) {
    this.answer = answer;
  }

  /**
   * All that a run writes; {@code store_levels.csv} and {@code orders.csv} only where there are
   * stores and orders, tables of the rest of a season where a part has been, {@code trace.csv}
   * where a trace was asked for.
   */
  public List<Table> all() {
    List<Table> tables =
        new ArrayList<>(List.of(measures(), summary(), weeks(), months(), levels()));
    tables.addAll(SharedTables.adjusted(answer.adjusted()));
    tables.addAll(SharedTables.inputs(answer.inputs()));
    if (!answer.stores().isEmpty()) {
      tables.add(stores());
    }
    if (!answer.orders().isEmpty()) {
      tables.add(orders());
    }
    tables.addAll(rest());
    if (!answer.trace().isEmpty()) {
      tables.add(trace());
    }
    return tables;
  }

  private Table measures() {
    return SharedTables.measures(List.of(answer.header().option()), List.of(answer.samples()));
  }

  private Table summary() {
    return SharedTables.summary(answer.summary());
  }

  private Table weeks() {
    return table(
        "weeks.csv",
        WeekRow.class,
        "alternative,week,from,measure,unit,mean,p05,p50,p95",
        answer.weeks());
  }

  private Table months() {
    return SharedTables.months(answer.months());
  }

  private Table levels() {
    return table(
        "yard_levels.csv",
        YardLevelRow.class,
        "alternative,date,crop,place,unit,mean,p05,p50,p95",
        answer.levels());
  }

  private Table stores() {
    return table(
        "store_levels.csv",
        StoreLevelRow.class,
        "alternative,date,store,mean,p05,p50,p95",
        answer.stores());
  }

  private Table orders() {
    return table(
        "orders.csv",
        OrderRow.class,
        "alternative,product,order,mass_t,due,years,met,on_time,on_time_low_95,on_time_high_95,met_day,"
            + "late_days,late_days_95,missing_t,penalty",
        answer.orders());
  }

  /** What has been of the season and when it will be done; only where a part has been. */
  private List<Table> rest() {
    SeasonRest rest = answer.rest();
    return rest.isGiven()
        ? List.of(
            table(
                "finish.csv",
                SeasonRest.Finish.class,
                "line,crop,hours,shift,by,years,finished,low_95,high_95,done_p50,done_p95,unit,left_mean,left_p05,left_p95,"
                    + "only_planned,only_this,significant",
                rest.finishes()),
            table(
                "whole_season.csv",
                SeasonRest.Quantity.class,
                "kind,of,unit,so_far,rest,whole,p05,p50,p95",
                rest.quantities()),
            table(
                "stock_on_hand.csv",
                SeasonRest.Stock.class,
                "crop,unit,counted,count,came,fed,on_hand",
                rest.stock()),
            table(
                "open_orders.csv",
                SeasonRest.OpenOrder.class,
                "product,due,mass_t,made_t,open_t",
                rest.orders()),
            table(
                "stop_ages.csv",
                SeasonRest.Age.class,
                "machine,stop,counted,age,unit",
                rest.ages()))
        : List.of();
  }

  private Table trace() {
    Trace trace = answer.trace();
    List<String> columns =
        new ArrayList<>(List.of("replication", "clock", "where", "what", "amount"));
    trace.heads().forEach(head -> columns.add("rate." + head));
    trace.bins().forEach(bin -> columns.add("level." + bin));
    return new Table(
        "trace.csv",
        columns,
        () -> trace.rows().stream().map(event -> traceRow(trace.replication(), event)));
  }

  private static Object[] traceRow(int replication, Trace.Row event) {
    List<Object> cells =
        new ArrayList<>(
            Arrays.asList(
                replication, event.clock(), event.where(), event.what().word(), event.amount()));
    Arrays.stream(event.rates()).forEach(cells::add);
    Arrays.stream(event.levels()).forEach(cells::add);
    return cells.toArray();
  }
}
