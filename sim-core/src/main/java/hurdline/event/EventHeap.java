package hurdline.event;

import java.util.Arrays;

/**
 * Many things to come behind one slot of {@link FutureEvents}: a binary heap by time, then order,
 * then the order of entry.
 *
 * <p>Times that rounding keeps apart may be one instant to the caller. {@link #pollDue} therefore
 * takes, of all that is due by an instant, the one of the lowest order, whatever their times. Hot
 * path: no allocation once it has grown.
 */
public final class EventHeap {
  private double[] atS;
  private int[] order;
  private int[] payload;
  private long[] entered;
  private int size;
  private long entries;

  /**
   * @param expected how many things to make room for at first, above 0
   */
  public EventHeap(int expected) {
    atS = new double[expected];
    order = new int[expected];
    payload = new int[expected];
    entered = new long[expected];
  }

  public void reset() {
    size = 0;
    entries = 0;
  }

  public int size() {
    return size;
  }

  /** The earliest time, +∞ if there is nothing. */
  public double peekS() {
    return size == 0 ? Double.POSITIVE_INFINITY : atS[0];
  }

  /**
   * @param dueS not NaN @param turn lower comes first at one time @param what handed back when it
   *     is due
   */
  public void add(double dueS, int turn, int what) {
    if (!(dueS == dueS)) {
      throw new IllegalArgumentException("due time of " + what + " is not a number");
    }
    if (size == atS.length) {
      grow();
    }
    put(size++, dueS, turn, what, entries++);
    rise(size - 1);
  }

  /** Takes the earliest thing; there must be one. */
  public int poll() {
    return remove(0);
  }

  /**
   * Takes the thing of the lowest order, then earliest entry, among those due at or before an
   * instant; -1 if none is.
   */
  public int pollDue(double untilS) {
    if (!(peekS() <= untilS)) {
      return -1;
    }
    return remove(firstDue(0, untilS));
  }

  /** Where the first of those due at or below a due place of the heap stands. */
  private int firstDue(int at, double untilS) {
    int best = at;
    for (int child = 2 * at + 1; child <= 2 * at + 2 && child < size; child++) {
      if (atS[child] <= untilS) {
        int below = firstDue(child, untilS);
        if (order[below] < order[best]
            || order[below] == order[best] && entered[below] < entered[best]) {
          best = below;
        }
      }
    }
    return best;
  }

  private int remove(int at) {
    int what = payload[at];
    int last = --size;
    if (at != last) {
      put(at, atS[last], order[last], payload[last], entered[last]);
      rise(at);
      sink(at);
    }
    return what;
  }

  private void rise(int from) {
    int at = from;
    while (at > 0) {
      int parent = (at - 1) >> 1;
      if (!before(at, parent)) {
        return;
      }
      swap(at, parent);
      at = parent;
    }
  }

  private void sink(int from) {
    int at = from;
    for (int child = 2 * at + 1; child < size; child = 2 * at + 1) {
      if (child + 1 < size && before(child + 1, child)) {
        child++;
      }
      if (!before(child, at)) {
        return;
      }
      swap(at, child);
      at = child;
    }
  }

  private boolean before(int a, int b) {
    if (atS[a] != atS[b]) {
      return atS[a] < atS[b];
    }
    return order[a] != order[b] ? order[a] < order[b] : entered[a] < entered[b];
  }

  private void swap(int a, int b) {
    double dueS = atS[a];
    int turn = order[a];
    int what = payload[a];
    long entry = entered[a];
    put(a, atS[b], order[b], payload[b], entered[b]);
    put(b, dueS, turn, what, entry);
  }

  private void put(int at, double dueS, int turn, int what, long entry) {
    atS[at] = dueS;
    order[at] = turn;
    payload[at] = what;
    entered[at] = entry;
  }

  private void grow() {
    int room = 2 * size;
    atS = Arrays.copyOf(atS, room);
    order = Arrays.copyOf(order, room);
    payload = Arrays.copyOf(payload, room);
    entered = Arrays.copyOf(entered, room);
  }
}
