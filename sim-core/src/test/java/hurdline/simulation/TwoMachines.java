package hurdline.simulation;

import hurdline.plant.Plant;
import java.util.Arrays;

/**
 * Two machines with a bin between, each with one stop: exponential repairs, and amounts between
 * stops that are sums of {@code stages} exponential ones (Erlang's law). The first is never short
 * of bales, the second never held.
 *
 * @param counted {@code worked}, so that a slowed machine's stops come later in proportion, or
 *     {@code calendar}
 * @param first the machine before the bin
 */
record TwoMachines(String counted, int stages, Unit first, Unit second, double holdsT) {

  /** A machine: its rate, hours at full rate between stops, and minutes of repair. */
  record Unit(double tPerH, double betweenH, double repairMin) {
    String says() {
      return digits(tPerH) + " t/h (" + digits(betweenH) + " h, " + digits(repairMin) + " min)";
    }

    private static String digits(double value) {
      return new java.math.BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    Unit withRepair(double min) {
      return new Unit(tPerH, betweenH, min);
    }
  }

  TwoMachines withHolds(double t) {
    return new TwoMachines(counted, stages, first, second, t);
  }

  TwoMachines withFirst(Unit unit) {
    return new TwoMachines(counted, stages, unit, second, holdsT);
  }

  TwoMachines withStages(int count) {
    return new TwoMachines(counted, count, first, second, holdsT);
  }

  /** The line turned end to end: the same throughput, its levels mirrored. */
  TwoMachines turned() {
    return new TwoMachines(counted, stages, second, first, holdsT);
  }

  boolean byWork() {
    return counted.equals("mass");
  }

  String says() {
    return first.says()
        + ", bin "
        + Unit.digits(holdsT)
        + " t, "
        + second.says()
        + (stages > 1 ? ", shape " + stages : "");
  }

  /**
   * What the mathematics says: throughput in t/h, mean level in t, shares of time that the bin is
   * empty and full.
   */
  double[] reference() {
    return reference(false);
  }

  /**
   * The same, or for a control what a line would do that is wrong in one thing.
   *
   * @param forgets a machine begins a new amount when its neighbour's repair lets it go on from
   *     standing still
   */
  double[] reference(boolean forgets) {
    int each = stages + 1;
    int states = each * each;
    double[] speed = new double[states];
    double[][] between = new double[states][states];
    double[][] atEmpty = new double[states][states];
    double[][] atFull = new double[states][states];
    for (int s = 0; s < states; s++) {
      double u = s / each > 0 ? first.tPerH : 0;
      double v = s % each > 0 ? second.tPerH : 0;
      speed[s] = u - v;
      rates(between[s], s, u, v);
      rates(atEmpty[s], s, u, byWork() ? Math.min(u, v) : v);
      rates(atFull[s], s, byWork() ? Math.min(u, v) : u, v);
      if (forgets && s / each > 0 && s % each == 0) {
        move(atFull[s], s + 1, each + 1);
      } else if (forgets && s / each == 0 && s % each > 0) {
        move(atEmpty[s], s + each, each + 1);
      }
    }
    FluidBin bin = new FluidBin(holdsT, speed, between, atEmpty, atFull);
    double tPerH = 0;
    for (int s = 0; s < states; s++) {
      double u = s / each > 0 ? first.tPerH : 0;
      double v = s % each > 0 ? second.tPerH : 0;
      tPerH += (bin.inside[s] + bin.full[s]) * v + bin.empty[s] * Math.min(u, v);
    }
    double empty = Arrays.stream(bin.empty).sum();
    double full = Arrays.stream(bin.full).sum();
    return new double[] {tPerH, bin.meanLevel(), empty, full};
  }

  private static void move(double[] row, int from, int to) {
    double rate = row[from];
    row[from] = 0;
    row[to] = rate;
  }

  /**
   * Rates out of a state; part 0 of a machine is its stop, parts from 1 its stages, used up by its
   * count.
   */
  private void rates(double[] row, int s, double u, double v) {
    int each = stages + 1;
    int a = s / each;
    int b = s % each;
    leave(row, s, a, each, first, u);
    leave(row, s, b, 1, second, v);
  }

  private void leave(double[] row, int s, int part, int weight, Unit unit, double tPerH) {
    if (part == 0) {
      row[s + weight] += 60 / unit.repairMin;
    } else {
      double pace = byWork() ? tPerH / unit.tPerH : 1;
      int to = part == stages ? s - part * weight : s + weight;
      row[to] += pace * stages / unit.betweenH;
    }
  }

  Plant plant(int years) {
    return TestPlant.oneLine()
        .days("2027-01-01", 2026 + years + "-12-31")
        .says("crops", "{stalk: {bale: {mass: 100000000 t}, composition: {fiber: 100 %}}}")
        .says(
            "machines",
            "{feeder: {kind: bale-feeder, %s}, between: {kind: bin, holds: %s t}, opener: {kind: conveyor, %s}}",
            fault(first),
            holdsT,
            fault(second))
        .steps(
            "feeder: {rate: %s t/h, to: between}, between: {to: opener}, opener: {rate: %s t/h, to: tow}"
                .formatted(first.tPerH, second.tPerH))
        .says("yard", "{on_hand: {stalk: 3 bales}, places: {barn: {holds: 10 bales}}}")
        .plant();
  }

  private String fault(Unit unit) {
    return "stops: {fault: {every: %s, counted: %s, lasts: {exponential: {mean: %s min}}, repair: any-time}}"
        .formatted(every(unit), counted, unit.repairMin);
  }

  private String every(Unit unit) {
    double mean = byWork() ? unit.betweenH * unit.tPerH : unit.betweenH;
    String measure = byWork() ? " t" : " h";
    if (stages == 1) {
      return "{exponential: {mean: " + mean + measure + "}}";
    }
    return "{gamma: {mean: "
        + mean
        + measure
        + ", sd: "
        + mean / Math.sqrt(stages)
        + measure
        + "}}";
  }
}
