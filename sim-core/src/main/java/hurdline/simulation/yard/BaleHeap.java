package hurdline.simulation.yard;

/**
 * Bales of one crop in one place, the next to be picked on top: by pick key, then its tie, then the
 * order they came.
 *
 * <p>Picked oldest first they come in the very order in which they go. As long as every bale that
 * comes goes behind the last one, they stand in a ring in that order and nothing is compared but
 * the last; the first that does not makes a heap of them, until the place is empty again.
 */
final class BaleHeap {
  private final Bales bales;
  private int[] heap = new int[16]; // a ring from first on while in order
  private int first;
  private int size;
  private boolean inOrder = true;

  BaleHeap(Bales bales) {
    this.bales = bales;
  }

  void reset() {
    clear();
  }

  private void clear() {
    size = 0;
    first = 0;
    inOrder = true;
  }

  int size() {
    return size;
  }

  /** The bale to be picked next; there must be one. */
  int top() {
    return heap[first];
  }

  void add(int bale) {
    if (size == heap.length) {
      makeRoom(2 * size);
    }
    if (inOrder && size > 0 && before(bale, heap[at(size - 1)])) {
      makeRoom(heap.length); // in order from 0 on it is a heap as it stands
      inOrder = false;
    }
    if (inOrder) {
      heap[at(size++)] = bale;
    } else {
      rise(bale);
    }
  }

  private int at(int place) {
    int at = first + place;
    return at < heap.length ? at : at - heap.length;
  }

  private void makeRoom(int room) {
    int[] wider = new int[room];
    for (int k = 0; k < size; k++) {
      wider[k] = heap[at(k)];
    }
    heap = wider;
    first = 0;
  }

  private void rise(int bale) {
    int at = size++;
    while (at > 0 && before(bale, heap[(at - 1) >> 1])) {
      heap[at] = heap[(at - 1) >> 1];
      at = (at - 1) >> 1;
    }
    heap[at] = bale;
  }

  int takeTop() {
    int top = heap[first];
    if (size == 1) {
      clear();
    } else if (inOrder) {
      first = at(1);
      size--;
    } else {
      sink(heap[--size]);
    }
    return top;
  }

  private void sink(int bale) {
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
  }

  private boolean before(int a, int b) {
    if (bales.pickKey[a] != bales.pickKey[b]) {
      return bales.pickKey[a] < bales.pickKey[b];
    }
    return bales.pickTie[a] != bales.pickTie[b]
        ? bales.pickTie[a] < bales.pickTie[b]
        : bales.turn[a] < bales.turn[b];
  }
}
