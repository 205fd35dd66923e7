package hurdline.table;

import static hurdline.table.SharedTables.row;
import static hurdline.table.SharedTables.table;

import hurdline.answer.SeasonAnswer;
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
    List<Table> tables = new ArrayList<>(List.of(
        SharedTables.measures(names, answer.samples().of()),
        SharedTables.summary(answer.summary()),
        plans(),
        differences(),
        SharedTables.months(answer.months()),
        strips(),
        changeovers()));
    tables.addAll(SharedTables.adjusted(answer.adjusted()));
    return tables;
  }

  private Table plans() {
    return table(
        "plans.csv",
        "alternative,measure,unit,mean,low_95,high_95,interval",
        answer.figures(),
        r -> row(r.option(), r.measure(), r.unit(), r.mean(), r.low95(), r.high95(), r.interval()));
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
        "alternative,from,to,unit,worth,low_95,high_95,interval,significant",
        answer.avoided(),
        r ->
            row(
                r.plan(), r.from(), r.to(), r.unit(), r.worth(), r.low95(), r.high95(), r.interval(),
                r.toldApart() ? "yes" : "no"));
  }

  private Table strips() {
    return table(
        "machine_weeks.csv",
        "alternative,machine,week,crop,hours,mass_in_t",
        answer.strips(),
        r -> row(r.plan(), r.machine(), r.week(), r.crop(), r.hours(), r.workedT()));
  }
}
