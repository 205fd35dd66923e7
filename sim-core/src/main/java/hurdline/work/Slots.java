package hurdline.work;

import hurdline.line.Layout;
import hurdline.line.Stretch;
import hurdline.plant.Machine;
import java.util.stream.IntStream;

/**
 * Numbers of the pending events, in the order in which things due at one instant happen: flow
 * events, ends of stops and jobs, starts of stops, crew and campaign changes, arrivals; within one
 * kind by name. New jobs come last of all and are looked for when nothing is due.
 */
final class Slots {
  final int lotEnd; // by head
  final int level; // by bin
  final int full; // by machine
  final int stay; // by machine
  final int order; // by product
  final int repairEnd; // by stop
  final int changeEnd; // by spout
  final int swapEnd; // by machine
  final int liftEnd;
  final int haulEnd;
  final int stopDue; // by stop
  final int calendar;
  final int arrival;
  final int count;

  Slots(Layout layout) {
    int at = 0;
    lotEnd = at;
    at += layout.heads;
    level = at;
    at += layout.bins;
    full = at;
    at += layout.machines;
    stay = at;
    at += layout.machines;
    order = at;
    at += layout.naming.products.count();
    repairEnd = at;
    at += stops(layout);
    changeEnd = at;
    at += spouts(layout);
    swapEnd = at;
    at += layout.machines;
    liftEnd = at++;
    haulEnd = at++;
    stopDue = at;
    at += stops(layout);
    calendar = at++;
    arrival = at++;
    count = at;
  }

  static int stops(Layout layout) {
    return IntStream.range(0, layout.machines)
        .map(m -> layout.machine[m].common().stops().size())
        .sum();
  }

  static int spouts(Layout layout) {
    return IntStream.range(0, layout.machines).map(m -> spouts(layout.machine[m])).sum();
  }

  /** Spouts or boxes of a machine; 0 for one that fills nothing. */
  static int spouts(Machine machine) {
    return machine instanceof Machine.Packer packer ? packer.spouts() : 0;
  }

  /** What a slot stands for, in the words of a message. */
  String name(Layout layout, int slot) {
    if (slot >= stopDue && slot < calendar) {
      return "a stop";
    }
    if (slot >= repairEnd && slot < changeEnd) {
      return "the end of a repair";
    }
    if (slot < level) {
      return "the end of a lot at " + entry(layout, slot);
    }
    if (slot < full) {
      return "the level of " + layout.naming.bins.name(slot - level);
    }
    if (slot < stay) {
      return "a full package at " + layout.naming.machines.name(slot - full);
    }
    if (slot < order) {
      return "the stay of " + layout.naming.machines.name(slot - stay);
    }
    return slot < repairEnd ? "an order for " + layout.naming.products.name(slot - order) : "slot " + slot;
  }

  private static String entry(Layout layout, int head) {
    Stretch stretch = layout.stretch[head];
    int bin = layout.headBin[head];
    return bin >= 0 ? layout.naming.bins.name(bin) : layout.naming.machines.name(stretch.machine[0]);
  }
}
