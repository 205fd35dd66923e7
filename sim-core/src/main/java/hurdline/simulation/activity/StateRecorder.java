package hurdline.simulation.activity;

import hurdline.account.CropBooks;
import hurdline.account.PowerBooks;
import hurdline.account.TimeBooks;
import hurdline.compiled.CompiledLines;
import hurdline.flow.BottleneckTrail;
import hurdline.flow.Network;
import hurdline.flow.rates.IndexSet;
import hurdline.measure.State;
import hurdline.measure.Use;
import hurdline.plant.Machine;

/**
 * Looks at the plant whenever flows or causes have changed, and tells the books each machine's
 * state and power and each line's holder.
 *
 * <p>States exclude one another; of several that hold, the first is meant in the order of {@link
 * State}. A machine without flow is blocked if the cause lies at or behind a machine that its
 * material reaches, else starved.
 */
public final class StateRecorder {
  private static final double EQUAL = 1e-9;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final StopReasons standing;
  private final Rostering rostering;
  private final int machines;
  private final double[] powerW;
  private final boolean[] withFlow;
  private final boolean[] isMill;
  private final double[] motorLoad;
  private final double[] noLoad;

  public final TimeBooks states;
  public final TimeBooks holders;
  public final PowerBooks power;

  /** States of each machine by the crop that has it. */
  public final CropBooks crops;

  /** Uses of the building, and behind them the lines that worked alone. */
  public final TimeBooks building;

  public StateRecorder(ReplicationState present, StopReasons standing, Rostering rostering) {
    this.present = present;
    this.standing = standing;
    this.rostering = rostering;
    layout = present.layout;
    machines = layout.machines;
    powerW = new double[machines];
    withFlow = new boolean[machines];
    isMill = new boolean[machines];
    motorLoad = new double[machines];
    noLoad = new double[machines];
    for (int m = 0; m < machines; m++) {
      Machine machine = layout.machine[m];
      powerW[m] = machine.common().powerW();
      withFlow[m] = machine.common().drawsWithFlow();
      if (machine instanceof Machine.HammerMill mill) {
        isMill[m] = true;
        motorLoad[m] = mill.grinding().motorLoad();
        noLoad[m] = mill.grinding().noLoad();
      }
    }
    states = new TimeBooks(machines, State.values().length);
    holders = new TimeBooks(layout.lines, layout.causes.count());
    crops = new CropBooks(machines, layout.naming.crops.count(), State.values().length);
    building = new TimeBooks(1, Use.values().length + layout.lines);
    power = new PowerBooks(machines, present.roster.months().count(), present.roster.meter());
  }

  public void reset() {
    states.reset();
    holders.reset();
    crops.reset();
    building.reset();
    power.reset();
  }

  void look() {
    double now = present.nowS;
    if (present.allChanged) {
      lookWhoHasIt(now);
    }
    IndexSet touched = present.touched;
    for (int i = 0; i < touched.count(); i++) {
      int m = touched.at(i);
      // off duty nothing changes but by the calendar
      if (present.counters.duty.is(m) || present.allChanged) {
        states.is(m, state(m).ordinal(), now);
        power.draws(m, watts(m), now);
      }
    }
    power.total(now);
    for (int l = 0; l < layout.lines; l++) {
      int cause = present.trail.cause[layout.feedHead[l]];
      holders.is(l, present.lineHours.is(l) ? cause : -1, now);
    }
  }

  private void lookWhoHasIt(double now) {
    boolean used = false;
    boolean changing = false;
    for (int m = 0; m < machines; m++) {
      crops.belongs(m, rostering.serves[m], states, now);
      used |= rostering.used[m];
      changing |= rostering.inChangeover[m];
    }
    int working = rostering.lineAtWork();
    Use use = used ? Use.UNCREWED : Use.UNUSED;
    if (working >= layout.lines) {
      use = Use.CONCURRENT;
    } else if (changing) {
      use = Use.CHANGEOVER;
    }
    boolean alone = working >= 0 && working < layout.lines;
    building.is(0, alone ? Use.values().length + working : use.ordinal(), now);
  }

  private State state(int m) {
    if (rostering.inChangeover[m]) {
      return State.CHANGEOVER;
    }
    if (!rostering.used[m]) {
      return State.UNUSED;
    }
    if (!present.counters.duty.is(m)) {
      return State.UNCREWED;
    }
    if (standing.isDown(m)) {
      return standing.isPlanned[m] ? State.PLANNED : State.DOWN;
    }
    if (standing.isChanging(m)) {
      return standing.isWithoutRoom(m) ? State.BLOCKED : State.CHANGING;
    }
    if (present.network.inflowKgPerS[m] > 0) {
      return isHeldBack(m) ? State.SLOWED : State.FULL_RATE;
    }
    return isAlongside(m) ? State.FULL_RATE : withoutFlow(m);
  }

  /** A machine without a limit is never held back. */
  private boolean isHeldBack(int m) {
    double used = present.network.usedShare[m];
    return used > 0 && used < 1 - EQUAL;
  }

  private boolean isAlongside(int m) {
    for (int l : layout.linesAlongside[m]) {
      if (present.lineHours.is(l)) {
        return true;
      }
    }
    return false;
  }

  private State withoutFlow(int m) {
    Network network = present.network;
    BottleneckTrail trail = present.trail;
    for (int h : layout.headsOf[m]) {
      if (network.asked.on[h]
          && !(network.rateKgPerS(h) > 0)
          && trail.place[h] >= 0
          && layout.leadsTo[h][layout.nodeOf[h][m]][trail.place[h]]) {
        return State.BLOCKED;
      }
    }
    return State.STARVED;
  }

  /** Draws nothing in a stop, a swap, a rest, off shift and out of use. */
  private double watts(int m) {
    if (!present.counters.duty.is(m) || rostering.inChangeover[m] || !standing.isUp(m, isMill[m])) {
      return 0;
    }
    if (isMill[m]) {
      return powerW[m] * Math.max(noLoad[m], motorLoad[m] * motorShare(m));
    }
    return withFlow[m] ? powerW[m] * Math.min(1, present.network.usedShare[m]) : powerW[m];
  }

  /** Inflow over what the motor allows. */
  private double motorShare(int m) {
    double share = 0;
    for (int h : layout.headsOf[m]) {
      double rate = present.network.rateKgPerS(h);
      if (rate > 0) {
        int node = layout.nodeOf[h][m];
        share += rate * present.network.load(h, node) / present.network.motorLimitKgPerS(h, node);
      }
    }
    return Math.min(1, share);
  }
}
