package hurdline.flow.rates;

/**
 * Numbers that are marked, each once, in the order in which they came: to walk over them costs what
 * is marked, not what there is. Allocates nothing after construction.
 */
public final class IndexSet {
  private final boolean[] marked;
  private final int[] list;
  private int count;

  /**
   * @param size numbers from 0 to one less can be marked
   */
  public IndexSet(int size) {
    marked = new boolean[size];
    list = new int[size];
  }

  public void add(int one) {
    if (!marked[one]) {
      marked[one] = true;
      list[count++] = one;
    }
  }

  public void addEach(int[] some) {
    for (int one : some) {
      add(one);
    }
  }

  public void addAll() {
    for (int one = 0; one < marked.length; one++) {
      add(one);
    }
  }

  public boolean has(int one) {
    return marked[one];
  }

  public int count() {
    return count;
  }

  /** The number that was marked at that place in the order; places count from 0. */
  public int at(int place) {
    return list[place];
  }

  public void clear() {
    for (int k = 0; k < count; k++) {
      marked[list[k]] = false;
    }
    count = 0;
  }
}
