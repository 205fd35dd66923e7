package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import java.util.Arrays;

/**
 * Why a machine takes nothing though it is in its hours: a stop comes before a change, a change
 * before the want of an order.
 */
public final class StopReasons {
  private static final int NOTHING = -1;

  private final ReplicationState present;
  final int[] stop;
  final int[] change;
  final int[] noOrder;

  /** [machine] whether the stop that it is in was planned. */
  final boolean[] isPlanned;

  public StopReasons(CompiledLines layout, ReplicationState present) {
    this.present = present;
    stop = new int[layout.machines];
    change = new int[layout.machines];
    noOrder = new int[layout.machines];
    isPlanned = new boolean[layout.machines];
  }

  public void reset() {
    Arrays.fill(stop, NOTHING);
    Arrays.fill(change, NOTHING);
    Arrays.fill(noOrder, NOTHING);
  }

  void stop(int machine, int cause) {
    set(stop, machine, cause);
  }

  void change(int machine, int cause) {
    set(change, machine, cause);
  }

  void noOrder(int machine, int cause) {
    set(noOrder, machine, cause);
  }

  private void set(int[] reason, int machine, int cause) {
    if (reason[machine] != cause) {
      reason[machine] = cause;
      present.touched.add(machine);
      tell(machine);
    }
  }

  boolean isDown(int machine) {
    return stop[machine] >= 0;
  }

  boolean isChanging(int machine) {
    return change[machine] >= 0;
  }

  /** Whether a full package keeps it waiting for want of room in a store. */
  boolean isWithoutRoom(int machine) {
    int[] store = present.layout.causes.store;
    return store.length > 0
        && change[machine] >= store[0]
        && change[machine] <= store[store.length - 1];
  }

  /** Up means neither in a stop nor in a swap; a machine that waits for a package is up. */
  boolean isUp(int machine, boolean isMill) {
    return stop[machine] < 0 && !(isMill && change[machine] >= 0);
  }

  /**
   * Tells the network the cause that counts; what state the machine is in may have changed without
   * it.
   */
  private void tell(int machine) {
    int cause =
        stop[machine] >= 0
            ? stop[machine]
            : change[machine] >= 0 ? change[machine] : noOrder[machine];
    int told = present.network.asked.standing(machine);
    if (told != cause) {
      present.flowsChanged |= told >= 0 != cause >= 0;
      present.network.asked.stands(machine, cause);
    }
    present.causesChanged = true;
  }
}
