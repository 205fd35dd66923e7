package hurdline.simulation;

import hurdline.plant.Plant;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A yard in a window: loads of some bales as a Poisson stream, and a feeder that takes one bale an
 * hour while it has any.
 *
 * <p>Stationary formulas do not hold in a window. With N bales in yard, table and feeder, and a
 * bale in the feeder for an hour, what is there an hour later is N(t + 1 h) = max(N(t) − 1, 0) + A,
 * A the bales of that hour, at any t: who was in the feeder at t has left, who came since is still
 * there. From an empty start N(s) has the law of A(s) within the first hour, so its law at every
 * instant follows exactly; means over time are integrals over s by Gauss and Legendre.
 *
 * @see "The relation: Kendall, Annals of Mathematical Statistics 24 (1953), 338-354, for the queue
 *     M/G/1 (from memory)"
 */
record DrainedYard(int onHand, int loadBales, double loadsPerH, int hours) {
  /** In the feeder and on its table of one place. */
  private static final int AHEAD = 2;

  private static final GaussIntegrator OVER_AN_HOUR =
      new GaussIntegratorFactory().legendre(24, 0, 1);

  /** Bales of 1 t, drawn at 1 t/h round the clock. */
  Plant plant() {
    return TestPlant.oneLine()
        .days(hours / 24)
        .says("crops", "{stalk: {bale: {mass: 1 t}, composition: {fiber: 100 %}}}")
        .says("machines", "{feeder: {kind: bale-feeder, feed_table: 1 bales}}")
        .feeds("1 t/h")
        .with("yard.on_hand.stalk", onHand + " bales")
        .says(
            "deliveries",
            "{stalk: {loads: {every: {exponential: {mean: %s h}}, bales: %d}}}",
            1 / loadsPerH,
            loadBales)
        .plant();
  }

  /** Mean hours of the window in which the feeder has nothing, from an empty start. */
  double hoursWithoutBales() {
    return integral(n -> n == 0 ? 1 : 0);
  }

  /** Mean number in the yard over the window, from an empty start. */
  double meanLevel() {
    return integral(n -> Math.max(0, n - AHEAD)) / hours;
  }

  /** Mean over the window's hours of a figure of N, from an empty start. */
  private double integral(IntToDoubleFunction figure) {
    return OVER_AN_HOUR.integrate(
        s -> {
          double[] chance = bales(s);
          double sum = 0;
          for (int hour = 0; hour < hours; hour++) {
            for (int n = 0; n < chance.length; n++) {
              sum += chance[n] * figure.applyAsDouble(n);
            }
            chance = anHourLater(chance);
          }
          return sum;
        });
  }

  private double[] anHourLater(double[] chance) {
    double[] come = bales(1);
    double[] later = new double[chance.length];
    for (int n = 0; n < chance.length; n++) {
      for (int a = 0; a < come.length && a + Math.max(n - 1, 0) < later.length; a += loadBales) {
        later[a + Math.max(n - 1, 0)] += chance[n] * come[a];
      }
    }
    return later;
  }

  /** Chances of the number of bales that come in so many hours. */
  private double[] bales(double inHours) {
    double[] chance =
        new double
            [(int) (loadBales * (hours * loadsPerH + 10 * Math.sqrt(hours * loadsPerH) + 10))];
    double one = Math.exp(-loadsPerH * inHours);
    for (int loads = 0; loads * loadBales < chance.length; loads++) {
      chance[loads * loadBales] = one;
      one *= loadsPerH * inHours / (loads + 1);
    }
    return chance;
  }

  /**
   * Where the stock on hand never runs out, a bale leaves on the hour every hour, so the level
   * before the (k + 1)-th hour is over is onHand − 2 − k + what came in k + 1 hours, and only rises
   * in between: the peak is the greatest of these, or what was on hand before the table was filled.
   * Its law follows hour by hour from that of the level among windows whose peak has stayed at or
   * below a bound.
   */
  double chanceOfPeakAbove(int bales) {
    if (bales < onHand) {
      return 1;
    }
    double[] come = bales(1);
    double[] chance = new double[bales + 1]; // of the level as each hour begins
    chance[onHand - AHEAD] = 1;
    for (int hour = 0; hour < hours; hour++) {
      double[] later = new double[bales + 1];
      for (int n = 0; n <= bales; n++) {
        for (int a = 0; a < come.length && n + a <= bales; a += loadBales) {
          later[Math.max(0, n + a - 1)] += chance[n] * come[a];
        }
      }
      chance = later;
    }
    return 1 - java.util.Arrays.stream(chance).sum();
  }

  /** Mean peak where the stock never runs out: the sum of the chances to be above each level. */
  double meanPeak() {
    double mean = 0;
    for (int bales = 0; bales < onHand + 25 * loadBales; bales++) {
      mean += chanceOfPeakAbove(bales);
    }
    return mean;
  }

  /**
   * Mean level where the stock never runs out: what has come by then less a bale at each full hour.
   */
  double meanLevelOfStock() {
    return onHand - AHEAD + loadBales * loadsPerH * hours / 2 - (hours - 1) / 2.0;
  }
}
