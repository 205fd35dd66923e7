package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;

/**
 * Numbers of the jobs that ask for resources, by activity; hauling has all from {@code haul} on.
 */
public final class JobNumbers {
  public final int repair; // by stop
  public final int change; // by spout
  public final int swap; // by machine
  public final int lift;
  public final int haul;

  JobNumbers(CompiledLines layout, int liftsAtOnce) {
    repair = 0;
    change = layout.stops.count();
    swap = change + EventSlots.spouts(layout);
    lift = swap + layout.machines;
    haul = lift + liftsAtOnce;
  }
}
