package hurdline.simulation;

import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;

/** The twin of a plant that works out everything at every solve, for tests of other packages. */
public final class PlainTwin {
  private PlainTwin() {}

  public static Outcome outcome(CompiledPlant plant, long seed, int replication) {
    Replication one = plant.replication();
    one.withoutShortCuts();
    return one.run(new RandomStreams(seed), replication, null);
  }
}
