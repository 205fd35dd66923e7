package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.event.FutureEvents;
import hurdline.measure.EventKind;
import hurdline.plant.Packaging;
import hurdline.random.Draws;
import hurdline.random.RandomStream;
import java.util.Arrays;

/**
 * Fillers and presses: one package at a time, a change on its spout when it is full, and filling
 * goes on at once on the lowest-numbered spout that is ready.
 *
 * <p>A package is full when the product's running total at this filler reaches the next multiple of
 * its mass, so the begun package stays over nights and while another product is filled. The total
 * is carried only when a rate changes; when packages are full follows from there.
 *
 * <p><b>Easy fillers.</b> Where no change can ever keep a filler waiting ({@link Fillers}), nothing
 * but the count of its packages comes of them, and a third of all events in a year would be spent
 * on them. They are counted when a rate or the calendar changes instead. A change under way when
 * the machine's hours end is simulated like any other, since what it lasts beyond them is booked.
 * If somebody follows the trace every package is an event again; {@code ShortCutsTest} holds one
 * way against the other.
 *
 * <p>One file because a package, its change and its closing are states of one filler.
 */
public final class Filling {
  private static final int READY = 0;
  private static final int ASKED = 1;
  private static final int UNDER_WAY = 2;
  private static final int NO_ROOM = 3;
  private static final int NOBODY = -1;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final StopReasons standing;
  private final Fillers fillers;
  private final int products;
  private final int[] packers;
  private final double[] packageKg;
  private final int[][] made;
  private final int[] phase; // by spout
  private final int[]
      changeResource; // by spout, of the change asked for; NOBODY where none was asked
  private final int[] changeProduct; // by spout
  private final double[] beganS; // by spout
  private final double[] beganCrewedS;
  private final int[] filling; // by machine, the spout that fills, −1 for none
  private final Draws[] change; // by machine and packaging of the product
  private final double[] filledKg; // [machine * products + product] at the instant of carriedS
  private final double[] inflowKgPerS; // likewise, since then
  private final boolean[] flows; // by machine
  private final double[] carriedS; // by machine
  private final boolean[] easy; // by machine
  private final double[] lastFullS; // by easy machine
  private final int[] paid; // [line * kinds + kind] packages

  private final PackageKinds kinds;
  private final PackageContents contents;

  /** What packages of products that are paid by what is in them are worth. */
  public final PackageGrades grades;

  /** First packages after a changeover. */
  public final PurgePackages purge;

  /** Full packages in their stores. */
  public final FinishedGoods goods;

  /** [machine * products + product] full packages. */
  public final int[] full;

  /** [line] packages paid. */
  public final double[] cost;

  public Filling(ReplicationState present, StopReasons standing) {
    this.present = present;
    this.standing = standing;
    layout = present.layout;
    fillers = new Fillers(present);
    contents = new PackageContents(present, fillers);
    purge = new PurgePackages(present, fillers, contents);
    grades = new PackageGrades(present, fillers, contents, purge);
    goods = new FinishedGoods(present, this, fillers.spoutMachine.length);
    products = layout.naming.products.count();
    packers = fillers.packers;
    packageKg = fillers.packageKg;
    made = fillers.made;
    int spouts = fillers.spoutMachine.length;
    phase = new int[spouts];
    changeResource = new int[spouts];
    changeProduct = new int[spouts];
    beganS = new double[spouts];
    beganCrewedS = new double[spouts];
    filling = new int[layout.machines];
    change = new Draws[layout.machines * products];
    inflowKgPerS = new double[layout.machines * products];
    filledKg = new double[layout.machines * products];
    full = new int[layout.machines * products];
    kinds = new PackageKinds(fillers, products);
    paid = new int[layout.lines * kinds.count()];
    cost = new double[layout.lines];
    flows = new boolean[layout.machines];
    carriedS = new double[layout.machines];
    easy = new boolean[layout.machines];
    lastFullS = new double[layout.machines];
  }

  public void reset() {
    Arrays.fill(phase, READY);
    contents.reset();
    purge.reset();
    grades.reset();
    goods.reset();
    Arrays.fill(filledKg, 0);
    Arrays.fill(inflowKgPerS, 0);
    Arrays.fill(full, 0);
    Arrays.fill(flows, false);
    Arrays.fill(carriedS, 0);
    Arrays.fill(lastFullS, Double.NEGATIVE_INFINITY);
    Arrays.fill(paid, 0);
    Arrays.fill(cost, 0);
    for (int m = 0; m < layout.machines; m++) {
      filling[m] = fillers.spouts[m] > 0 ? fillers.firstSpout[m] : -1;
    }
    for (int m : packers) {
      easy[m] = fillers.easyChangeS[m] >= 0 && present.trace == null && !present.plain;
      RandomStream stream = present.stream(layout.machine[m].name() + ".change");
      for (int p = 0; p < products; p++) {
        int at = m * products + p;
        change[at] =
            fillers.packaging[at] == null
                ? null
                : new Draws(fillers.packaging[at].changeS(), stream);
      }
    }
  }

  private double filledKg(int m, int at) {
    return filledKg[at] + inflowKgPerS[at] * (present.nowS - carriedS[m]);
  }

