package hurdline.simulation;

import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;

/**
 * What an event of the example costs beside a step of the bare {@link HoldLoop, the two taking turns in one process: a
 * machine under other load slows both alike, so their ratio stands still where each alone does not.
 */
final class HoldRatio {
  static final int ENTRIES = 64;

  private final RandomStreams streams = new RandomStreams(1);
  private final Replication replication = Example.replication();
  private final HoldLoop holds = new HoldLoop(ENTRIES);
  private int next;
  private long engineNs;
  private long holdNs;
  private long events;
  private int years;
  private double kept;

  /** Plays a year, then holds as often as events came due in it. */
  void turn() {
    long before = replication.events();
    long beginNs = System.nanoTime();
    Outcome outcome = replication.run(streams, 1 + next++ % 40, null);
    long playedNs = System.nanoTime();
    long due = replication.events() - before;
    kept += holds.hold(due);
    holdNs += System.nanoTime() - playedNs;
    engineNs += playedNs - beginNs;
    events += due;
    years++;
    kept += outcome.values()[0];
  }

  /** Begins to count anew. */
  void reset() {
    engineNs = 0;
    holdNs = 0;
    events = 0;
    years = 0;
  }

  double nsPerEvent() {
    return (double) engineNs / events;
  }

  double nsPerHold() {
    return (double) holdNs / events;
  }

  double ratio() {
    return (double) engineNs / holdNs;
  }

  /** What a year costs in steps of the hold loop; unlike the ratio, it does not hang on what counts as an event. */
  double holdsAYear() {
    return engineNs / nsPerHold() / years;
  }

  /** So that nothing measured can be left out. */
  double kept() {
    return kept;
  }
}
