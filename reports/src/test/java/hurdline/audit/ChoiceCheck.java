package hurdline.audit;

import hurdline.plant.Change;
import hurdline.plant.Choice;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.Replication;
import hurdline.simulation.results.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The tables of a choice without bounds: what is said of the plans shown against last years
 * simulated here plan by plan, effects as pairs of these, and rounds, frontier and plans that went
 * out against each other.
 */
final class ChoiceCheck implements Check {
  static final String CHOSEN = "plans shown are the means of their last years";
  static final String EFFECTS = "effects are differences of the last years";
  static final String ROUNDS = "plans that went out are those that rounds lost";
  static final String FRONTIER = "the frontier is made of plans that are shown";

  /** 10 years choose, 10 + 20 + 40 + 80 + 160 + 320 judge, 320 are kept for all against all. */
  private static final int FIRST_LAST_YEAR = 1 + 10 + 630 + 320;

  private static final String MEASURE = "money.margin";

  private final PlantFile file;
  private final Map<String, double[]> years = new LinkedHashMap<>();

  ChoiceCheck(Path plant) {
    file = PlantFile.read(plant);
  }

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    Table choice = answer.table(Tables.CHOICE);
    choice.rows().forEach(row -> chosen(row, ledger));
    Table.Row named = choice.row(row -> row.is(Columns.STATUS, "named"));
    answer.table(Tables.EFFECTS).rows().forEach(row -> effect(row, choice, named, ledger));
    answer.table(Tables.FRONTIER).rows().forEach(row -> frontier(row, choice, ledger));
    rounds(answer, ledger);
  }

  private void chosen(Table.Row row, Ledger ledger) {
    Statistic last = Statistic.of(years(row));
    ledger.near(CHOSEN, row, last.mean(), row.number(Columns.MEAN));
    ledger.near(CHOSEN, row, last.limits().low(), row.number(Columns.LOW_95), 1e-3);
    ledger.near(CHOSEN, row, last.limits().high(), row.number(Columns.HIGH_95), 1e-3);
    ledger.near(CHOSEN, row, last.quantile(0.05), row.number(Columns.P05));
  }

  private void effect(Table.Row row, Table choice, Table.Row named, Ledger ledger) {
    Table.Row other = plan(choice, row.text(Columns.CHOSEN_PLAN));
    double[] mine = years(other);
    double[] best = years(named);
    double[] pairs = new double[mine.length];
    Arrays.setAll(pairs, year -> mine[year] - best[year]);
    Statistic of = Statistic.of(pairs);
    ledger.near(EFFECTS, row, of.mean(), row.number(Columns.DIFFERENCE), 1e-3);
    ledger.near(EFFECTS, row, of.limits().low(), row.number(Columns.LOW_95), 1e-3);
    ledger.near(EFFECTS, row, of.limits().high(), row.number(Columns.HIGH_95), 1e-3);
    ledger.near(
        EFFECTS,
        row,
        other.number(Columns.COST) - named.number(Columns.COST),
        row.number("cost_difference"));
  }

  private static void frontier(Table.Row row, Table choice, Ledger ledger) {
    if (row.text(Columns.CHOSEN_PLAN).isEmpty()) {
      return;
    }
    Table.Row shown = plan(choice, row.text(Columns.CHOSEN_PLAN));
    for (String column :
        List.of(Columns.COST, Columns.MEAN, Columns.LOW_95, Columns.HIGH_95, Columns.P05)) {
      ledger.near(FRONTIER, row, shown.number(column), row.number(column));
    }
    double budget = row.number("budget");
    ledger.same(FRONTIER, row, false, row.number(Columns.COST) > budget);
  }

  /** Without a budget: how many were judged, and how many each round lost. */
  private static void rounds(WrittenAnswer answer, Ledger ledger) {
    List<Table.Row> plans = answer.table(Tables.SCREENED).rows().toList();
    long left =
        plans.stream()
            .filter(row -> List.of("named", "left", "out").contains(row.text(Columns.STATUS)))
            .count();
    for (Table.Row round : answer.table(Tables.ROUNDS).rows("budget", "").toList()) {
      List<Table.Row> out =
          plans.stream()
              .filter(row -> row.is(Columns.STATUS, "out"))
              .filter(row -> row.is("round", round.text("round")))
              .toList();
      left -= out.size();
      ledger.near(ROUNDS, round, left, round.number("left"));
      for (Table.Row plan : out) {
        ledger.same(ROUNDS, plan, round.text("leader"), plan.text("against"));
        ledger.between(ROUNDS, plan, -Double.MAX_VALUE, plan.number("limit"), 0);
        ledger.between(
            ROUNDS, plan, -Double.MAX_VALUE, plan.number("difference"), plan.number("limit"));
      }
    }
  }

  private static Table.Row plan(Table table, String plan) {
    return table.row(row -> row.is(Columns.CHOSEN_PLAN, plan));
  }

  /** The last years of a plan of choice.csv, less the yearly cost of what it buys. */
  private double[] years(Table.Row row) {
    return years.computeIfAbsent(row.text(Columns.CHOSEN_PLAN), plan -> simulated(row));
  }

  private double[] simulated(Table.Row row) {
    List<Change> changes = new ArrayList<>();
    for (Choice choice : file.choices().all()) {
      choice.values().stream()
          .filter(value -> row.is("choice." + choice.name(), value.text()))
          .forEach(value -> changes.addAll(value.changes()));
    }
    Replication replication =
        CompiledPlant.of(file.variants().with(changes.toArray(Change[]::new))).replication();
    int count = (int) row.number(Columns.REPLICATIONS);
    return IntStream.range(FIRST_LAST_YEAR, FIRST_LAST_YEAR + count)
        .mapToDouble(
            year ->
                margin(replication.run(new RandomStreams(1), year, null))
                    - row.number("yearly_cost"))
        .toArray();
  }

  private static double margin(Outcome outcome) {
    List<String> names = outcome.columns().stream().map(Outcome.Column::name).toList();
    return outcome.values()[names.indexOf(MEASURE)];
  }
}