  /** Brings a filler's running totals up to now. */
  private void carry(int m) {
    if (flows[m]) {
      for (int p : made[m]) {
        filledKg[m * products + p] = filledKg(m, m * products + p);
      }
    }
    carriedS[m] = present.nowS;
  }

  /** Product of a sink as the screens now stand. */
  int productOf(Stretch stretch, int sink) {
    return fillers.productOf(stretch, sink, present.network.screen);
  }

  /** When each filler's package is full at the present rates. */
  void schedule() {
    for (int m : packers) {
      if (present.touched.has(m) && (flows[m] || present.network.inflowKgPerS[m] > 0)) {
        countUp(m);
        carry(m);
        setInflows(m);
        contents.flows(m);
        present.pending.set(present.slots.full[m], fullS(m));
      }
    }
  }

  private void setInflows(int m) {
    for (int p : made[m]) {
      inflowKgPerS[m * products + p] = 0;
    }
    flows[m] = present.network.inflowKgPerS[m] > 0;
    int[] heads = fillers.head[m];
    for (int i = 0; flows[m] && i < heads.length; i++) {
      double rate = present.network.rateKgPerS(heads[i]);
      if (rate > 0) {
        int sink = fillers.sink[m][i];
        int product = productOf(layout.stretch[heads[i]], sink);
        inflowKgPerS[m * products + product] += rate * present.network.sinkKg(heads[i], sink);
      }
    }
  }

  private double fullS(int m) {
    double first = Double.POSITIVE_INFINITY;
    for (int p : made[m]) {
      int at = m * products + p;
      if (inflowKgPerS[at] > 0 && packageKg[at] < Double.POSITIVE_INFINITY && !easy[m]) {
        first = Math.min(first, reachedS(m, at, (full[at] + 1) * packageKg[at]));
      }
    }
    return first;
  }

  /** When a running total reaches a mass; at once if it is there already. */
  private double reachedS(int m, int at, double kg) {
    return Math.max(present.nowS, carriedS[m] + (kg - filledKg[at]) / inflowKgPerS[at]);
  }

  /** A package is full: counted and paid, and its spout asks for a change. */
  public void full(int m) {
    for (int p : made[m]) {
      int at = m * products + p;
      if (inflowKgPerS[at] > 0 && packageKg[at] < Double.POSITIVE_INFINITY) {
        double left = (full[at] + 1) * packageKg[at] - filledKg(m, at);
        if (left <= inflowKgPerS[at] * FutureEvents.instantS() * 1.5) {
          packageDone(m, p, count(m, p));
        }
      }
    }
    present.pending.set(present.slots.full[m], fullS(m));
  }

  /** Whether the package is purge. */
  private boolean count(int m, int product) {
    BegunPackage one = contents.now(m, product);
    boolean isPurge = one != null && purge.takes(product, one);
    if (one != null && !isPurge) {
      grades.full(product, one);
      goods.full(product, one);
    }
    if (one != null) {
      one.empty();
    }
    full[m * products + product]++;
    paid[present.counters.line[m] * kinds.count() + kinds.of(m * products + product)]++;
    return isPurge;
  }

  /** Counts what an easy filler has filled since rates or lines last changed. */
  private void countUp(int m) {
    if (easy[m] && flows[m]) {
      int p = made[m][0];
      int at = m * products + p;
      double there = filledKg(m, at) + inflowKgPerS[at] * FutureEvents.instantS();
      if (there >= (full[at] + 1) * packageKg[at]) {
        while (there >= (full[at] + 1) * packageKg[at]) {
          count(m, p);
        }
        lastFullS[m] = carriedS[m] + (full[at] * packageKg[at] - filledKg[at]) / inflowKgPerS[at];
      }
    }
  }

  /** To be called before the calendar changes a machine's hours or its line. */
  void countUp() {
    for (int m : packers) {
      countUp(m);
    }
  }

  /**
   * When the machine's hours end, a change that an easy filler has under way is simulated to its
   * end.
   */
  void dutyChanged(int m, boolean duty) {
    double endS = lastFullS[m] + fillers.easyChangeS[m];
    int spout = fillers.firstSpout[m];
    if (duty || !easy[m] || !(endS > present.nowS) || phase[spout] != READY) {
      return;
    }
    if (lastFullS[m] >= present.nowS - FutureEvents.instantS()) {
      ask(m, made[m][0], spout); // full just now: its change waits for the next hours
    } else {
      phase[spout] = UNDER_WAY;
      changeResource[spout] = NOBODY;
      beganS[spout] = lastFullS[m];
      double passedS = present.nowS - lastFullS[m];
      beganCrewedS[spout] = present.counters.duty.seconds(m, present.nowS) - passedS;
      present.pending.set(present.slots.changeEnd + spout, endS);
    }
  }

