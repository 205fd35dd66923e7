package hurdline.work;

import hurdline.line.Layout;

/** Numbers of the jobs that ask for resources, by activity; hauling has all from {@code haul} on. */
final class Jobs {
  final int repair; // by stop
  final int change; // by spout
  final int swap; // by machine
  final int lift;
  final int haul;

  Jobs(Layout layout, int liftsAtOnce) {
    repair = 0;
    change = Slots.stops(layout);
    swap = change + Slots.spouts(layout);
    lift = swap + layout.machines;
    haul = lift + liftsAtOnce;
  }
}
