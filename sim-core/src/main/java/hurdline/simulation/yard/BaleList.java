package hurdline.simulation.yard;

import java.util.Arrays;

/**
 * Lists of bales in the order in which they came, strung through the table's {@code next}; one for
 * each owner.
 */
public final class BaleList {
  private final Bales bales;
  private int[] first;
  private int[] last;
  private int[] count;

  BaleList(Bales bales, int owners) {
    this.bales = bales;
    first = new int[owners];
    last = new int[owners];
    count = new int[owners];
    reset();
  }

  void reset() {
    Arrays.fill(first, Bales.none());
    Arrays.fill(last, Bales.none());
    Arrays.fill(count, 0);
  }

  void makeRoom(int owners) {
    int had = first.length;
    if (owners > had) {
      int room = Math.max(owners, 2 * had);
      first = Arrays.copyOf(first, room);
      last = Arrays.copyOf(last, room);
      count = Arrays.copyOf(count, room);
      Arrays.fill(first, had, room, Bales.none());
      Arrays.fill(last, had, room, Bales.none());
    }
  }

  int count(int owner) {
    return count[owner];
  }

  /** The first bale, −1 if there is none. */
  public int first(int owner) {
    return first[owner];
  }

  void append(int owner, int bale) {
    bales.next[bale] = Bales.none();
    if (last[owner] == Bales.none()) {
      first[owner] = bale;
    } else {
      bales.next[last[owner]] = bale;
    }
    last[owner] = bale;
    count[owner]++;
  }

  int takeFirst(int owner) {
    int bale = first[owner];
    first[owner] = bales.next[bale];
    if (first[owner] == Bales.none()) {
      last[owner] = Bales.none();
    }
    bales.next[bale] = Bales.none();
    count[owner]--;
    return bale;
  }
}
