package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.flow.BottleneckTrail;
import hurdline.flow.Network;
import hurdline.flow.rates.IndexSet;
import java.util.stream.IntStream;

/**
 * Solves the rates and draws the conclusions: causes, states, and the instants at which each of
 * them ends.
 *
 * <p>Only what a solve has moved is worked out anew: heads and bins by the network's marks,
 * machines by {@link ReplicationState}. A due time that rests on nothing that moved stays as it is,
 * which also keeps it from drifting. {@code ShortCutsTest} holds this against working out
 * everything.
 */
public final class Solving {
  private final ReplicationState present;
  private final CompiledLines layout;
  private final Network network;
  private final BottleneckTrail trail;
  private final StateRecorder watching;
  private final Filling filling;
  private final Milling milling;
  private final Orders orders;
  private final Stopping stopping;
  private final int[][] machinesOf; // [head]

  /** How often rates were solved, over all replications. */
  public long solves;

  public Solving(
      ReplicationState present,
      StateRecorder watching,
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
    machinesOf = new int[layout.heads][];
    for (int h = 0; h < layout.heads; h++) {
      machinesOf[h] =
          IntStream.of(layout.stretch[h].machine).filter(m -> m >= 0).distinct().toArray();
    }
  }

  public void solve() {
    solves++;
    present.flowsChanged = false;
    present.causesChanged = false;
    present.carrying.upToNow();
    present.allChanged |= present.plain;
    if (present.allChanged) {
      network.asked.all();
    }
    network.solve();
    if (present.allChanged) {
      network.allMoved();
    }
    watch();
    scheduleFlows();
    filling.schedule();
    milling.schedule();
    orders.schedule();
    stopping.schedule();
    network.seen();
    present.touched.clear();
    present.allChanged = false;
  }

  /** A cause has changed, though no rate need have. */
  public void look() {
    network.involve();
    watch();
  }

  /** From what has changed to causes and states. */
  private void watch() {
    trail.follow();
    touchMachines();
    watching.look();
  }

  private void touchMachines() {
    IndexSet touched = present.touched;
    touchMachinesOf(network.moved);
    touchMachinesOf(trail.moved);
    if (present.allChanged) {
      touched.addAll();
    }
    for (int i = 0; i < touched.count(); i++) {
      int m = touched.at(i);
      present.counters.flows(m, network.inflowKgPerS[m], present.nowS);
    }
  }

  private void touchMachinesOf(IndexSet heads) {
    for (int i = 0; i < heads.count(); i++) {
      present.touched.addEach(machinesOf[heads.at(i)]);
    }
  }

  private void scheduleFlows() {
    for (int i = 0; i < network.moved.count(); i++) {
      int h = network.moved.at(i);
      if (layout.headBin[h] < 0) {
        scheduleLotEnd(h);
      }
    }
    for (int i = 0; i < network.binMoved.count(); i++) {
      int b = network.binMoved.at(i); // every bin beside a head that moved is among them
      for (int h : layout.draws[b]) {
        scheduleLotEnd(h);
      }
      present.pending.set(present.slots.level + b, present.nowS + network.untilLevelS(b));
    }
  }

  private void scheduleLotEnd(int head) {
    present.pending.set(present.slots.lotEnd + head, present.nowS + network.untilLotEndsS(head));
  }
}
