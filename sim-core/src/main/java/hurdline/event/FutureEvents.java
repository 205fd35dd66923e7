package hurdline.event;

import java.util.Arrays;

/**
 * Due times of a fixed number of slots; the slot's number is its turn among those due at one
 * instant.
 *
 * <p>Slots stand in blocks of eight, and each block keeps its earliest time. A heap ordered by time
 * would have to break ties that rounding has blurred; here the lowest slot due <em>at or
 * before</em> an instant is found by walking over the blocks. Setting a slot touches its block only
 * when the earliest time comes or goes. With the few dozen slots of a plant this beats a tournament
 * tree, whose every change climbs to the root.
 *
 * <p>Hot path: no allocation after the constructor. {@code FutureEventsTest} compares it with a
 * plain scan.
 */
public final class FutureEvents {
  private static final int BITS = 3;

  private final int slots;
  private final int blocks;
  private final double[] atS; // [slot], to a full block
  private final double[] earliestS; // [block]
  private double nextS; // of all blocks, unless it is stale
  private boolean stale;

  /**
   * @param slots how many, above 0
   */
  public FutureEvents(int slots) {
    if (!(slots > 0)) {
      throw new IllegalArgumentException("slots is " + slots + "; expected above 0");
    }
    this.slots = slots;
    blocks = (slots + 7) >> BITS;
    atS = new double[blocks << BITS];
    earliestS = new double[blocks];
    reset();
  }

  /** Nothing is due any more. */
  public void reset() {
    Arrays.fill(atS, Double.POSITIVE_INFINITY);
    Arrays.fill(earliestS, Double.POSITIVE_INFINITY);
    nextS = Double.POSITIVE_INFINITY;
    stale = false;
  }

  /**
   * @param dueS when the slot is due, not NaN; +∞ for never
   */
  public void set(int slot, double dueS) {
    if (!(slot >= 0 && slot < slots && dueS == dueS)) {
      throw new IllegalArgumentException("slot " + slot + " of " + slots + " at " + dueS + " s");
    }
    double was = atS[slot];
    if (was == dueS) {
      return; // most slots stay at never
    }
    atS[slot] = dueS;
    int block = slot >> BITS;
    double earliest = earliestS[block];
    if (dueS <= earliest) {
      earliestS[block] = dueS;
      if (dueS <= nextS) {
        nextS = dueS;
        stale = false;
      }
    } else if (was == earliest) {
      earliestS[block] = earliestOf(block);
      stale |= was == nextS;
    }
  }

  private double earliestOf(int block) {
    final double[] times = atS;
    int from = block << BITS;
    double earliest = times[from];
    for (int slot = from + 1; slot < from + 8; slot++) {
      if (times[slot] < earliest) {
        earliest = times[slot];
      }
    }
    return earliest;
  }

  public void clear(int slot) {
    set(slot, Double.POSITIVE_INFINITY);
  }

  /** When the slot is due, +∞ if it is not. */
  public double atS(int slot) {
    return atS[slot];
  }

  /**
   * The earliest due time, +∞ if there is none; asked several times an event, so kept while nothing
   * before it goes.
   */
  public double nextS() {
    if (stale) {
      stale = false;
      double earliest = earliestS[0];
      for (int block = 1; block < blocks; block++) {
        if (earliestS[block] < earliest) {
          earliest = earliestS[block];
        }
      }
      nextS = earliest;
    }
    return nextS;
  }

  /** The lowest slot that is due at or before an instant, -1 if there is none. */
  public int firstDue(double untilS) {
    if (nextS() > untilS) {
      return -1;
    }
    int block = 0;
    while (!(earliestS[block] <= untilS)) {
      block++;
    }
    int slot = block << BITS;
    while (!(atS[slot] <= untilS)) {
      slot++;
    }
    return slot;
  }

  /** Instants that lie no farther apart than this, in seconds, are one. */
  public static double instantS() {
    return 1e-6;
  }
}
