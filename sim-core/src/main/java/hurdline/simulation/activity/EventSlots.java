package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.plant.Machine;
import hurdline.plant.Product;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Numbers of the pending events, in the order in which things due at one instant happen: flow
 * events, ends of stops and jobs, starts of stops, crew and campaign changes, arrivals, pick-ups;
 * within one kind by name. New jobs come last of all and are looked for when nothing is due.
 */
public final class EventSlots {
  private static final int NONE = -1;

  public final int lotEnd; // by head
  public final int level; // by bin
  final int[] full; // [machine] of fillers and presses
  final int[] stay; // [machine] of mills
  final int[] order; // [product] of those with orders
  public final int repairEnd; // by stop
  public final int changeEnd; // by spout
  final int[] swapEnd; // [machine] of mills
  public final int liftEnd;
  public final int haulEnd;
  public final int stopDue; // by stop
  public final int calendar;
  public final int arrival;
  final int[] pickUp; // [product] of those that trucks fetch
  final int count;

  /** Where these kinds begin. */
  public final int firstFull;

  public final int firstStay;
  public final int firstOrder;
  public final int firstSwapEnd;

  /** [slot] machine or product of those kinds. */
  public final int[] owner;

  EventSlots(CompiledLines layout) {
    int machines = layout.machines;
    IntPredicate fills = m -> layout.machine[m] instanceof Machine.Packer;
    IntPredicate mills = m -> layout.machine[m] instanceof Machine.HammerMill;
    int products = layout.naming.products.count();
    boolean[] ordered = new boolean[products];
    for (Product product : layout.plant.products()) {
      ordered[layout.naming.products.index(product.name())] = !product.orders().isEmpty();
    }
    owner =
        new int
            [layout.heads
                + layout.bins
                + 3 * machines
                + 2 * products
                + spouts(layout)
                + 2 * layout.stops.count()
                + 4];
    lotEnd = 0;
    level = layout.heads;
    firstFull = level + layout.bins;
    full = new int[machines];
    firstStay = number(full, fills, firstFull);
    stay = new int[machines];
    firstOrder = number(stay, mills, firstStay);
    order = new int[products];
    repairEnd = number(order, p -> ordered[p], firstOrder);
    changeEnd = repairEnd + layout.stops.count();
    firstSwapEnd = changeEnd + spouts(layout);
    swapEnd = new int[machines];
    liftEnd = number(swapEnd, mills, firstSwapEnd);
    haulEnd = liftEnd + 1;
    stopDue = haulEnd + 1;
    calendar = stopDue + layout.stops.count();
    arrival = calendar + 1;
    pickUp = new int[products];
    count = number(pickUp, p -> layout.stores.pickUpS[p] != null, arrival + 1);
  }

  /**
   * Numbers those things that have a slot of a kind from a first one on; the number after the last.
   */
  private int number(int[] slot, IntPredicate has, int first) {
    int at = first;
    for (int thing = 0; thing < slot.length; thing++) {
      slot[thing] = has.test(thing) ? at : NONE;
      if (slot[thing] >= 0) {
        owner[at++] = thing;
      }
    }
    return at;
  }

  static int spouts(CompiledLines layout) {
    return IntStream.range(0, layout.machines).map(m -> spouts(layout.machine[m])).sum();
  }

  /** Spouts or boxes of a machine; 0 for one that fills nothing. */
  static int spouts(Machine machine) {
    return machine instanceof Machine.Packer packer ? packer.spouts() : 0;
  }

  /** What a slot stands for, in the words of a message. */
  public String name(CompiledLines layout, int slot) {
    if (slot >= stopDue && slot < calendar) {
      return "a stop";
    }
    if (slot >= repairEnd && slot < changeEnd) {
      return "the end of a repair";
    }
    if (slot < level) {
      return "the end of a lot at " + entry(layout, slot);
    }
    if (slot < firstFull) {
      return "the level of " + layout.naming.bins.name(slot - level);
    }
    if (slot < firstStay) {
      return "a full package at " + layout.naming.machines.name(owner[slot]);
    }
    if (slot < firstOrder) {
      return "the stay of " + layout.naming.machines.name(owner[slot]);
    }
    return slot < repairEnd
        ? "an order for " + layout.naming.products.name(owner[slot])
        : "slot " + slot;
  }

  private static String entry(CompiledLines layout, int head) {
    Stretch stretch = layout.stretch[head];
    int bin = layout.headBin[head];
    return bin >= 0
        ? layout.naming.bins.name(bin)
        : layout.naming.machines.name(stretch.machine[0]);
  }
}
