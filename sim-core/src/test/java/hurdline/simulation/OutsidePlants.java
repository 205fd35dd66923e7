package hurdline.simulation;

import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.statistics.Intervals;
import hurdline.statistics.PairedDifference;

/** Small plants whose answers are known, and those answers. */
final class OutsidePlants {
  private OutsidePlants() {}

  private static Plant plant(int days, String resources, String machines, String steps) {
    return TestPlant.oneLine()
        .days(days)
        .says("crops", "{stalk: {bale: {mass: 10000000 t}, composition: {fiber: 100 %}}}")
        .says("resources", resources)
        .says("machines", machines)
        .says("lines", "{stalk_line: {crop: stalk, feed: m1, steps: {" + steps + "}}}")
        .says("yard", "{on_hand: {stalk: 3 bales}, places: {barn: {holds: 10 bales}}}")
        .plant();
  }

  /** One machine, 10 t/h, its stop by the calendar. */
  static Plant alone(int days, String every, String lasts) {
    String machine =
        "{m1: {kind: bale-feeder, stops: {fault: {every: %s, counted: calendar, lasts: %s, repair: any-time}}}}";
    return plant(days, "{}", machine.formatted(every, lasts), "m1: {rate: 10 t/h, to: tow}");
  }

  /** Machines in a row at 10 t/h without bins, four years, all with the same stop. */
  static Plant mechanics(int machines, int mechanics, double betweenH, double repairMin) {
    StringBuilder all = new StringBuilder();
    StringBuilder steps = new StringBuilder();
    for (int m = 1; m <= machines; m++) {
      all.append("m").append(m).append(": {kind: ").append(m == 1 ? "bale-feeder" : "conveyor");
      all.append(", stops: {fault: {every: {exponential: {mean: ").append(betweenH);
      all.append(" h}}, counted: calendar, lasts: {exponential: {mean: ").append(repairMin);
      all.append(" min}}, repair: any-time, needs: mechanic}}}, ");
      steps.append("m").append(m).append(": {rate: 10 t/h, to: ");
      steps.append(m == machines ? "tow" : "m" + (m + 1)).append("}, ");
    }
    return plant(1461, "{mechanic: {count: " + mechanics + "}}", "{" + all + "}", steps.toString());
  }

  /** Three days of loads, then a day of work. */
  static Plant filling() {
    return TestPlant.oneLine()
        .days(4)
        .with("season.0.from", "2027-01-04")
        .feeds("1 t/h")
        .says("yard", "{places: {barn: {holds: 10000 bales}}}")
        .says(
            "deliveries",
            "{stalk: {loads: {every: {exponential: {mean: 1 h}}, bales: 2, to: 2027-01-03}}}")
        .plant();
  }

  /** Chances of 0, 1 … n machines down, by the birth and death of failures. */
  static double[] downOfMany(int machines, int mechanics, double between, double repair) {
    double[] chance = new double[machines + 1];
    chance[0] = 1;
    double all = 1;
    for (int k = 1; k <= machines; k++) {
      chance[k] = chance[k - 1] * (machines - k + 1) / between * repair / Math.min(k, mechanics);
      all += chance[k];
    }
    for (int k = 0; k <= machines; k++) {
      chance[k] /= all;
    }
    return chance;
  }

  /**
   * Expected hours up in the first T of a machine that is new at 0, up times and repairs
   * exponential.
   */
  static double upHours(double hours, double up, double repair) {
    double rate = 1 / up + 1 / repair;
    double available = up / (up + repair);
    return available * hours + (1 - available) * (1 - Math.exp(-rate * hours)) / rate;
  }

  /** Shares of studies, in percent, whose interval held the truth. */
  record Coverage(double meanPercent, double differencePercent, double jointPercent) {}

  static Coverage coverage(int studies, int replications, long seed) {
    Repeats.Simulator one =
        new Repeats.Simulator(
            alone(5, "{exponential: {mean: 2 h}}", "{exponential: {mean: 30 min}}"));
    Repeats.Simulator other =
        new Repeats.Simulator(
            alone(5, "{exponential: {mean: 2 h}}", "{exponential: {mean: 36 min}}"));
    double fed = 10 * upHours(120, 2, 0.5);
    double difference = 10 * upHours(120, 2, 0.6) - fed;
    double level = Intervals.jointLevel(0.95, 2);
    int[] held = new int[3];
    for (int s = 0; s < studies; s++) {
      Repeats a = one.simulate(new RandomStreams(seed + s), replications);
      Repeats b = other.simulate(new RandomStreams(seed + s), replications);
      double[] mass = a.of("machine.m1.mass_in");
      double[] starts = a.of("machine.m1.stop.fault.count");
      held[0] += Intervals.mean95(mass).covers(fed) ? 1 : 0;
      held[1] +=
          PairedDifference.of(mass, b.of("machine.m1.mass_in"), 1).at95().covers(difference)
              ? 1
              : 0;
      boolean both =
          Intervals.mean(mass, level).covers(fed) && Intervals.mean(starts, level).covers(fed / 20);
      held[2] += both ? 1 : 0;
    }
    return new Coverage(
        100.0 * held[0] / studies, 100.0 * held[1] / studies, 100.0 * held[2] / studies);
  }
}
