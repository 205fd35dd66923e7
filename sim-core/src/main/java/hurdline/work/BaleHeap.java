package hurdline.work;

import java.util.Arrays;

/** Bales of one crop in one place, the next to be picked on top: by pick key, then its tie, then the order they came. */
final class BaleHeap {
  private final Bales bales;
  private int[] heap = new int[16];
  private int size;

  BaleHeap(Bales bales) {
    this.bales = bales;
  }

  void reset() {
    size = 0;
  }

  int size() {
    return size;
  }

  /** The bale to be picked next; there must be one. */
  int top() {
    return heap[0];
  }

  void add(int bale) {
    if (size == heap.length) {
      heap = Arrays.copyOf(heap, 2 * size);
    }
    int at = size++;
    while (at > 0 && before(bale, heap[(at - 1) >> 1])) {
      heap[at] = heap[(at - 1) >> 1];
      at = (at - 1) >> 1;
    }
    heap[at] = bale;
  }

  int takeTop() {
    int top = heap[0];
    int bale = heap[--size];
    int at = 0;
    for (int child = 1; child < size; child = 2 * at + 1) {
      if (child + 1 < size && before(heap[child + 1], heap[child])) {
        child++;
      }
      if (!before(heap[child], bale)) {
        break;
      }
      heap[at] = heap[child];
      at = child;
    }
    heap[at] = bale;
    return top;
  }

  private boolean before(int a, int b) {
    if (bales.pickKey[a] != bales.pickKey[b]) {
      return bales.pickKey[a] < bales.pickKey[b];
    }
    return bales.pickTie[a] != bales.pickTie[b] ? bales.pickTie[a] < bales.pickTie[b] : bales.turn[a] < bales.turn[b];
  }
}
