package hurdline.table;

import static hurdline.table.SharedTables.row;
import static hurdline.table.SharedTables.table;

import hurdline.answer.CapacityRow;
import hurdline.answer.SummaryRow;
import hurdline.answer.YardAnswer;
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
    return tables;
  }

  private List<String> options() {
    return answer.summary().stream().map(SummaryRow::option).distinct().toList();
  }

  private Table peaks() {
    return table(
        "peaks.csv",
        "crop,quantile,unit,value,low_95,high_95",
        answer.peaks(),
        r -> row(r.crop(), r.quantile(), r.unit(), r.value(), r.low95(), r.high95()));
  }

  private Table capacity() {
    return table(
        "yard_sizes.csv",
        "bales,area_m2,chance_of_overflow,low_95,high_95,held_at_field_bales,lost_t,truck_waiting_d,"
            + "money_per_year,money_low_95,money_high_95,ground_per_year,waiting_per_year,margin_below_no_limit,"
            + "receiving_wages",
        answer.capacity(),
        YardTables::capacity);
  }

  private static Object[] capacity(CapacityRow r) {
    return row(
        r.bales(),
        r.areaM2(),
        r.chance(),
        r.low95(),
        r.high95(),
        r.heldAtField(),
        r.lostT(),
        r.waitingD(),
        r.cost().perYear(),
        r.cost().low95(),
        r.cost().high95(),
        r.cost().ground(),
        r.cost().waiting(),
        r.cost().marginBelow(),
        r.cost().receiving());
  }

  private Table cheapest() {
    return table(
        "cheapest.csv",
        "bales,money_above_cheapest,low_joint,high_joint,significant",
        answer.capacity(),
        r -> cheapest(r.bales(), r.cost().above()));
  }

  private static Object[] cheapest(double bales, CapacityRow.Cost.Above above) {
    return row(bales, above.money(), above.low(), above.high(), above.toldApart() ? "yes" : "no");
  }

  private Table acres() {
    return table(
        "acres.csv",
        "area_factor,acres,chance_finished,low_95,high_95,left_over_bales",
        answer.acres(),
        r -> row(r.times(), r.acres(), r.chance(), r.low95(), r.high95(), r.leftOver()));
  }

  private Table loads() {
    return table(
        "loads.csv",
        "date,clock,field,bales,weight_t,moisture,dry_t",
        answer.loads(),
        r -> row(r.date(), r.clock(), r.field(), r.bales(), r.weightT(), r.moisture(), r.dryT()));
  }

  private Table levels() {
    return table(
        "yard_levels.csv",
        "date,crop,place,unit,mean,p05,p50,p95",
        answer.levels(),
        r -> row(r.date(), r.crop(), r.place(), r.unit(), r.mean(), r.p05(), r.p50(), r.p95()));
  }
}
