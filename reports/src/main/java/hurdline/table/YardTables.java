package hurdline.table;

import static hurdline.table.SharedTables.table;

import hurdline.answer.AcresRow;
import hurdline.answer.LoadRow;
import hurdline.answer.PeakRow;
import hurdline.answer.SummaryRow;
import hurdline.answer.YardAnswer;
import hurdline.answer.YardLevelRow;
import hurdline.answer.YardSizeRow;
import java.util.ArrayList;
import java.util.List;

/** The tables of a yard's sizing. */
public final class YardTables {
  private final YardAnswer answer;

  public YardTables(YardAnswer answer) {
    this.answer = answer;
  }

  public List<Table> all() {
    List<Table> tables =
        new ArrayList<>(
            List.of(
                SharedTables.measures(options(), answer.samples().of()),
                SharedTables.summary(answer.summary()),
                peaks(),
                capacity(),
                levels()));
    if (answer.cheapest().isPresent()) {
      tables.add(cheapest());
    }
    if (!answer.loads().isEmpty()) {
      tables.add(loads());
    }
    if (!answer.acres().isEmpty()) {
      tables.add(acres());
    }
    if (!answer.gains().isEmpty()) {
      tables.add(SharedTables.gain(answer.gains()));
    }
    tables.addAll(SharedTables.inputs(answer.inputs()));
    return tables;
  }

  private List<String> options() {
    return answer.summary().stream().map(SummaryRow::option).distinct().toList();
  }

  private Table peaks() {
    return table(
        "peaks.csv", PeakRow.class, "crop,quantile,unit,value,low_95,high_95", answer.peaks());
  }

  private Table capacity() {
    return table(
        "yard_sizes.csv",
        YardSizeRow.class,
        "bales,area_m2,chance_of_overflow,low_95,high_95,held_at_field_bales,lost_t,truck_waiting_d,"
            + "money_per_year,money_low_95,money_high_95,ground_per_year,waiting_per_year,margin_below_no_limit,"
            + "receiving_wages",
        answer.capacity());
  }

  private Table cheapest() {
    return table(
        "cheapest.csv",
        YardSizeRow.class,
        "bales,money_above_cheapest,low_joint,high_joint,significant",
        answer.capacity());
  }

  private Table acres() {
    return table(
        "acres.csv",
        AcresRow.class,
        "area_factor,acres,chance_finished,low_95,high_95,left_over_bales",
        answer.acres());
  }

  private Table loads() {
    return table(
        "loads.csv",
        LoadRow.class,
        "date,clock,field,bales,weight_t,moisture,dry_t",
        answer.loads());
  }

  private Table levels() {
    return table(
        "yard_levels.csv",
        YardLevelRow.class,
        "date,crop,place,unit,mean,p05,p50,p95",
        answer.levels());
  }
}
