package hurdline.simulation.yard;

import java.util.Arrays;

/** Carriers that wait at the gate until there is room, in the order in which they came, by crop. */
final class GateQueue {
  private final int[][] queue; // [crop], a ring
  private final int[] first;
  private final int[] count;
  private int waiting;

  GateQueue(int crops) {
    queue = new int[crops][16];
    first = new int[crops];
    count = new int[crops];
  }

  void reset() {
    Arrays.fill(count, 0);
    Arrays.fill(first, 0);
    waiting = 0;
  }

  /** How many wait, of all crops. */
  int waiting() {
    return waiting;
  }

  int waiting(int crop) {
    return count[crop];
  }

  boolean waits(int crop) {
    return count[crop] > 0;
  }

  int first(int crop) {
    return queue[crop][first[crop]];
  }

  void join(int crop, int carrier) {
    if (count[crop] == queue[crop].length) {
      grow(crop);
    }
    queue[crop][(first[crop] + count[crop]++) % queue[crop].length] = carrier;
    waiting++;
  }

  int takeFirst(int crop) {
    int carrier = first(crop);
    first[crop] = (first[crop] + 1) % queue[crop].length;
    count[crop]--;
    waiting--;
    return carrier;
  }

  private void grow(int crop) {
    int[] old = queue[crop];
    int[] grown = new int[2 * old.length];
    for (int k = 0; k < old.length; k++) {
      grown[k] = old[(first[crop] + k) % old.length];
    }
    queue[crop] = grown;
    first[crop] = 0;
  }
}
