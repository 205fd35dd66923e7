package hurdline.work;

import hurdline.chance.Draws;
import hurdline.line.Layout;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Step;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Hammer mills: which screen is in, for how long, and the swaps between them.
 *
 * <p>With a mix of shares the next screen is the one furthest behind its share of all milled so far;
 * with orders it is that of the earliest unmet order.
 */
final class Milling {
  private static final int NO_SCREEN = -1;
  private static final double TIE = 1e-9;

  private final Present present;
  private final Layout layout;
  private final Standing standing;
  private final Orders orders;
  private final int[] mills;
  private final int[][] makes;
  private final double[][][] share; // [line][mill][screen], null where not by shares
  private final int[][][] turn; // [line][mill][screen] place in the mix, large where it is not in it
  private final int[][] inMix; // [line][mill] screens in the mix
  private final boolean[][] byOrders; // [line][mill]
  private final double[][] stayS; // [line][mill]
  private final Draws[] swap;
  private final int[] resource;
  private final int[] wanted;
  private final boolean[] underWay;
  private final double[] stayUntilS; // running seconds
  private final double[] beganS;
  private final double[] beganCrewedS;

  /** [machine][screen] kg milled and running seconds; [machine] swaps. */
  final double[][] milledKg;

  final double[][] runningS;
  final int[] swaps;

  /** [line] what swaps took beyond their hours. */
  Milling(Present present, Standing standing, Orders orders, int[][] makes) {
    this.present = present;
    this.standing = standing;
    this.orders = orders;
    this.makes = makes;
    layout = present.layout;
    int n = layout.machines;
    mills = mills(layout);
    share = new double[layout.lines][n][];
    turn = new int[layout.lines][n][];
    inMix = new int[layout.lines][n];
    byOrders = new boolean[layout.lines][n];
    stayS = new double[layout.lines][n];
    resource = new int[n];
    swap = new Draws[n];
    wanted = new int[n];
    underWay = new boolean[n];
    stayUntilS = new double[n];
    beganS = new double[n];
    beganCrewedS = new double[n];
    milledKg = new double[n][];
    runningS = new double[n][];
    swaps = new int[n];
    for (int m : mills) {
      Machine.HammerMill mill = (Machine.HammerMill) layout.machine[m];
      resource[m] = present.resource(mill.swapNeeds());
      present.resources.hoursOf(resource[m], present.gates.machine(m));
      milledKg[m] = new double[mill.screens().size()];
      runningS[m] = new double[mill.screens().size()];
      for (Line line : layout.plant.lines()) {
        plan(layout.naming.lines.index(line.name()), m, mill, line);
      }
    }
  }

  static int[] mills(Layout layout) {
    return IntStream.range(0, layout.machines)
        .filter(m -> layout.machine[m] instanceof Machine.HammerMill)
        .toArray();
  }

  /** [mill][screen] the product that the lines' steps name; −1 where none does. */
  static int[][] makes(Layout layout) {
    int[][] makes = new int[layout.machines][];
    for (int m : mills(layout)) {
      List<Machine.Screen> screens = ((Machine.HammerMill) layout.machine[m]).screens();
      makes[m] = new int[screens.size()];
      Arrays.fill(makes[m], -1);
      for (Line line : layout.plant.lines()) {
        for (Step step : line.steps()) {
          if (step.machine().equals(layout.machine[m].name())) {
            for (int s = 0; s < screens.size(); s++) {
              String product = step.makes().get(screens.get(s).name());
              if (product != null && makes[m][s] < 0) {
                makes[m][s] = layout.naming.products.index(product);
              }
            }
          }
        }
      }
    }
    return makes;
  }

  private void plan(int line, int m, Machine.HammerMill mill, Line from) {
    for (Step step : from.steps()) {
      if (step.machine().equals(mill.name())) {
        stayS[line][m] = Math.max(Step.SHORTEST_STAY.toSeconds(), step.stayS());
        byOrders[line][m] = step.mix() instanceof Step.ByOrders;
        if (step.mix() instanceof Step.Shares mix) {
          plan(line, m, mill, mix);
        } else if (step.mix() instanceof Step.FirstScreen) {
          planFirstScreen(line, m, mill.screens().size());
        }
      }
    }
  }

  private void planFirstScreen(int line, int m, int screens) {
    share[line][m] = new double[screens];
    share[line][m][0] = 1;
    turn[line][m] = new int[screens];
    Arrays.fill(turn[line][m], Integer.MAX_VALUE);
    turn[line][m][0] = 0;
    inMix[line][m] = 1;
  }

  private void plan(int line, int m, Machine.HammerMill mill, Step.Shares mix) {
    inMix[line][m] = mix.shares().size();
    int screens = mill.screens().size();
    share[line][m] = new double[screens];
    turn[line][m] = new int[screens];
    Arrays.fill(turn[line][m], Integer.MAX_VALUE);
    for (int i = 0; i < mix.shares().size(); i++) {
      Step.MixShare one = mix.shares().get(i);
      for (int s = 0; s < screens; s++) {
        if (mill.screens().get(s).name().equals(one.screen())) {
          share[line][m][s] = one.share();
          turn[line][m][s] = i;
        }
      }
    }
  }

