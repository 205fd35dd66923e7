package hurdline.simulation.activity;

import java.util.Arrays;

/**
 * Full packages of one product in the order in which they were filled, each with what it holds.
 *
 * <p>A ring of flat rows that grows when it must, so that a store that has once been full costs no
 * more memory.
 */
final class PackageQueue {
  private static final int FIRST = 16;
  private static final int OTHERS = 2; // component and dry matter

  private final int lines;
  private final int width;
  private double[] rows;
  private int room = FIRST;
  private int first;
  private int count;

  PackageQueue(int lines) {
    this.lines = lines;
    width = 2 * lines + OTHERS;
    rows = new double[room * width];
  }

  void reset() {
    first = 0;
    count = 0;
  }

  int count() {
    return count;
  }

  void add(BegunPackage one) {
    if (count == room) {
      grow();
    }
    int at = row(count++);
    System.arraycopy(one.fitKg, 0, rows, at, lines);
    System.arraycopy(one.tooWetKg, 0, rows, at + lines, lines);
    rows[at + 2 * lines] = one.componentKg;
    rows[at + 2 * lines + 1] = one.dryKg;
  }

  /** Writes what the k-th package holds, counted from 0. */
  void read(int k, BegunPackage to) {
    int at = row(k);
    System.arraycopy(rows, at, to.fitKg, 0, lines);
    System.arraycopy(rows, at + lines, to.tooWetKg, 0, lines);
    to.componentKg = rows[at + 2 * lines];
    to.dryKg = rows[at + 2 * lines + 1];
  }

  void removeFirst() {
    first = first + 1 == room ? 0 : first + 1;
    count--;
  }

  private int row(int k) {
    int at = first + k;
    return (at < room ? at : at - room) * width;
  }

  /** Twice the room, with the first package first. */
  private void grow() {
    double[] was = rows;
    int head = (room - first) * width;
    rows = Arrays.copyOfRange(was, first * width, first * width + 2 * room * width);
    System.arraycopy(was, 0, rows, head, first * width);
    first = 0;
    room *= 2;
  }
}
