package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Plant;
import hurdline.simulation.ProofTable.Row;
import java.util.Arrays;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Loads, trucks and the yard at length against queueing theory; what comes out goes to {@code
 * line-configs/PROOF.md}.
 */
@Tag("proof")
class QueueProofTest {
  private static final long SEED = 4;
  private static final double ERRORS = 3.5;
  private static final int REPLICATIONS = 24;
  private static final double UNLOAD_MIN = 6;
  private static final ProofTable TABLE = ProofTable.PAGE;

  @AfterAll
  static void writeThePage() {
    TABLE.writeIfWhole();
  }

  @Test
  void aYardThatIsFilledAndDrained() {
    int at = 7;
    TABLE.section(
        at,
        "A yard that is filled and drained in a window of days",
        "Loads as a Poisson stream, a bale an hour drawn while there is one. Of what is there an hour later is known: N − 1 or none, "
            + "and what came (D. G. Kendall, *Annals of Mathematical Statistics* 24, 1953, pages 338-354, from memory); from an empty "
            + "start this gives the law at every instant, and with a stock that never runs out that of the peak, hour by hour "
            + "(`DrainedYard`; no simulation in it).");
    for (int loadBales : new int[] {1, 4}) {
      DrainedYard dry = new DrainedYard(0, loadBales, 0.8 / loadBales, 72);
      Repeats repeats = new Repeats(dry.plant(), SEED + loadBales, 10_000);
      String says = "empty start, 0.8 bales/h in loads of " + loadBales + ", 72 h: ";
      double without = dry.hoursWithoutBales();
      judge(
          at,
          row(
              says + "hours without bales",
              "h",
              without,
              repeats.of("line.stalk_line.hours.limited_by.no_bales")));
      judge(at, row(says + "mass fed", "t", 72 - without, repeats.of("mass.stalk.fed")));
      judge(at, row(says + "mean level", "bales", dry.meanLevel(), repeats.of("yard.stalk.mean")));
      DrainedYard stock = new DrainedYard(120, loadBales, 1.0 / loadBales, 96);
      double[] peak =
          new Repeats(stock.plant(), SEED + 10 + loadBales, 10_000).of("yard.stalk.peak");
      says = "stock of 120 bales, 1 bale/h in loads of " + loadBales + ", 96 h: ";
      judge(at, row(says + "mean peak", "bales", stock.meanPeak(), peak));
      double[] above = Arrays.stream(peak).map(p -> p > 130 ? 100 : 0).toArray();
      judge(
          at,
          row(
              says + "seasons with a peak above 130",
              "%",
              100 * stock.chanceOfPeakAbove(130),
              above));
    }
  }

  @Test
  void loadsWaitForLoaders() {
    int at = 8;
    TABLE.section(
        at,
        "Loads that wait at the scale and for a loader",
        "Poisson arrivals, first come first served, a year from an empty start. One loader: W = λ·E[S²]/(2(1 − λ·E[S])) (Pollaczek and "
            + "Khinchine; L. Kleinrock, *Queueing Systems*, volume 1, 1975, section 5.6). Several: A. K. Erlang's delay formula (1917; D. "
            + "Gross and C. M. Harris, *Fundamentals of Queueing Theory*, 1985, section 2.3). Scale and loader one after "
            + "the other wait each as if alone (J. R. Jackson, *Operations Research* 5, 1957, pages 518-521). All from memory.");
    double twice = 2 * UNLOAD_MIN * UNLOAD_MIN;
    oneLoader(at, "exponential", "{exponential: {mean: 6 min}}", twice);
    oneLoader(at, "fixed", "6 min", UNLOAD_MIN * UNLOAD_MIN);
    oneLoader(
        at,
        "lognormal of sd 9 min",
        "{lognormal: {mean: 6 min, sd: 9 min}}",
        UNLOAD_MIN * UNLOAD_MIN + 81);
    for (int loaders : new int[] {2, 3, 5}) {
      double everyMin = UNLOAD_MIN / loaders / 0.75;
      Plant plant = QueuePlants.loads(everyMin, "{exponential: {mean: 6 min}}", loaders);
      String says = loaders + " loaders, 75 % busy, exponential: ";
      waits(at, says, plant, QueuePlants.manyServersWait(everyMin, UNLOAD_MIN, loaders), 75);
    }
    for (int loaders : new int[] {1, 2}) {
      weighed(at, loaders);
    }
  }

