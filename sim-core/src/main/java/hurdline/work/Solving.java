package hurdline.work;

import hurdline.flow.HolderTrail;
import hurdline.flow.Network;
import hurdline.line.Layout;
import java.util.Arrays;

/**
 * Solves the rates and draws the conclusions: causes, states, and the instants at which each of them ends.
 *
 * <p>Only what a solve has moved is worked out anew: heads and bins by the network's marks, machines by
 * {@link Present#touched}. A due time that rests on nothing that moved stays as it is, which also keeps it from
 * drifting. {@code ShortCutsTest} holds this against working out everything.
 */
final class Solving {
  private final Present present;
  private final Layout layout;
  private final Network network;
  private final HolderTrail trail;
  private final Watching watching;
  private final Filling filling;
  private final Milling milling;
  private final Orders orders;
  private final Stopping stopping;

  /** How often rates were solved, over all replications. */
  long solves;

  Solving(
      Present present,
      Watching watching,
      Filling filling,
      Milling milling,
      Orders orders,
      Stopping stopping) {
    this.present = present;
    this.watching = watching;
    this.filling = filling;
    this.milling = milling;
    this.orders = orders;
    this.stopping = stopping;
    layout = present.layout;
    network = present.network;
    trail = present.trail;
  }

  void solve() {
    solves++;
    present.flowsChanged = false;
    present.causesChanged = false;
    present.carrying.upToNow();
    network.solve();
    present.allChanged |= present.plain;
    if (present.allChanged) {
      network.allMoved();
    }
    look();
    scheduleFlows();
    filling.schedule();
    milling.schedule();
    orders.schedule();
    stopping.schedule();
    network.seen();
    Arrays.fill(present.touched, false);
    present.allChanged = false;
  }

  /** From what has changed to causes and states. */
  void look() {
    trail.follow();
    touchMachines();
    watching.look();
  }

  private void touchMachines() {
    final boolean[] touched = present.touched;
    for (int h = 0; h < layout.heads; h++) {
      if (network.moved[h] || trail.moved[h]) {
        for (int m : layout.stretch[h].machine) {
          if (m >= 0) {
            touched[m] = true;
          }
        }
      }
    }
    for (int m = 0; m < touched.length; m++) {
      touched[m] |= present.allChanged;
      if (touched[m]) {
        present.counters.flows(m, network.inflowKgPerS[m], present.nowS);
      }
    }
  }

  private void scheduleFlows() {
    for (int h = 0; h < layout.heads; h++) {
      int bin = layout.headBin[h];
      if (network.moved[h] || bin >= 0 && network.binMoved[bin]) {
        present.pending.set(present.slots.lotEnd + h, present.nowS + network.untilLotEndsS(h));
      }
    }
    for (int b = 0; b < layout.bins; b++) {
      if (network.binMoved[b]) {
        present.pending.set(present.slots.level + b, present.nowS + network.untilLevelS(b));
      }
    }
  }
}