  void reset() {
    Arrays.fill(wanted, NO_SCREEN);
    Arrays.fill(underWay, false);
    Arrays.fill(swaps, 0);
    for (int m : mills) {
      Machine.HammerMill mill = (Machine.HammerMill) layout.machine[m];
      swap[m] = present.draws(mill.swapS(), mill.name() + ".swap");
      Arrays.fill(milledKg[m], 0);
      Arrays.fill(runningS[m], 0);
      int line = firstLine(m);
      present.network.screen[m] = Math.max(0, firstScreen(line, m));
      stayUntilS[m] = stayS[line][m];
      lookForOrders(m, line);
    }
  }

  private int firstLine(int m) {
    return layout.headsOf[m].length == 0 ? 0 : layout.headLine[layout.headsOf[m][0]];
  }

  private int firstScreen(int line, int m) {
    if (byOrders[line][m]) {
      return ordered(m);
    }
    return share[line][m] == null ? 0 : furthestBehind(line, m);
  }

  void advance(double dtS) {
    for (int m : mills) {
      if (present.network.inflowKgPerS[m] > 0) {
        milledKg[m][present.network.screen[m]] += present.network.inflowKgPerS[m] * dtS;
        runningS[m][present.network.screen[m]] += dtS;
      }
    }
  }

  void schedule() {
    for (int m : mills) {
      int line = present.counters.line[m];
      boolean counts =
          share[line][m] != null
              && (inMix[line][m] > 1 || turn[line][m][present.network.screen[m]] > 0)
              && wanted[m] == NO_SCREEN
              && present.network.inflowKgPerS[m] > 0;
      double left = stayUntilS[m] - present.counters.runningS(m, present.nowS);
      present.pending.set(
          present.slots.stay[m],
          counts ? present.nowS + Math.max(0, left) : Double.POSITIVE_INFINITY);
    }
  }

  /** The stay on a screen is over. */
  void stayOver(int m) {
    present.pending.clear(present.slots.stay[m]);
    int line = present.counters.line[m];
    int next = furthestBehind(line, m);
    if (next == present.network.screen[m]) {
      stayUntilS[m] += stayS[line][m];
      present.flowsChanged = true;
    } else {
      want(m, next);
    }
  }

  /** Greatest share · all milled − milled on it; ties go to the larger share, then the earlier in the list. */
  private int furthestBehind(int line, int m) {
    double all = 0;
    for (double kg : milledKg[m]) {
      all += kg;
    }
    int best = NO_SCREEN;
    double bestLag = 0;
    for (int s = 0; s < milledKg[m].length; s++) {
      if (turn[line][m][s] < Integer.MAX_VALUE) {
        double lag = share[line][m][s] * all - milledKg[m][s];
        if (best == NO_SCREEN
            || lag > bestLag + TIE * all
            || lag >= bestLag - TIE * all && comesBefore(line, m, s, best)) {
          best = s;
          bestLag = lag;
        }
      }
    }
    return best;
  }

  private boolean comesBefore(int line, int m, int screen, int other) {
    double[] shares = share[line][m];
    return shares[screen] != shares[other]
        ? shares[screen] > shares[other]
        : turn[line][m][screen] < turn[line][m][other];
  }

  /** An order is met, or the line changes: a mill that works to orders may want another screen. */
  void ordersChanged() {
    for (int m : mills) {
      lookForOrders(m, present.counters.line[m]);
    }
  }

  private void lookForOrders(int m, int line) {
    if (byOrders[line][m]) {
      int next = ordered(m);
      standing.noOrder(m, next == NO_SCREEN ? layout.causes.noOrder : -1);
      if (next != NO_SCREEN && !underWay[m]) {
        want(m, next);
      }
    } else {
      standing.noOrder(m, -1);
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
  void askForSwaps() {
    for (int m : mills) {
      int job = present.jobs.swap + m;
      boolean wants = wanted[m] != NO_SCREEN && !underWay[m];
      if (wants && !standing.isDown(m) && !present.resources.waits(job)) {
        int rank = present.rank(resource[m], "swap");
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
      cause = waits ? layout.causes.resource[resource[m]] : layout.causes.change[m];
    }
    standing.change(m, cause);
    present.flowsChanged = true;
  }

  void swapBegins(int m) {
    underWay[m] = true;
    beganS[m] = present.nowS;
    beganCrewedS[m] = present.counters.duty.seconds(m, present.nowS);
    present.pending.set(present.slots.swapEnd[m], present.nowS + swap[m].next());
    present.note(layout.machine[m].name(), "screen swap begins", Double.NaN);
    stand(m);
  }

  void swapEnds(int m) {
    present.pending.clear(present.slots.swapEnd[m]);
    present.resources.release(resource[m], present.nowS);
    bookAfterShift(m);
    underWay[m] = false;
    swaps[m]++;
    for (int h : layout.headsOf[m]) {
      present.network.endLot(h);
    }
    present.network.screen[m] = wanted[m];
    wanted[m] = NO_SCREEN;
    present.network.remap(layout.headsOf[m]);
    int line = present.counters.line[m];
    stayUntilS[m] = present.counters.runningS(m, present.nowS) + stayS[line][m];
    present.note(layout.machine[m].name(), "screen swap ends", present.network.screen[m]);
    stand(m);
    lookForOrders(m, line);
  }

  private void bookAfterShift(int m) {
    double inHours = present.counters.duty.seconds(m, present.nowS) - beganCrewedS[m];
    present.afterShift.add(
        present.counters.line[m], present.nowS - beganS[m] - inHours, present.nowS);
  }

  void finish() {
    for (int m : mills) {
      if (underWay[m]) {
        bookAfterShift(m);
      }
    }
  }
}