  private void packageDone(int m, int product, boolean isPurge) {
    present.note(layout.machine[m].name(), EventKind.PACKAGE_FULL, full[m * products + product]);
    int spout = filling[m];
    boolean isIn = isPurge || goods.takesIn(product);
    if (spout >= 0 && isIn) {
      ask(m, product, spout);
      nextSpout(m);
    } else if (spout >= 0) {
      phase[spout] = NO_ROOM;
      changeProduct[spout] = product;
      goods.waits(spout, product);
      nextSpout(m);
    } else if (!isIn) {
      goods.putsIn(product);
    }
  }

  /** Product of the full package that stands on a spout. */
  int fullOn(int spout) {
    return changeProduct[spout];
  }

  /** The package that waited on a spout is in its store now. */
  void hasRoom(int spout) {
    int m = fillers.spoutMachine[spout];
    ask(m, changeProduct[spout], spout);
    stand(m);
  }

  private void ask(int m, int product, int spout) {
    phase[spout] = ASKED;
    int at = m * products + product;
    int resource = fillers.resource[at];
    changeResource[spout] = resource;
    changeProduct[spout] = product;
    present.resources.ask(
        resource,
        present.jobs.change + spout,
        fillers.rank[at],
        (long) m << 32 | spout,
        present.gates.machine(m),
        present.nowS);
  }

  private void nextSpout(int m) {
    filling[m] = -1;
    int from = fillers.firstSpout[m];
    for (int k = from; k < from + fillers.spouts[m] && filling[m] < 0; k++) {
      if (phase[k] == READY) {
        filling[m] = k;
      }
    }
    stand(m);
  }

  /**
   * While no spout is ready: held by a change under way, else by the resource that one waits for,
   * else by a store without room.
   */
  private void stand(int m) {
    int cause = -1;
    if (filling[m] < 0 && !easy[m]) {
      cause = layout.causes.change[m];
      int asked = first(m, ASKED);
      if (first(m, UNDER_WAY) == NOBODY && asked != NOBODY) {
        int resource = changeResource[asked];
        cause = resource == present.resources.endless() ? cause : present.waitingCause(resource);
      } else if (first(m, UNDER_WAY) == NOBODY) {
        cause = layout.causes.store[layout.stores.storeOf[changeProduct[fillers.firstSpout[m]]]];
      }
    }
    standing.change(m, cause);
  }

  /** A machine's first spout in a phase. */
  private int first(int m, int inPhase) {
    for (int k = fillers.firstSpout[m]; k < fillers.firstSpout[m] + fillers.spouts[m]; k++) {
      if (phase[k] == inPhase) {
        return k;
      }
    }
    return NOBODY;
  }

  /** The change of a spout begins: its resource is there. */
  public void changeBegins(int spout) {
    int m = fillers.spoutMachine[spout];
    phase[spout] = UNDER_WAY;
    beganS[spout] = present.nowS;
    beganCrewedS[spout] = present.counters.duty.seconds(m, present.nowS);
    double lasts = change[m * products + changeProduct[spout]].next();
    present.pending.set(present.slots.changeEnd + spout, present.nowS + lasts);
    stand(m);
  }

  public void changeEnds(int spout) {
    int m = fillers.spoutMachine[spout];
    present.pending.clear(present.slots.changeEnd + spout);
    if (changeResource[spout] != NOBODY) {
      present.resources.release(changeResource[spout], present.nowS);
    }
    phase[spout] = READY;
    bookAfterShift(spout);
    if (filling[m] < 0) {
      filling[m] = spout;
    }
    stand(m);
  }

  private void bookAfterShift(int spout) {
    int m = fillers.spoutMachine[spout];
    double inHours = present.counters.duty.seconds(m, present.nowS) - beganCrewedS[spout];
    double after = present.nowS - beganS[spout] - inHours;
    if (after > FutureEvents.instantS()) { // less is the rounding of two sums of seconds
      present.afterShift.add(present.counters.line[m], after, present.nowS);
    }
  }

  /** Full packages of a product that are of one kind. */
  public double full(int product, Packaging packaging) {
    double sum = 0;
    for (int m : packers) {
      int at = m * products + product;
      sum += packaging.equals(fillers.packaging[at]) ? full[at] : 0;
    }
    return sum;
  }

  /** What a package of a mass holds of a product that is made of the mean crop. */
  void typicalPackage(int product, double massKg, BegunPackage to) {
    contents.typical(product, massKg, to);
  }

  /** Of a product with a store what has not left, at its moisture basis, begun packages too. */
  public double heldKg(int product) {
    double kg = goods.heldKg(product);
    for (int m : packers) {
      BegunPackage one = contents.now(m, product);
      kg += one == null ? 0 : one.allKg();
    }
    return kg;
  }

  /** Books what is under way at the end of the horizon. */
  public void finish() {
    book();
    for (int spout = 0; spout < phase.length; spout++) {
      if (phase[spout] == UNDER_WAY) {
        bookAfterShift(spout);
      }
    }
  }

  /** What packages that are full by now cost. */
  public void book() {
    countUp();
    for (int l = 0; l < cost.length; l++) {
      cost[l] = 0;
      for (int kind = 0; kind < kinds.count(); kind++) {
        int packages = paid[l * kinds.count() + kind];
        cost[l] += packages > 0 ? packages * kinds.packaging(kind).cost() : 0;
      }
    }
  }
}
