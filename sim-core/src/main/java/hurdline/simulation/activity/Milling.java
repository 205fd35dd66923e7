package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.ScreenPlan;
import hurdline.compiled.Stretch;
import hurdline.measure.EventKind;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Step;
import hurdline.random.Draws;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Hammer mills: which screen is in, for how long, and the swaps between them.
 *
 * <p>With a mix of shares the next screen is the one furthest behind its share of all milled so
 * far; with orders it is that of the earliest unmet order and, while none is open, the one furthest
 * behind its share of what has been milled without an order.
 */
public final class Milling {
  private static final int NO_SCREEN = -1;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final StopReasons standing;
  private final Orders orders;
  private final int[] mills;
  private final int[][] heads; // [machine] that pass through a mill, or fill what it makes
  private final int[][] makes;
  private final ScreenPlan[][] plan; // [line][mill], null where the line does not use it
  private final Draws[] swap;
  private final int[] resource;
  private final int[] wanted;
  private final boolean[] underWay;
  private final double[] stayUntilS; // running seconds
  private final double[] beganS;
  private final double[] beganCrewedS;
  private final boolean[] withoutOrder; // works to orders, and none is open
  private final double[][] spareKg; // [machine][screen] milled without an order

  /** [machine][screen] kg milled and running seconds; [machine] swaps. */
  final double[][] milledKg;

  public final double[][] runningS;
  public final int[] swaps;

  /** [line] what swaps took beyond their hours. */
  public Milling(ReplicationState present, StopReasons standing, Orders orders) {
    this.present = present;
    this.standing = standing;
    this.orders = orders;
    layout = present.layout;
    makes = layout.makes;
    int n = layout.machines;
    mills = mills(layout);
    heads = new int[n][];
    plan = new ScreenPlan[layout.lines][n];
    resource = new int[n];
    swap = new Draws[n];
    wanted = new int[n];
    underWay = new boolean[n];
    stayUntilS = new double[n];
    beganS = new double[n];
    beganCrewedS = new double[n];
    withoutOrder = new boolean[n];
    spareKg = new double[n][];
    milledKg = new double[n][];
    runningS = new double[n][];
    swaps = new int[n];
    for (int m : mills) {
      heads[m] =
          IntStream.concat(
                  Arrays.stream(layout.headsOf[m]),
                  IntStream.range(0, layout.heads).filter(h -> fillsFrom(h, m)))
              .distinct()
              .toArray();
      Machine.HammerMill mill = (Machine.HammerMill) layout.machine[m];
      resource[m] = present.resource(mill.swapNeeds(), "screen_change");
      present.resources.hoursOf(resource[m], present.gates.machine(m));
      spareKg[m] = new double[mill.screens().size()];
      milledKg[m] = new double[mill.screens().size()];
      runningS[m] = new double[mill.screens().size()];
      for (Line line : layout.plant.lines()) {
        plan(layout.naming.lines.index(line.name()), m, mill, line);
      }
    }
  }

  /** Behind a bin, too, what is filled is what the screen that is in makes. */
  private boolean fillsFrom(int head, int mill) {
    Stretch stretch = layout.stretch[head];
    return IntStream.range(0, stretch.sinks)
        .anyMatch(
            k ->
                stretch.sinkKind[k] == Stretch.Sink.PACKED_FROM_MILL
                    && stretch.sinkTarget[k] == mill);
  }

  public static int[] mills(CompiledLines layout) {
    return IntStream.range(0, layout.machines)
        .filter(m -> layout.machine[m] instanceof Machine.HammerMill)
        .toArray();
  }

  private void plan(int line, int m, Machine.HammerMill mill, Line from) {
    for (Step step : from.steps()) {
      if (step.machine().equals(mill.name())) {
        plan[line][m] = ScreenPlan.of(layout.plant, mill, step);
      }
    }
  }

  public void reset() {
    Arrays.fill(wanted, NO_SCREEN);
    Arrays.fill(underWay, false);
    Arrays.fill(swaps, 0);
    Arrays.fill(withoutOrder, false);
    for (int m : mills) {
      Machine.HammerMill mill = (Machine.HammerMill) layout.machine[m];
      swap[m] = present.draws(mill.swapS(), mill.name() + ".swap");
      Arrays.fill(milledKg[m], 0);
      Arrays.fill(runningS[m], 0);
      Arrays.fill(spareKg[m], 0);
      int line = firstLine(m);
      present.network.screen[m] = Math.max(0, firstScreen(line, m));
      stayUntilS[m] = stayS(line, m);
      lookForOrders(m, line);
    }
  }

  private int firstLine(int m) {
    return layout.headsOf[m].length == 0 ? 0 : layout.headLine[layout.headsOf[m][0]];
  }

  private int firstScreen(int line, int m) {
    if (plan[line][m] == null) {
      return 0;
    }
    int ordered = plan[line][m].byOrders() ? ordered(m) : NO_SCREEN;
    return ordered == NO_SCREEN ? plan[line][m].furthestBehind(milledKg[m]) : ordered;
  }

  private double stayS(int line, int m) {
    return plan[line][m] == null ? Step.SHORTEST_STAY.toSeconds() : plan[line][m].stayS();
  }

  void advance(double dtS) {
    for (int m : mills) {
      if (present.network.inflowKgPerS[m] > 0) {
        double kg = present.network.inflowKgPerS[m] * dtS;
        milledKg[m][present.network.screen[m]] += kg;
        spareKg[m][present.network.screen[m]] += withoutOrder[m] ? kg : 0;
        runningS[m][present.network.screen[m]] += dtS;
      }
    }
  }