  /**
   * In and out on one scale, a load every 8 min: it comes to the scale as a stream of twice that
   * rate.
   */
  private static void weighed(int at, int loaders) {
    double unloadMin = 6 * loaders;
    Plant plant = QueuePlants.weighedLoads(8, 2.4, unloadMin, loaders);
    Repeats repeats = new Repeats(plant, SEED + 100 * TABLE.rows(at), REPLICATIONS);
    String says =
        "weighed in and out, then "
            + loaders
            + (loaders == 1 ? " loader" : " loaders")
            + ": mean wait ";
    double scaleMin = QueuePlants.oneServerWait(4, 2.4, 2 * 2.4 * 2.4);
    judge(at, row(says + "at the scale", "min", scaleMin, repeats.of("resource.scale.wait.mean")));
    double loaderMin = QueuePlants.manyServersWait(8, unloadMin, loaders);
    judge(
        at,
        row(says + "for the loader", "min", loaderMin, repeats.of("resource.loader.wait.mean")));
  }

  private static void oneLoader(int at, String shape, String unload, double secondMoment) {
    Plant plant = QueuePlants.loads(10, unload, 1);
    waits(
        at,
        "1 loader, unloading 6 min, " + shape + ": ",
        plant,
        QueuePlants.oneServerWait(10, UNLOAD_MIN, secondMoment),
        60);
  }

  private static void waits(int at, String says, Plant plant, double waitMin, double busyPercent) {
    Repeats repeats = new Repeats(plant, SEED + 100 * TABLE.rows(at), REPLICATIONS);
    judge(at, row(says + "mean wait", "min", waitMin, repeats.of("resource.loader.wait.mean")));
    double[] busy = Arrays.stream(repeats.of("resource.loader.busy")).map(b -> 100 * b).toArray();
    judge(at, row(says + "share of time busy", "%", busyPercent, busy));
  }

  @Test
  void trucksOnTheirRounds() {
    int at = 9;
    TABLE.section(
        at,
        "Trucks on closed rounds",
        "Drive, scale, loader, scale, drive; times at scale and loader exponential, drives of 60 min a round of any kind. Mean value "
            + "analysis: M. Reiser and S. S. Lavenberg, *Journal of the ACM* 27(2), 1980, pages 313-322 (from memory).");
    for (int trucks : new int[] {1, 3, 8}) {
      rounds(at, trucks, "30 min");
      rounds(at, trucks, "{lognormal: {mean: 30 min, sd: 30 min}}");
    }
  }

  private static void rounds(int at, int trucks, String drive) {
    double weigh = 4;
    double unload = 12;
    double[] exact = QueuePlants.rounds(trucks, 60, weigh, unload);
    Repeats repeats =
        new Repeats(
            QueuePlants.trucks(trucks, drive, weigh, unload),
            SEED + 100 * TABLE.rows(at),
            REPLICATIONS);
    String says =
        trucks
            + (trucks == 1 ? " truck, " : " trucks, ")
            + (drive.startsWith("{") ? "lognormal" : "fixed")
            + " drives: ";
    double[] trips =
        Arrays.stream(repeats.of("trucks.stalk.trips")).map(t -> t / repeats.hours).toArray();
    judge(at, row(says + "rounds an hour", "1/h", 60 * exact[0], trips));
    double[] scale = repeats.of("resource.scale.wait.mean");
    if (trucks > 1) {
      judge(
          at,
          row(says + "mean wait at the scale", "min", exact[1] / (2 * exact[0]) - weigh, scale));
      judge(
          at,
          row(
              says + "mean wait for the loader",
              "min",
              exact[2] / exact[0] - unload,
              repeats.of("resource.loader.wait.mean")));
    }
  }

  private static Row row(String claim, String unit, double reference, double[] each) {
    double[] got = Repeats.meanAndError(each);
    return new Row(claim, unit, reference, got[0], got[1]);
  }

  private static void judge(int at, Row row) {
    TABLE.add(at, row);
    assertThat(Math.abs(row.errorsOff())).as(row.toString()).isLessThan(ERRORS);
  }
}
