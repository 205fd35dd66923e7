package hurdline.audit;

import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * input_plants.csv: in how many plants of the draws something holds, from runs with the inputs of
 * each row said by {@code --set}, of which replication k counts where it takes that row.
 *
 * <p>An alternative pays at a row if the mean of its differences without draws, X, and the row's
 * mean m of what the draws change of them lie above its yearly cost; m is drawn to the mean of all
 * rows by √((B − W)/B) of the mean squares between and within rows. A line is done at a row if it
 * is so in at least half of the row's replications.
 */
final class InputPlantsCheck implements Check {
  static final String PAYS = "plants in which an alternative pays";
  static final String DONE = "plants in which a line is done";

  private final List<WrittenAnswer> ownRuns;

  /**
   * @param ownRuns by row of the draws
   */
  InputPlantsCheck(List<WrittenAnswer> ownRuns) {
    this.ownRuns = ownRuns;
  }

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    for (Table.Row row : answer.table(Tables.INPUT_PLANTS).rows().toList()) {
      if (row.is("holds", "pays")) {
        pays(answer, row, ledger);
      } else {
        done(answer, row, ledger);
      }
    }
  }

  private void pays(WrittenAnswer answer, Table.Row row, Ledger ledger) {
    String option = row.text(Columns.OPTION);
    String against = row.text(Columns.AGAINST);
    double[] given = margins(answer, option, against);
    List<List<Double>> byRow = new ArrayList<>();
    for (int at = 0; at < ownRuns.size(); at++) {
      double[] own = margins(ownRuns.get(at), option, against);
      List<Double> changed = new ArrayList<>();
      for (int k = at; k < given.length; k += ownRuns.size()) {
        changed.add(own[k] - given[k]);
      }
      byRow.add(changed);
    }
    double[] means = byRow.stream().mapToDouble(InputPlantsCheck::mean).toArray();
    double centre = Arrays.stream(means).average().orElseThrow();
    double kept = kept(byRow, means, centre);
    double costPerYr = costPerYr(answer.plant("base"), option);
    double mean = Arrays.stream(given).average().orElseThrow();
    long above =
        Arrays.stream(means).filter(m -> mean + centre + kept * (m - centre) > costPerYr).count();
    ledger.near(PAYS, row, costPerYr, row.number("cost_per_yr"));
    plants(PAYS, row, above, given.length, ledger);
    ledger.near(PAYS, row, 0, row.number("years_given"));
  }

  private void plants(String what, Table.Row row, long in, int replications, Ledger ledger) {
    ledger.near(what, row, in, row.number("in"));
    ledger.near(what, row, ownRuns.size(), row.number("plants"));
    ledger.near(what, row, replications / ownRuns.size(), row.number("years"));
  }

  private static double[] margins(WrittenAnswer answer, String option, String against) {
    double[] with = answer.samples(option).all(Measure.MONEY_MARGIN);
    double[] without = answer.samples(against).all(Measure.MONEY_MARGIN);
    double[] differences = new double[with.length];
    for (int at = 0; at < with.length; at++) {
      differences[at] = with[at] - without[at];
    }
    return differences;
  }

  private static double mean(List<Double> of) {
    return of.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static double kept(List<List<Double>> byRow, double[] means, double centre) {
    int count = 0;
    double within = 0;
    double between = 0;
    for (int at = 0; at < means.length; at++) {
      count += byRow.get(at).size();
      between += byRow.get(at).size() * Math.pow(means[at] - centre, 2) / (means.length - 1);
      for (double value : byRow.get(at)) {
        within += Math.pow(value - means[at], 2);
      }
    }
    within /= count - means.length;
    return between > within ? Math.sqrt((between - within) / between) : 0;
  }

  /** An even payment over its life; nothing for a change without a price. */
  private static double costPerYr(PlantFacts plant, String option) {
    String path = "options." + option;
    if (!plant.has(path + ".cost")) {
      return 0;
    }
    double years = plant.amount(path + ".life") / Amount.of("1 yr");
    double rate = plant.amount("money.discount_rate") * Amount.of("1 yr");
    double growth = Math.pow(1 + rate, years);
    double salvage = plant.has(path + ".salvage") ? plant.amount(path + ".salvage") : 0;
    return (plant.amount(path + ".cost") * growth - salvage) * rate / (growth - 1);
  }

  private void done(WrittenAnswer answer, Table.Row row, Ledger ledger) {
    String option = row.text(Columns.OPTION);
    String measure = Measure.SEASON_LEFT_OVER.of(row.text(Columns.LINE));
    ToDoubleFunction<Double> isDone = left -> left == 0 ? 1 : 0;
    double[] given = answer.samples(option).all(measure);
    long in = 0;
    for (int at = 0; at < ownRuns.size(); at++) {
      double[] own = ownRuns.get(at).samples(option).all(measure);
      int years = 0;
      double done = 0;
      for (int k = at; k < given.length; k += ownRuns.size()) {
        years++;
        done += isDone.applyAsDouble(own[k]);
      }
      in += 2 * done >= years ? 1 : 0;
    }
    plants(DONE, row, in, given.length, ledger);
    ledger.near(DONE, row, given.length, row.number("years_given"));
    double doneGiven = Arrays.stream(given).filter(left -> left == 0).count();
    ledger.near(DONE, row, doneGiven, row.number("done_given"));
  }
}
