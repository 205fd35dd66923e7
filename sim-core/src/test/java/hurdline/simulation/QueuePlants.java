package hurdline.simulation;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;

/**
 * Loads and trucks at the scale and the loader, and what queueing theory says of them; times in
 * minutes.
 */
final class QueuePlants {
  private QueuePlants() {}

  /**
   * A year of loads of one bale, exponential times between them, round the clock, unloaded by so
   * many loaders.
   */
  static Plant loads(double everyMin, String unload, int loaders) {
    return year(
        """
        resources: {loader: {count: %d}}
        yard: {places: {barn: {holds: 999999 bales}}}
        deliveries:
          stalk:
            loads: {every: {exponential: {mean: %s min}}, bales: 1}
            unload: {lasts: %s, needs: loader}
        """
            .formatted(loaders, everyMin, unload));
  }

  /**
   * A year of loads that are weighed in and out on one scale, with a loader between, all times
   * exponential.
   */
  static Plant weighedLoads(double everyMin, double weighMin, double unloadMin, int loaders) {
    return year(
        """
        resources: {scale: {count: 1}, loader: {count: %d}}
        yard: {places: {barn: {holds: 999999 bales}}}
        deliveries:
          stalk:
            loads: {every: {exponential: {mean: %s min}}, bales: 1}
            weigh: {lasts: {exponential: {mean: %s min}}, needs: scale}
            unload: {lasts: {exponential: {mean: %s min}}, needs: loader}
        """
            .formatted(loaders, everyMin, weighMin, unloadMin));
  }

  /**
   * A year of trucks on their rounds: drive, scale, loader, scale, drive; exponential at scale and
   * loader.
   */
  static Plant trucks(int trucks, String drive, double weighMin, double unloadMin) {
    return year(
        """
        resources: {scale: {count: 1}, loader: {count: 1}}
        yard: {places: {barn: {holds: 999999 bales}}}
        deliveries:
          stalk:
            fields: {bench: {area: 9999 ha, yield: 99 t/ha, ready: 2027-03-01, baling: 1440 bales/d}}
            hours: {from: "00:00", to: "24:00"}
            trucks: {count: %d, bales: 1, drive: %s}
            weigh: {lasts: {exponential: {mean: %s min}}, needs: scale}
            unload: {lasts: {exponential: {mean: %s min}}, needs: loader}
        """
            .formatted(trucks, drive, weighMin, unloadMin));
  }

  private static Plant year(String rest) {
    return PlantFile.of("queue.yaml", YardTexts.plant("2027-03-01", "2028-02-28", "[]", rest))
        .plant();
  }

  /**
   * Mean wait of Poisson arrivals at one server that takes S, W = λ·E[S²] / (2(1 − λ·E[S])).
   *
   * @see "Kleinrock, Queueing Systems, Volume 1: Theory (1975), section 5.6 (from memory)"
   */
  static double oneServerWait(double every, double mean, double secondMoment) {
    return secondMoment / every / (2 * (1 - mean / every));
  }

  /**
   * Mean wait of Poisson arrivals at c servers with exponential times of mean s and load a =
   * s/every: W = C(c, a)·s/(c − a), with B the loss formula by recursion and C = B/(1 − (a/c)(1 −
   * B)).
   *
   * @see "A. K. Erlang (1917); Gross and Harris, Fundamentals of Queueing Theory (1985), section
   *     2.3 (from memory)"
   */
  static double manyServersWait(double every, double mean, int servers) {
    double load = mean / every;
    double lost = 1;
    for (int c = 1; c <= servers; c++) {
      lost = load * lost / (c + load * lost);
    }
    double waits = lost / (1 - load / servers * (1 - lost));
    return waits * mean / (servers - load);
  }

  /**
   * Closed rounds by mean value analysis: R_k(n) = D_k·(1 + L_k(n − 1)), X(n) = n/(Z + Σ R_k(n)),
   * L_k(n) = X(n)·R_k(n), where D_k is the time a round takes at station k, here the scale twice
   * and the loader once, and Z the time elsewhere.
   *
   * @return rounds a minute, mean trucks at the scale, mean trucks at the loader
   * @see "Reiser and Lavenberg, Journal of the ACM 27(2), 1980, pages 313-322 (from memory)"
   */
  static double[] rounds(int trucks, double elsewhere, double weigh, double unload) {
    double[] demand = {2 * weigh, unload};
    double[] at = new double[2];
    double rounds = 0;
    for (int n = 1; n <= trucks; n++) {
      double[] stay = {demand[0] * (1 + at[0]), demand[1] * (1 + at[1])};
      rounds = n / (elsewhere + stay[0] + stay[1]);
      at[0] = rounds * stay[0];
      at[1] = rounds * stay[1];
    }
    return new double[] {rounds, at[0], at[1]};
  }
}
