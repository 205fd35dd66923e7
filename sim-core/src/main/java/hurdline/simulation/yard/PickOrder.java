package hurdline.simulation.yard;

import hurdline.compiled.YardPlan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * In which order bales that lie in the yard are picked: first what came back from the table, the
 * last of it before the others, then by the plant's pick rule.
 */
final class PickOrder {
  private final YardPlan plan;
  private final Bales bales;
  private final BaleHeap[] heaps; // [place * crops + crop]
  private final int[] places; // as the rule by place goes through them
  private final int[][] inFront; // [crop], a stack
  private final int[] inFrontCount;

  PickOrder(YardPlan plan, Bales bales) {
    this.plan = plan;
    this.bales = bales;
    heaps = new BaleHeap[plan.places() * plan.crops()];
    Arrays.setAll(heaps, at -> new BaleHeap(bales));
    places = plan.pickOrder();
    inFront = new int[plan.crops()][16];
    inFrontCount = new int[plan.crops()];
  }

  void reset() {
    for (BaleHeap heap : heaps) {
      heap.reset();
    }
    Arrays.fill(inFrontCount, 0);
  }

  /** A bale that lies in its place takes its turn by the rule. */
  void add(int bale) {
    setKeys(bale);
    heaps[bales.place[bale] * plan.crops() + bales.crop[bale]].add(bale);
  }

  private void setKeys(int bale) {
    double came = bales.weighedInS[bale];
    switch (plan.pickRule()) {
      case OLDEST_FIRST, BY_PLACE -> setKeys(bale, came, 0);
      case NEWEST_FIRST -> setKeys(bale, -came, 0);
      case DRIEST_FIRST -> setKeys(bale, bales.moisture[bale], came);
    }
  }

  private void setKeys(int bale, double key, double tie) {
    bales.pickKey[bale] = key;
    bales.pickTie[bale] = tie;
  }

  /** A bale that lies in its place goes before all others of its crop. */
  void putInFront(int bale) {
    int crop = bales.crop[bale];
    if (inFrontCount[crop] == inFront[crop].length) {
      inFront[crop] = Arrays.copyOf(inFront[crop], 2 * inFrontCount[crop]);
    }
    inFront[crop][inFrontCount[crop]++] = bale;
  }

  /** What is in front, the first to be picked last. */
  List<Integer> inFront() {
    List<Integer> all = new ArrayList<>();
    for (int crop = 0; crop < inFront.length; crop++) {
      for (int k = 0; k < inFrontCount[crop]; k++) {
        all.add(inFront[crop][k]);
      }
    }
    all.sort(Comparator.comparingInt(bale -> bales.turn[bale]));
    return all;
  }

  /** Takes the next bale of a crop, of which there must be one. */
  int take(int crop) {
    if (inFrontCount[crop] > 0) {
      return inFront[crop][--inFrontCount[crop]];
    }
    return (plan.pickRule() == YardPlan.PickRule.BY_PLACE
            ? inOrder(firstInOrder(crop), crop)
            : firstOfAll(crop))
        .takeTop();
  }

  /** Whether the next bale of a crop goes before that of another; both must have one. */
  boolean comesBefore(int crop, int other) {
    if (inFrontCount[crop] + inFrontCount[other] > 0) {
      return turnInFront(crop) > turnInFront(other);
    }
    if (plan.pickRule() != YardPlan.PickRule.BY_PLACE) {
      return comesFirst(firstOfAll(crop).top(), firstOfAll(other).top());
    }
    int mine = firstInOrder(crop);
    int theirs = firstInOrder(other);
    return mine < theirs
        || mine == theirs && comesFirst(inOrder(mine, crop).top(), inOrder(theirs, other).top());
  }

  private int turnInFront(int crop) {
    int count = inFrontCount[crop];
    return count == 0 ? Bales.none() : bales.turn[inFront[crop][count - 1]];
  }

  private BaleHeap inOrder(int at, int crop) {
    return heaps[places[at] * plan.crops() + crop];
  }

  /** At which turn of the rule's places. */
  private int firstInOrder(int crop) {
    for (int at = 0; at < places.length; at++) {
      if (inOrder(at, crop).size() > 0) {
        return at;
      }
    }
    throw new IllegalStateException("no place has a bale of " + plan.crop(crop));
  }

  /** Of equal ones the first place's. */
  private BaleHeap firstOfAll(int crop) {
    BaleHeap best = null;
    for (int at = crop; at < heaps.length; at += plan.crops()) {
      BaleHeap heap = heaps[at];
      if (heap.size() > 0 && (best == null || comesFirst(heap.top(), best.top()))) {
        best = heap;
      }
    }
    return best;
  }

  private boolean comesFirst(int bale, int other) {
    if (bales.pickKey[bale] != bales.pickKey[other]) {
      return bales.pickKey[bale] < bales.pickKey[other];
    }
    return bales.pickTie[bale] < bales.pickTie[other];
  }
}
