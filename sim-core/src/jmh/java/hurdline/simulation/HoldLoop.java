package hurdline.simulation;

import java.util.PriorityQueue;

/**
 * The bare hold loop, the benchmark of the literature on event lists: take the earliest of the
 * pending entries, and put it back later by an increment. Increments are exponential with mean 1
 * and stand ready, so that nothing but the event list is measured.
 *
 * @see "Vaucher and Duval, A comparison of simulation event list algorithms (1975), Communications
 *     of the ACM 18(4):223-230 (from memory)"
 * @see "Jones, An empirical comparison of priority-queue and event-set implementations (1986),
 *     Communications of the ACM 29(4):300-311 (from memory)"
 */
final class HoldLoop {
  private static final int READY = 1 << 12;

  private final PriorityQueue<Entry> pending;
  private final double[] increment = new double[READY];
  private int next;

  private static final class Entry implements Comparable<Entry> {
    private double at;

    @Override
    public int compareTo(Entry other) {
      return Double.compare(at, other.at);
    }
  }

  HoldLoop(int entries) {
    pending = new PriorityQueue<>(entries);
    for (int k = 0; k < READY; k++) {
      // the fractions of k times the golden ratio fill 0 to 1 evenly, in an order that looks random
      increment[k] = -Math.log(1 - (k * 0.6180339887498949) % 1);
    }
    for (int k = 0; k < entries; k++) {
      Entry entry = new Entry();
      entry.at = increment[nextIndex()];
      pending.add(entry);
    }
  }

  private int nextIndex() {
    next = (next + 1) & (READY - 1);
    return next;
  }

  /** Holds so often; the last time of all, so that nothing can be left out. */
  double hold(long times) {
    double at = 0;
    for (long k = 0; k < times; k++) {
      Entry earliest = pending.poll();
      at = earliest.at;
      earliest.at = at + increment[nextIndex()];
      pending.add(earliest);
    }
    return at;
  }
}
