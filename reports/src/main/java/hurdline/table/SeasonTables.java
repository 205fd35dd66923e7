package hurdline.table;

import static hurdline.table.SharedTables.table;

import hurdline.answer.ChangeoverRow;
import hurdline.answer.MachineWeekRow;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import java.util.ArrayList;
import java.util.List;

/** The tables of season plans; where other verbs have an option, a plan's name stands. */
public final class SeasonTables {
  private final SeasonAnswer answer;

  public SeasonTables(SeasonAnswer answer) {
    this.answer = answer;
  }

  public List<Table> all() {
    List<String> names = answer.plans().stream().map(SeasonAnswer.Plan::name).toList();
    List<Table> tables =
        new ArrayList<>(
            List.of(
                SharedTables.measures(names, answer.samples().of()),
                SharedTables.summary(answer.summary()),
                plans(),
                differences(),
                SharedTables.months(answer.months()),
                strips(),
                changeovers()));
    tables.addAll(SharedTables.adjusted(answer.adjusted()));
    tables.addAll(SharedTables.inputs(answer.inputs()));
    return tables;
  }

  private Table plans() {
    return table(
        "plans.csv",
        SummaryRow.class,
        "alternative,measure,unit,mean,low_95,high_95,interval",
        answer.figures());
  }

  private Table differences() {
    return table(
        "differences.csv",
        "alternative,against," + SharedTables.DIFFERENCE,
        answer.differences(),
        pair -> SharedTables.difference(pair.row(), pair.plan(), pair.against()));
  }

  private Table changeovers() {
    return table(
        "changeovers.csv",
        ChangeoverRow.class,
        "alternative,from,to,unit,worth,low_95,high_95,interval,significant",
        answer.avoided());
  }

  private Table strips() {
    return table(
        "machine_weeks.csv",
        MachineWeekRow.class,
        "alternative,machine,week,crop,hours,mass_in_t",
        answer.strips());
  }
}