  void schedule() {
    for (int m : mills) {
      int line = present.counters.line[m];
      boolean counts =
          plan[line][m] != null
              && (withoutOrder[m] || !plan[line][m].byOrders())
              && plan[line][m].mayLeave(present.network.screen[m])
              && wanted[m] == NO_SCREEN
              && present.network.inflowKgPerS[m] > 0;
      double left = stayUntilS[m] - present.counters.runningS(m, present.nowS);
      present.pending.set(
          present.slots.stay[m],
          counts ? present.nowS + Math.max(0, left) : Double.POSITIVE_INFINITY);
    }
  }

  /** The stay on a screen is over. */
  public void stayOver(int m) {
    present.pending.clear(present.slots.stay[m]);
    int line = present.counters.line[m];
    int next = plan[line][m].furthestBehind(withoutOrder[m] ? spareKg[m] : milledKg[m]);
    if (next == present.network.screen[m]) {
      stayUntilS[m] += stayS(line, m);
      present.flowsChanged = true;
    } else {
      want(m, next);
    }
  }

  /** An order is met, or the line changes: a mill that works to orders may want another screen. */
  public void ordersChanged() {
    for (int m : mills) {
      lookForOrders(m, present.counters.line[m]);
    }
  }

  private void lookForOrders(int m, int line) {
    boolean byOrders = plan[line][m] != null && plan[line][m].byOrders();
    int ordered = byOrders ? ordered(m) : NO_SCREEN;
    boolean without = byOrders && ordered == NO_SCREEN;
    standing.noOrder(m, without && !plan[line][m].hasShares() ? layout.causes.noOrder : -1);
    if (underWay[m]) {
      return; // looked for again when the swap ends
    }
    boolean begins = without && !withoutOrder[m];
    withoutOrder[m] = without;
    if (ordered != NO_SCREEN) {
      want(m, ordered);
    } else if (begins && plan[line][m].hasShares()) {
      stayUntilS[m] = present.counters.runningS(m, present.nowS) + stayS(line, m);
      want(m, plan[line][m].furthestBehind(spareKg[m]));
    }
  }

  /** Screen of the earliest unmet order, of several the first in the file. */
  private int ordered(int m) {
    int best = NO_SCREEN;
    double bestS = Double.POSITIVE_INFINITY;
    for (int s = 0; s < makes[m].length; s++) {
      if (makes[m][s] >= 0 && orders.nextDueS(makes[m][s]) < bestS) {
        best = s;
        bestS = orders.nextDueS(makes[m][s]);
      }
    }
    return best;
  }

  private void want(int m, int screen) {
    boolean other = screen != present.network.screen[m];
    wanted[m] = other ? screen : NO_SCREEN;
    if (!other) {
      present.resources.withdraw(present.jobs.swap + m, present.nowS);
    }
    stand(m);
  }

  /** New jobs: a swap is asked for while the machine is up. */
  public void askForSwaps() {
    for (int m : mills) {
      int job = present.jobs.swap + m;
      boolean wants = wanted[m] != NO_SCREEN && !underWay[m];
      if (wants && !standing.isDown(m) && !present.resources.waits(job)) {
        int rank = present.rank(resource[m], "screen_change");
        present.resources.ask(
            resource[m], job, rank, (long) m << 32, present.gates.machine(m), present.nowS);
      } else if (wants && standing.isDown(m)) {
        present.resources.withdraw(job, present.nowS);
      }
    }
  }

  private void stand(int m) {
    int cause = -1;
    if (underWay[m] || wanted[m] != NO_SCREEN) {
      boolean waits = !underWay[m] && resource[m] != present.resources.endless();
      cause = waits ? present.waitingCause(resource[m]) : layout.causes.change[m];
    }
    standing.change(m, cause);
    present.flowsChanged = true;
  }

  public void swapBegins(int m) {
    underWay[m] = true;
    beganS[m] = present.nowS;
    beganCrewedS[m] = present.counters.duty.seconds(m, present.nowS);
    present.pending.set(present.slots.swapEnd[m], present.nowS + swap[m].next());
    present.note(layout.machine[m].name(), EventKind.SCREEN_CHANGE_BEGINS, Double.NaN);
    stand(m);
  }

  public void swapEnds(int m) {
    present.pending.clear(present.slots.swapEnd[m]);
    present.resources.release(resource[m], present.nowS);
    bookAfterShift(m);
    underWay[m] = false;
    swaps[m]++;
    for (int h : heads[m]) {
      present.network.endLot(h);
    }
    present.network.screen[m] = wanted[m];
    wanted[m] = NO_SCREEN;
    present.network.remap(heads[m]);
    int line = present.counters.line[m];
    stayUntilS[m] = present.counters.runningS(m, present.nowS) + stayS(line, m);
    present.note(layout.machine[m].name(), EventKind.SCREEN_CHANGE_ENDS, present.network.screen[m]);
    stand(m);
    lookForOrders(m, line);
  }

  private void bookAfterShift(int m) {
    double inHours = present.counters.duty.seconds(m, present.nowS) - beganCrewedS[m];
    present.afterShift.add(
        present.counters.line[m], present.nowS - beganS[m] - inHours, present.nowS);
  }

  public void finish() {
    for (int m : mills) {
      if (underWay[m]) {
        bookAfterShift(m);
      }
    }
  }
}
