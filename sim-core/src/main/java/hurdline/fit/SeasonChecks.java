package hurdline.fit;

import hurdline.answer.FitCheckRow;
import hurdline.plant.Delivery;
import hurdline.plant.Line;
import hurdline.plant.Plant;
import hurdline.records.MadeRecord;
import hurdline.records.Records;
import hurdline.records.TicketRecord;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the records say that no single key holds: shares of products, a season's yields, time at the
 * gate.
 */
final class SeasonChecks {
  private static final int FEWEST = 5;

  /** Of a kilogram a second. */
  private static final double T_PER_H = 3.6;

  /** Of a kilogram a square metre. */
  private static final double T_PER_HA = 10;

  private final Plant plant;
  private final Records records;
  private final LineLoads loads;

  SeasonChecks(Plant plant, Records records, LineLoads loads) {
    this.plant = plant;
    this.records = records;
    this.loads = loads;
  }

  /**
   * What each line made of what it was fed, beside what the file's shares make of it; errors by
   * weeks.
   */
  List<FitCheckRow> all() {
    List<FitCheckRow> checks = new ArrayList<>();
    StopClocks clocks = new StopClocks(plant, records, loads);
    for (Line line : plant.lines()) {
      Map<String, Double> fed = new LinkedHashMap<>();
      records.made().stream()
          .filter(row -> clocks.feeds(row, line))
          .forEach(row -> fed.merge(week(row.date()), clocks.fedKg(row), Double::sum));
      double total = fed.values().stream().mapToDouble(Double::doubleValue).sum();
      if (total > 0 && fed.size() >= FEWEST) {
        line.steps().stream()
            .filter(step -> step.packs().isPresent())
            .forEach(step -> checks.add(check(line, step, fed)));
      }
    }
    plant.lines().forEach(line -> checks.add(feedRate(line, clocks.fedByRunning(line))));
    plant.deliveries().forEach(delivery -> checks.addAll(seasons(delivery)));
    return checks.stream().filter(check -> check.rows() > 0).toList();
  }

  /**
   * What the feeder took in the hours in which no logged stop held it, error by shifts. Waits that
   * no log has, and a machine behind it that is slower, are in it: its rate is that or more.
   */
  private FitCheckRow feedRate(Line line, List<double[]> shifts) {
    double said =
        line.steps().stream()
            .filter(step -> step.machine().equals(line.feed()))
            .flatMapToDouble(step -> step.rateKgPerS().stream())
            .findFirst()
            .orElse(Double.NaN);
    Ratio rate =
        shifts.size() < FEWEST
            ? new Ratio(Double.NaN, Double.NaN)
            : Ratio.of(shifts.toArray(double[][]::new));
    return new FitCheckRow(
        "rate of " + line.feed() + " in " + line.name() + ", at least",
        "t/h",
        T_PER_H * said,
        T_PER_H * rate.value(),
        T_PER_H * rate.error(),
        shifts.size() < FEWEST ? 0 : shifts.size(),
        "not identified: waits that no log has, and slower machines behind it, are in it");
  }

  /** What one season came to: a draw of the file's distributions and no estimate of them. */
  private List<FitCheckRow> seasons(Delivery delivery) {
    List<FitCheckRow> checks = new ArrayList<>();
    List<TicketRecord> all =
        records.tickets().stream().filter(ticket -> ticket.crop().equals(delivery.crop())).toList();
    for (Delivery.Field field : delivery.fields()) {
      List<TicketRecord> own =
          all.stream().filter(ticket -> ticket.field().equals(field.name())).toList();
      double kg = own.stream().mapToDouble(TicketRecord::netKg).sum();
      String what = "yield of " + field.name() + ", on the file's area";
      String note = "one season is one draw of yield and yield_factor";
      checks.add(
          new FitCheckRow(
              what,
              "t/ha",
              T_PER_HA * field.yieldKgPerM2().mean(),
              T_PER_HA * kg / field.areaM2(),
              Double.NaN,
              own.size(),
              note));
    }
    double[] seconds =
        all.stream()
            .mapToDouble(ticket -> ticket.outS() - ticket.inS())
            .filter(s -> !Double.isNaN(s))
            .toArray();
    checks.add(
        time(
            "time at the gate of " + delivery.crop() + " loads",
            Double.NaN,
            seconds,
            "weighing, waiting, unloading and weighing together"));
    delivery
        .trucks()
        .ifPresent(
            trucks ->
                checks.add(
                    time(
                        "time from the gate back to it of each truck of " + delivery.crop(),
                        2 * trucks.driveS().mean() + trucks.load().lastsS().mean(),
                        JobFits.away(all),
                        "driving, waiting and loading together")));
    return checks;
  }

  private static FitCheckRow time(String what, double saidS, double[] seconds, String note) {
    int n = seconds.length;
    double mean = java.util.Arrays.stream(seconds).average().orElse(Double.NaN);
    double squares = java.util.Arrays.stream(seconds).map(s -> (s - mean) * (s - mean)).sum();
    double error = Math.sqrt(squares / Math.max(1, n - 1) / Math.max(1, n));
    return new FitCheckRow(what, "min", saidS / 60, mean / 60, error / 60, n, note);
  }

  private FitCheckRow check(Line line, hurdline.plant.Step step, Map<String, Double> fed) {
    List<String> products = StopClocks.products(line, step).stream().sorted().toList();
    Map<String, Double> made = new LinkedHashMap<>();
    int used = 0;
    for (MadeRecord row : records.made()) {
      if (!row.isFed() && products.contains(row.what()) && !Double.isNaN(row.massKg())) {
        made.merge(week(row.date()), row.massKg(), Double::sum);
        used++;
      }
    }
    Ratio share =
        Ratio.of(
            fed.keySet().stream()
                .map(week -> new double[] {made.getOrDefault(week, 0.0), fed.get(week)})
                .toArray(double[][]::new));
    return new FitCheckRow(
        String.join(", ", products) + " of what " + line.name() + " was fed",
        "%",
        100 * loads.of(line.name(), step.machine()),
        100 * share.value(),
        100 * share.error(),
        used,
        "no single key: composition, takes and breakage make it together");
  }

  private static String week(LocalDate date) {
    return date.get(IsoFields.WEEK_BASED_YEAR) + "-" + date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
  }
}
