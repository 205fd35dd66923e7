package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.StopNumbers;
import hurdline.flow.rates.IndexSet;
import hurdline.measure.EventKind;
import hurdline.plant.Stop;
import hurdline.random.Draws;
import java.util.Arrays;

/**
 * Stops of machines: they come due on their counts, wait behind one another and for their resource,
 * and are repaired in the machine's hours.
 *
 * <p>A count keeps what is left of its amount through slowing, starving, blocking and nights, since
 * it is due against the machine's running total; it stands still in its own stop only.
 */
public final class Stopping {
  private enum Phase {
    COUNTING,
    BEHIND_ANOTHER,
    WAITING,
    UNDER_WAY
  }

  /**
   * After so many draws none above the initial age, the part counts as older than its law has it.
   */
  private static final int FIRST_DRAWS = 1000;

  private final ReplicationState present;
  private final StopReasons standing;
  private final int[] machine;
  private final int[] cause;
  private final Stop[] stop;
  private final boolean[] byFlow; // counts what flows or for how long
  private final int[] resource;
  private final int[] rank;
  private final Draws[] every;
  private final Draws[] lasts;
  private final Phase[] phase;
  private final double[] target;
  private final double[] dueS;
  private final double[] leftS;
  private final double[] sinceS;
  private final boolean[] goesOn;
  private final int[] current;
  private final StopNumbers stops;
  private final LineCounters ofLines;
  private final int[] payer; // by stop, the line that brought it about
  private final double[][] plannedS; // by stop, null where it comes due on a count
  private final int[] ahead; // by planned stop, its next date

  /** [stop] how often it began, and how long its repairs went forward or waited in their hours. */
  public final int[] count;

  public final double[] hoursS;

  /** [line] what stops cost while that line used their machine. */
  public final double[] cost;

  public Stopping(ReplicationState present, StopReasons standing) {
    this.present = present;
    this.standing = standing;
    CompiledLines layout = present.layout;
    int n = layout.stops.count();
    machine = new int[n];
    stop = new Stop[n];
    byFlow = new boolean[n];
    resource = new int[n];
    rank = new int[n];
    stops = layout.stops;
    ofLines = new LineCounters(present);
    payer = new int[n];
    plannedS = new double[n][];
    ahead = new int[n];
    cause = layout.causes.stop;
    for (int k = 0; k < n; k++) {
      machine[k] = stops.machine(k);
      stop[k] = stops.stop(k);
      byFlow[k] =
          stop[k].counted() == Stop.Counted.MASS || stop[k].counted() == Stop.Counted.RUNNING;
      resource[k] = present.resource(stop[k].needs(), name(k));
      rank[k] = present.rank(resource[k], name(k));
      plannedS[k] = stops.plannedS(k);
      present.resources.hoursOf(resource[k], gate(k));
    }
    every = new Draws[n];
    lasts = new Draws[n];
    phase = new Phase[n];
    target = new double[n];
    dueS = new double[n];
    leftS = new double[n];
    sinceS = new double[n];
    goesOn = new boolean[n];
    count = new int[n];
    hoursS = new double[n];
    cost = new double[layout.lines];
    current = new int[layout.machines];
  }

  private String name(int k) {
    return present.layout.causes.name(cause[k]);
  }

  private int gate(int k) {
    return stop[k].repairAnyTime() ? present.gates.always() : present.gates.machine(machine[k]);
  }

  public void reset() {
    Arrays.fill(current, -1);
    Arrays.fill(phase, Phase.COUNTING);
    Arrays.fill(count, 0);
    Arrays.fill(hoursS, 0);
    Arrays.fill(cost, 0);
    Arrays.fill(goesOn, false);
    Arrays.fill(ahead, 0);
    ofLines.reset();
    for (int k = 0; k < machine.length; k++) {
      every[k] = present.draws(stop[k].every(), name(k) + ".every");
      lasts[k] = present.draws(stop[k].lastsS(), name(k) + ".lasts");
      target[k] = plannedS[k] == null ? first(every[k], stop[k].already()) : nextPlannedS(k);
    }
  }

  /**
   * What is left of the first amount: that of a part which has counted so much and has not failed
   * yet, so amounts up to that are drawn again. A part older than its law allows stops at once.
   */
  private static double first(Draws every, double already) {
    double amount = every.next();
    for (int more = 0; amount < already && more < FIRST_DRAWS; more++) {
      amount = every.next();
    }
    return Math.max(0, amount - already);
  }

  /** When each count comes due at the present rates. */
  void schedule() {
    IndexSet touched = present.touched;
    for (int i = 0; i < touched.count(); i++) {
      for (int k : stops.of(touched.at(i))) {
        if (ofLines.counts(k)) {
          ofLines.flows(k);
        }
        if (phase[k] == Phase.COUNTING) {
          present.pending.set(present.slots.stopDue + k, dueS(k));
        }
      }
    }
  }

  /** Lines have taken machines or given them up, or their hours have begun or ended. */
  void linesChanged(LineCounters.Holders holders) {
    ofLines.linesChanged(holders);
  }

  /** The next date of a planned stop; no earlier than the first day. */
  private double nextPlannedS(int k) {
    return ahead[k] < plannedS[k].length
        ? Math.max(0, plannedS[k][ahead[k]])
        : Double.POSITIVE_INFINITY;
  }

