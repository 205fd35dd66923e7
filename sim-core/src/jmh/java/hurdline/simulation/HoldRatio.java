package hurdline.simulation;

import hurdline.random.RandomStreams;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/**
 * What an event of the example costs beside a step of the bare {@link HoldLoop}, the two taking
 * turns in one process: a machine under other load slows both alike, so their ratio stands stiller
 * than each alone. Times are the thread's own on the processor, which leave out what others have of
 * it; waiting for memory that others use stays in them.
 */
final class HoldRatio {
  static final int ENTRIES = 64;
  private static final ThreadMXBean THREAD = ManagementFactory.getThreadMXBean();

  /** So that a hold is timed over some tens of milliseconds. */
  private static final int HOLDS_AN_EVENT = 4;

  private final RandomStreams streams = new RandomStreams(1);
  private final Replication replication;
  private final int replications;
  private final HoldLoop holds = new HoldLoop(ENTRIES);
  private int next;
  private long engineNs;
  private double holdNs;
  private long events;
  private double quickestYearNs;
  private double quickestHoldNs;
  private double kept;

  /**
   * @param replications that take turns
   */
  HoldRatio(Replication replication, int replications) {
    this.replication = replication;
    this.replications = replications;
    reset();
  }

  /** Simulates a year, then holds some times as often as events came due in it. */
  void turn() {
    turn(1);
  }

  /**
   * @param times that a year is simulated where one counts; above 1 a slow-down is planted
   */
  void turn(int times) {
    long before = replication.events();
    long beginNs = THREAD.getCurrentThreadCpuTime();
    for (int k = 0; k < times; k++) {
      kept += replication.run(streams, 1 + next % replications, null).values()[0];
    }
    next++;
    long yearNs = THREAD.getCurrentThreadCpuTime() - beginNs;
    long due = (replication.events() - before) / times;
    beginNs = THREAD.getCurrentThreadCpuTime();
    kept += holds.hold(HOLDS_AN_EVENT * due);
    double perHoldNs =
        (double) (THREAD.getCurrentThreadCpuTime() - beginNs) / (HOLDS_AN_EVENT * due);
    holdNs += perHoldNs * due;
    engineNs += yearNs;
    events += due;
    quickestYearNs = Math.min(quickestYearNs, yearNs);
    quickestHoldNs = Math.min(quickestHoldNs, perHoldNs);
  }

  /** Begins to count anew. */
  void reset() {
    engineNs = 0;
    holdNs = 0;
    events = 0;
    quickestYearNs = Double.POSITIVE_INFINITY;
    quickestHoldNs = Double.POSITIVE_INFINITY;
  }

  double nsPerEvent() {
    return (double) engineNs / events;
  }

  double nsPerHold() {
    return holdNs / events;
  }

  double ratio() {
    return engineNs / holdNs;
  }

  /**
   * What the quickest year costs in steps of the quickest hold loop: other load only ever adds to
   * either. Unlike the ratio, it does not depend on what counts as an event.
   */
  double quickestHoldsAYear() {
    return quickestYearNs / quickestHoldNs;
  }

  /** So that nothing measured can be left out. */
  double kept() {
    return kept;
  }
}
