package hurdline.compiled;

import hurdline.measure.Cause;
import hurdline.plant.Machine;
import java.util.ArrayList;
import java.util.List;

/**
 * Numbers of all causes that may hold a head, with their names.
 *
 * <p>Machines come first under their own numbers: a machine's own rate. Then the words that need no
 * machine, the resources, the stores, each machine's change or swap, and each machine's stops.
 */
public final class Causes {
  public final int noBales;
  public final int keptApart;
  public final int cropDone;
  public final int noOrder;
  public final int noCrew;
  public final int setOnTable;

  /** [resource] a job that waits for it. */
  public final int[] resource;

  /** [store] a full package that finds no room in it. */
  public final int[] store;

  /** [machine] its package change or screen swap; −1 where it has none. */
  public final int[] change;

  /** [stop] under its number. */
  public final int[] stop;

  private final List<String> names = new ArrayList<>();

  Causes(CompiledLines layout) {
    for (int m = 0; m < layout.machines; m++) {
      add(Cause.RATE.of(layout.machine[m].name()));
    }
    noBales = add(Cause.NO_BALES.of());
    keptApart = add(Cause.KEPT_APART.of());
    cropDone = add(Cause.CROP_DONE.of());
    noOrder = add(Cause.NO_ORDER.of());
    noCrew = add(Cause.NO_CREW.of());
    setOnTable = add(Cause.LIFT.of());
    resource = new int[layout.naming.resources.count()];
    for (int r = 0; r < resource.length; r++) {
      resource[r] = add(Cause.RESOURCE.of(layout.naming.resources.name(r)));
    }
    store = new int[layout.naming.stores.count()];
    for (int s = 0; s < store.length; s++) {
      store[s] = add(Cause.STORE.of(layout.naming.stores.name(s)));
    }
    change = new int[layout.machines];
    stop = new int[layout.stops.count()];
    for (int m = 0; m < layout.machines; m++) {
      Machine machine = layout.machine[m];
      if (machine instanceof Machine.Packer) {
        change[m] = add(Cause.PACKAGE_CHANGE.of(machine.name()));
      } else {
        change[m] =
            machine instanceof Machine.HammerMill
                ? add(Cause.SCREEN_CHANGE.of(machine.name()))
                : -1;
      }
      for (int k : layout.stops.of(m)) {
        stop[k] = add(Cause.STOP.of(machine.name(), layout.stops.stop(k).name()));
      }
    }
  }

  private int add(String name) {
    names.add(name);
    return names.size() - 1;
  }

  public int count() {
    return names.size();
  }

  public String name(int cause) {
    return names.get(cause);
  }
}