  private double dueS(int k) {
    if (plannedS[k] != null) {
      return Math.max(present.nowS, target[k]);
    }
    double left = target[k] - total(k);
    double pace = ofLines.counts(k) ? ofLines.pace(k) : pace(k);
    if (!(left > 0) && (pace > 0 || !ofLines.counts(k))) {
      return present.nowS;
    }
    return pace > 0 ? present.nowS + left / pace : Double.POSITIVE_INFINITY;
  }

  private double pace(int k) {
    int m = machine[k];
    return switch (stop[k].counted()) {
      case CALENDAR -> 1;
      case CREWED -> present.counters.duty.is(m) ? 1 : 0;
      case RUNNING -> present.network.inflowKgPerS[m] > 0 ? 1 : 0;
      case MASS -> present.network.inflowKgPerS[m];
    };
  }

  private double total(int k) {
    if (ofLines.counts(k)) {
      return ofLines.total(k);
    }
    int m = machine[k];
    return switch (stop[k].counted()) {
      case CALENDAR -> present.nowS;
      case CREWED -> present.counters.duty.seconds(m, present.nowS);
      case RUNNING -> present.counters.runningS(m, present.nowS);
      case MASS -> present.counters.workedKg(m, present.nowS);
    };
  }

  /** A count has reached its amount. */
  public void due(int k) {
    present.pending.clear(present.slots.stopDue + k);
    dueS[k] = present.nowS;
    payer[k] = ofLines.counts(k) ? ofLines.line(k) : -1;
    if (current[machine[k]] >= 0) {
      phase[k] = Phase.BEHIND_ANOTHER;
    } else {
      begin(k);
    }
  }

  private void begin(int k) {
    int m = machine[k];
    current[m] = k;
    phase[k] = Phase.WAITING;
    double beganS = plannedS[k] == null ? 0 : Math.min(0, plannedS[k][ahead[k]]);
    if (!(beganS < 0)) { // else it began before the first day

      count[k]++;
      cost[payer[k] < 0 ? present.counters.line[m] : payer[k]] += stop[k].cost();
    }
    present.note(name(k), EventKind.STOPS, Double.NaN);
    leftS[k] = lasts[k].next() + beganS;
    standing.isPlanned[m] = plannedS[k] != null;
    boolean needsOne = resource[k] != present.resources.endless();
    standing.stop(m, needsOne ? present.waitingCause(resource[k]) : cause[k]);
    present.resources.ask(
        resource[k], present.jobs.repair + k, rank[k], (long) m << 32 | k, gate(k), present.nowS);
    resume(k);
  }

  /** The repair's resource is there. */
  public void repairBegins(int k) {
    pause(k);
    phase[k] = Phase.UNDER_WAY;
    standing.stop(machine[k], cause[k]);
    resume(k);
  }

  /** The machine's hours begin or end. */
  void dutyChanged(int m) {
    int k = current[m];
    if (k >= 0) {
      pause(k);
      resume(k);
    }
  }

  private void pause(int k) {
    if (goesOn[k]) {
      double passed = present.nowS - sinceS[k];
      hoursS[k] += passed;
      if (phase[k] == Phase.UNDER_WAY) {
        leftS[k] = Math.max(0, leftS[k] - passed);
        present.pending.clear(present.slots.repairEnd + k);
      }
      goesOn[k] = false;
    }
  }

  private void resume(int k) {
    if (stop[k].repairAnyTime() || present.counters.duty.is(machine[k])) {
      goesOn[k] = true;
      sinceS[k] = present.nowS;
      if (phase[k] == Phase.UNDER_WAY) {
        present.pending.set(present.slots.repairEnd + k, present.nowS + leftS[k]);
      }
    }
  }

  /** The repair is done: the count begins anew, and the next stop in turn, if any. */
  public void ends(int k) {
    int m = machine[k];
    pause(k);
    present.pending.clear(present.slots.repairEnd + k);
    present.resources.release(resource[k], present.nowS);
    present.note(name(k), EventKind.IS_UP_AGAIN, Double.NaN);
    phase[k] = Phase.COUNTING;
    present.touched.add(m);
    target[k] = nextTarget(k);
    current[m] = -1;
    int next = nextBehind(m);
    if (next >= 0) {
      begin(next);
    } else {
      standing.stop(m, -1);
    }
    present.flowsChanged = true;
  }

  private double nextTarget(int k) {
    if (plannedS[k] != null) {
      ahead[k]++;
      return nextPlannedS(k);
    }
    // what flow counts on stood still from the instant it was due, so the old target is the exact
    // base
    return (byFlow[k] ? target[k] : total(k)) + every[k].next();
  }

  private int nextBehind(int m) {
    int best = -1;
    for (int k : stops.of(m)) {
      if (phase[k] == Phase.BEHIND_ANOTHER && (best < 0 || dueS[k] < dueS[best])) {
        best = k;
      }
    }
    return best;
  }

  /** Books what is under way at the end of the horizon. */
  public void finish() {
    for (int k = 0; k < machine.length; k++) {
      pause(k);
    }
  }
}
