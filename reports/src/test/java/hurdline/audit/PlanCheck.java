package hurdline.audit;

import com.google.gson.JsonObject;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import hurdline.measure.State;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What only season plans have: machines by week and crop, finished crops, what is left over,
 * changeovers.
 */
final class PlanCheck implements Check {
  static final String WEEKS = "machines by week and crop";
  static final String FINISHED = "finished crops";
  static final String FORGONE = "margin of what is left over";
  static final String CHANGEOVERS = "changeovers avoided";
  static final String VERDICT = "the best plan";

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    weeks(answer, ledger);
    for (String plan : answer.options()) {
      Samples samples = answer.samples(plan);
      samples
          .each()
          .forEach(
              at ->
                  lines(
                      samples,
                      at,
                      plan + " replication " + (at + 1) + " ",
                      answer.plant(plan),
                      ledger));
    }
    answer.table(Tables.CHANGEOVERS).rows().forEach(row -> changeover(row, ledger));
    verdict(answer, ledger);
  }

  private record Of(String plan, String machine, String crop) {}

  private static void weeks(WrittenAnswer answer, Ledger ledger) {
    Map<Of, double[]> sums = new LinkedHashMap<>();
    answer
        .table(Tables.MACHINE_WEEKS)
        .rows()
        .forEach(
            row -> {
              Of of =
                  new Of(row.text(Columns.PLAN), row.text(Columns.MACHINE), row.text(Columns.CROP));
              double[] sum = sums.computeIfAbsent(of, first -> new double[2]);
              sum[0] += row.number(Columns.HOURS);
              sum[1] += row.number(Columns.WORKED_T);
            });
    sums.forEach(
        (of, sum) -> {
          Samples samples = answer.samples(of.plan());
          double hours = 0;
          for (State state : new State[] {State.SLOWED, State.FULL_RATE}) {
            String measure = Measure.MACHINE_CROP_HOURS.of(of.machine(), of.crop(), state.word());
            hours += samples.statistic(measure).mean();
          }
          double mass =
              samples.statistic(Measure.MACHINE_CROP_MASS_IN.of(of.machine(), of.crop())).mean();
          ledger.near(WEEKS, of + " hours", hours, sum[0]);
          ledger.near(WEEKS, of + " mass", mass, sum[1]);
        });
  }

  private static void lines(
      Samples samples, int replication, String where, PlantFacts plant, Ledger ledger) {
    boolean all = true;
    double forgone = 0;
    for (String line : samples.names(Measure.SEASON_LINE_FINISHED)) {
      double left = samples.at(replication, Measure.SEASON_LEFT_OVER, line);
      all &= left == 0;
      ledger.near(
          FINISHED,
          where + line,
          left == 0 ? 1 : 0,
          samples.at(replication, Measure.SEASON_LINE_FINISHED, line));
      ended(samples, replication, line, where, ledger);
      if (samples.has(Measure.SEASON_MARGIN_FORGONE.of(line))) {
        double fed = samples.at(replication, Measure.INTAKE_FED, MassCheck.crop(plant, line));
        double margin = samples.at(replication, Measure.MONEY_LINE_MARGIN, line);
        double ofLine = left == 0 ? 0 : margin / fed * left;
        ledger.near(
            FORGONE,
            where + line,
            ofLine,
            samples.at(replication, Measure.SEASON_MARGIN_FORGONE, line));
        forgone += Math.max(0, ofLine);
      }
    }
    ledger.near(FINISHED, where, all ? 1 : 0, samples.at(replication, Measure.SEASON_FINISHED));
    double less = samples.at(replication, Measure.MONEY_MARGIN_LESS_FORGONE);
    ledger.near(FORGONE, where, samples.at(replication, Measure.MONEY_MARGIN) - forgone, less);
  }

  /**
   * A line that has several campaigns ends with the last shift of whichever was the last to have
   * one.
   */
  private static void ended(
      Samples samples, int replication, String line, String where, Ledger ledger) {
    double last = Double.NaN;
    for (MeasureName match : samples.matches(Measure.SEASON_NTH_ENDED)) {
      double ended =
          samples.at(
              replication, Measure.SEASON_NTH_ENDED.of(match.names().toArray(String[]::new)));
      if (match.names().get(0).equals(line) && (Double.isNaN(last) || ended > last)) {
        last = ended;
      }
    }
    if (!Double.isNaN(last)) {
      ledger.near(
          FINISHED,
          where + line + " ended",
          last,
          samples.at(replication, Measure.SEASON_ENDED, line));
    }
  }

  private static void changeover(Table.Row row, Ledger ledger) {
    double low = row.number(Columns.LOW_95);
    double high = row.number(Columns.HIGH_95);
    ledger.between(CHANGEOVERS, row, low, row.number(Columns.WORTH), high);
    ledger.same(
        CHANGEOVERS, row, low > 0 || high < 0 ? "yes" : "no", row.text(Columns.SIGNIFICANT));
  }

  private static void verdict(WrittenAnswer answer, Ledger ledger) {
    JsonObject verdict = answer.record().getAsJsonObject("verdict");
    ledger.same(
        VERDICT, "margin", best(answer, Measure.MONEY_MARGIN), verdict.get("margin").getAsString());
    String less = best(answer, Measure.MONEY_MARGIN_LESS_FORGONE);
    ledger.same(
        VERDICT, "margin less that forgone", less, verdict.get("less_forgone").getAsString());
  }

  /** The plan with the highest mean; of those that differ by rounding the first. */
  private static String best(WrittenAnswer answer, Measure measure) {
    String best = null;
    double most = Double.NEGATIVE_INFINITY;
    for (String plan : answer.options()) {
      double mean = answer.samples(plan).statistic(measure.of()).mean();
      if (mean > most + 1e-9 * Math.abs(mean)) {
        most = mean;
        best = plan;
      }
    }
    return best;
  }
}
