package hurdline.event;

import java.util.Arrays;

/**
 * Due times of a fixed number of slots; the slot's number is its turn among those due at one instant.
 *
 * <p>A tournament: the slots are the leaves of a complete binary tree, each knot keeps the earlier of its two children.
 * A heap ordered by time would have to break ties that rounding has blurred; here the lowest slot due <em>at or before</em>
 * an instant is found by one descent that prefers the left child. Setting a slot costs one climb, which stops at the
 * first knot that does not change.
 *
 * <p>Hot path: no allocation after the constructor. {@code PendingTest} compares it with a plain scan.
 */
public final class Pending {
  private final int slots;
  private final int leaves;
  private final double[] earliestS; // [knot], 1 the root, children of k at 2k and 2k + 1; leaves last

  /** @param slots how many, above 0 */
  public Pending(int slots) {
    if (!(slots > 0)) {
      throw new IllegalArgumentException("slots is " + slots + "; expected above 0");
    }
    this.slots = slots;
    leaves = slots == 1 ? 1 : Integer.highestOneBit(slots - 1) << 1;
    earliestS = new double[2 * leaves];
    reset();
  }

  /** Nothing is due any more. */
  public void reset() {
    Arrays.fill(earliestS, Double.POSITIVE_INFINITY);
  }

  /** @param atS when the slot is due, not NaN; +∞ for never */
  public void set(int slot, double atS) {
    if (!(slot >= 0 && slot < slots && atS == atS)) {
      throw new IllegalArgumentException("slot " + slot + " of " + slots + " at " + atS + " s");
    }
    final double[] tree = earliestS;
    int knot = leaves + slot;
    if (tree[knot] == atS) {
      return;
    }
    tree[knot] = atS;
    while (knot > 1) {
      double earlier = Math.min(tree[knot], tree[knot ^ 1]);
      knot >>= 1;
      if (tree[knot] == earlier) {
        return;
      }
      tree[knot] = earlier;
    }
  }

  public void clear(int slot) {
    set(slot, Double.POSITIVE_INFINITY);
  }

  /** When the slot is due, +∞ if it is not. */
  public double atS(int slot) {
    return earliestS[leaves + slot];
  }

  /** The earliest due time, +∞ if there is none. */
  public double nextS() {
    return earliestS[1];
  }

  /** The lowest slot that is due at or before an instant, -1 if there is none. */
  public int firstDue(double untilS) {
    final double[] tree = earliestS;
    if (!(tree[1] <= untilS)) {
      return -1;
    }
    int knot = 1;
    while (knot < leaves) {
      knot <<= 1;
      if (!(tree[knot] <= untilS)) {
        knot++;
      }
    }
    return knot - leaves;
  }
}
