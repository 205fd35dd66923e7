package hurdline.simulation.activity;

import hurdline.compiled.CompiledLines;
import hurdline.event.EventHeap;
import hurdline.event.FutureEvents;
import hurdline.measure.EventKind;
import hurdline.plant.Line;
import hurdline.plant.Yard;
import hurdline.random.Draws;
import hurdline.simulation.yard.Bales;
import hurdline.simulation.yard.Hauling;
import hurdline.simulation.yard.Stacking;
import java.util.Arrays;

/**
 * From the yard to the feed: lifts set bales on the table of a line, and the feeder takes the next
 * one the moment the present one is used up.
 *
 * <p>One file because a lift, its lot and the wait for room are states of one feed.
 */
public final class Feeding {
  private static final int NONE = -1;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final Stacking stacking;
  private final Hauling hauling;
  private final Bales bales;
  private final int lines;
  private final int[] feeder;
  private final int[][] forms; // by line, what it takes: its crop and the forms of that
  private final int[] component; // of the yard's numbering, by ours
  private final Yard.Lift[] lift; // by crop, null where the table is filled at once
  private final int[][] liftBales; // [line][crop], like what follows
  private final int[][] resource;
  private final int[][] rank;
  private final Draws[] lasts; // by crop
  private final Tables tables; // by line
  private final int[] promised; // places
  private final int[] feeding; // bale, by line
  private final int[] liftsWaiting; // by line
  private final int[] liftsUnderWay;
  private final boolean[] givenUp; // another line has the feeder

  // a pool of lifts
  private final int[] liftLine;
  private final int[] liftCrop;
  private final int[] liftPromised; // bales promised in the yard
  private final int[] liftCount; // bales picked
  private final int[][] liftBale;
  private final double[] beganS;
  private final double[] beganOpenS;
  private final EventHeap ends = new EventHeap(16);

  /** On tables and in feeders. */
  public final FeedStock stock;

  /** [line][crop] bales used up, each form of a crop by itself. */
  public final int[][] usedUp;

  public Feeding(
      ReplicationState present, Stacking stacking, Hauling hauling, Bales bales, int[] component) {
    this.present = present;
    this.stacking = stacking;
    this.hauling = hauling;
    this.bales = bales;
    this.component = component;
    layout = present.layout;
    lines = layout.lines;
    feeder = new int[lines];
    int crops = layout.naming.crops.count();
    forms = new int[lines][];
    Arrays.setAll(forms, l -> layout.forms[layout.crop[l]]);
    lift = new Yard.Lift[crops];
    Arrays.setAll(lift, c -> layout.plant.yard().lifts().get(layout.naming.crops.name(c)));
    liftBales = new int[lines][crops];
    resource = new int[lines][crops];
    rank = new int[lines][crops];
    lasts = new Draws[crops];
    tables = Tables.of(layout);
    promised = new int[lines];
    feeding = new int[lines];
    stock = new FeedStock(present, bales, tables, feeding, forms, component);
    liftsWaiting = new int[lines];
    liftsUnderWay = new int[lines];
    givenUp = new boolean[lines];
    usedUp = new int[lines][crops];
    for (Line line : layout.plant.lines()) {
      setUp(layout.naming.lines.index(line.name()), line);
    }
    int lifts = Tables.places(layout);
    liftLine = new int[lifts];
    liftCrop = new int[lifts];
    liftPromised = new int[lifts];
    liftCount = new int[lifts];
    liftBale = new int[lifts][];
    Arrays.setAll(liftBale, at -> new int[16]);
    beganS = new double[lifts];
    beganOpenS = new double[lifts];
  }

  private void setUp(int l, Line line) {
    feeder[l] = layout.naming.machines.index(line.feed());
    for (int c : forms[l]) {
      liftBales[l][c] = lift[c] == null ? 1 : Math.min(lift[c].bales(), tables.places(l));
      if (lift[c] != null) {
        resource[l][c] = present.resource(lift[c].job().needs(), "lift");
        rank[l][c] = present.rank(resource[l][c], "lift");
        present.resources.hoursOf(resource[l][c], present.gates.line(l));
      }
    }
  }

  public void reset() {
    tables.reset();
    Arrays.fill(promised, 0);
    Arrays.fill(feeding, NONE);
    Arrays.fill(liftsWaiting, 0);
    Arrays.fill(liftsUnderWay, 0);
    Arrays.fill(liftLine, NONE);
    Arrays.fill(givenUp, false);
    for (int[] ofLine : usedUp) {
      Arrays.fill(ofLine, 0);
    }
    ends.reset();
    for (int[] ofLine : forms) {
      for (int c : ofLine) {
        if (lift[c] != null) {
          String name = "set_on_table." + layout.naming.crops.name(c);
          lasts[c] = present.draws(lift[c].job().lastsS(), name);
        }
      }
    }
  }

  /**
   * New jobs: asks for lifts wherever places and bales are free, and feeds what lies on a table.
   *
   * @return whether room in the yard or on a table has come free, so that jobs must be looked for
   *     anew
   */
  public boolean askForLifts() {
    boolean freed = false;
    for (int l = 0; l < lines; l++) {
      if (present.lineHours.is(l)) {
        freed |= fillTable(l);
        freed |= takeNext(l);
      }
    }
    return freed;
  }

  private int free(int l) {
    return tables.places(l) - tables.count(l) - promised[l];
  }

  /** Of several forms the one with the next bale; another does not go first where it lacks room. */
  private boolean fillTable(int l) {
    boolean filled = false;
    int form = free(l) > 0 ? stacking.nextForm(forms[l]) : NONE;
    while (form != NONE && free(l) >= liftBales[l][form]) {
      if (lift[form] == null) {
        setDown(l, form);
        filled = true;
      } else {
        ask(l, form);
      }
      form = free(l) > 0 ? stacking.nextForm(forms[l]) : NONE;
    }
    return filled;
  }

  private void setDown(int l, int form) {
    stacking.promise(form, 1);
    int bale = stacking.pick(form);
    stacking.leave(bale, present.nowS);
    tables.setDown(l, bale);
  }

  private void ask(int l, int form) {
    int one = 0;
    while (liftLine[one] != NONE) {
      one++;
    }
    liftLine[one] = l;
    liftCrop[one] = form;
    liftPromised[one] = Math.min(liftBales[l][form], stacking.unpromised(form));
    liftCount[one] = 0;
    stacking.promise(form, liftPromised[one]);
    promised[l] += liftBales[l][form];
    liftsWaiting[l]++;
    present.resources.ask(
        resource[l][form],
        present.jobs.lift + one,
        rank[l][form],
        (long) feeder[l] << 32 | one,
        present.gates.line(l),
        present.nowS);
  }

  /** A lift begins: its bales are chosen now. */
  public void liftBegins(int one) {
    int l = liftLine[one];
    int form = liftCrop[one];
    int count = Math.min(liftBales[l][form], liftPromised[one] + stacking.unpromised(form));
    stacking.promise(form, count - liftPromised[one]);
    if (liftBale[one].length < count) {
      liftBale[one] = new int[count];
    }
    for (int i = 0; i < count; i++) {
      liftBale[one][i] = stacking.pick(form);
    }
    liftCount[one] = count;
    liftsWaiting[l]--;
    liftsUnderWay[l]++;
    beganS[one] = present.nowS;
    beganOpenS[one] = present.lineHours.seconds(l, present.nowS);
    ends.add(present.nowS + lasts[form].next(), one, one);
    tellPending();
  }

  private void tellPending() {
    present.pending.set(present.slots.liftEnd, ends.peekS());
  }

  /** All lifts that end at this instant. */
  public void liftsEnd() {
    while (ends.peekS() <= present.nowS + FutureEvents.instantS()) {
      liftEnds(ends.poll());
    }
    tellPending();
  }

  private void liftEnds(int one) {
    int l = liftLine[one];
    present.resources.release(resource[l][liftCrop[one]], present.nowS);
    bookAfterShift(one);
    for (int i = 0; i < liftCount[one]; i++) {
      int bale = liftBale[one][i];
      stacking.leave(bale, present.nowS);
      tables.setDown(l, bale);
    }
    present.note(layout.machine[feeder[l]].name(), EventKind.SET_ON_TABLE, liftCount[one]);
    promised[l] -= liftBales[l][liftCrop[one]];
    liftsUnderWay[l]--;
    liftLine[one] = NONE;
    if (givenUp[l]) {
      giveBack(l);
    } else {
      takeNext(l);
    }
  }

  private void bookAfterShift(int one) {
    int l = liftLine[one];
    double inside = present.lineHours.seconds(l, present.nowS) - beganOpenS[one];
    present.afterShift.add(l, present.nowS - beganS[one] - inside, present.nowS);
  }

  private boolean takeNext(int l) {
    if (feeding[l] != NONE || tables.count(l) == 0) {
      return false;
    }
    int bale = tables.take(l);
    feeding[l] = bale;
    int h = layout.feedHead[l];
    present.carrying.upToNow();
    present.network.endLot(h);
    bales.lot(bale, component, present.network.lot(h));
    present.network.newLot(h, bales.massKg(bale));
    present.network.asked.lacks(h, NONE);
    present.flowsChanged = true;
    present.causesChanged = true;
    if (!(bales.massKg(bale) > 0)) {
      baleUsedUp(l);
    }
    return true;
  }

  /** The feeder has used up its bale. */
  public void baleUsedUp(int l) {
    int h = layout.feedHead[l];
    present.network.endLot(h);
    present.network.restKg[h] = 0;
    usedUp[l][bales.crop(feeding[l])]++;
    stacking.free(feeding[l]);
    feeding[l] = NONE;
    present.network.asked.lacks(h, layout.causes.noBales);
    present.flowsChanged = true;
    present.causesChanged = true;
    takeNext(l);
  }

  boolean hasNothing(int l) {
    return feeding[l] == NONE && tables.count(l) == 0 && liftsWaiting[l] + liftsUnderWay[l] == 0;
  }

  /** Whether the crop is through: nothing here, nothing in the yard and nothing to come. */
  boolean isThrough(int l) {
    boolean through = hasNothing(l);
    for (int form : forms[l]) {
      through = through && stacking.inYard(form) == 0 && !hauling.moreToCome(form, present.nowS);
    }
    return through;
  }

  /** Says why an idle feeder has nothing. */
  void tellWhy(int l, boolean cropDone) {
    int h = layout.feedHead[l];
    if (feeding[l] == NONE) {
      int why = why(l, cropDone);
      if (present.network.asked.without(h) != why) {
        present.network.asked.lacks(h, why);
        present.causesChanged = true;
      }
    }
  }

  private int why(int l, boolean cropDone) {
    if (cropDone) {
      return layout.causes.cropDone;
    }
    if (liftsUnderWay[l] > 0) {
      return layout.causes.setOnTable;
    }
    if (liftsWaiting[l] > 0) {
      return waitingFor(l);
    }
    return isKeptApart(l) ? layout.causes.keptApart : layout.causes.noBales;
  }

  /** Whether some of what lies in the yard for a line may not be fed yet. */
  private boolean isKeptApart(int l) {
    boolean apart = false;
    for (int form : forms[l]) {
      apart |= stacking.inYard(form) > stacking.mayBeFed(form);
    }
    return apart;
  }

  private int waitingFor(int l) {
    int needed = resource[l][forms[l].length == 1 ? forms[l][0] : liftCrop[firstWaiting(l)]];
    return needed == present.resources.endless()
        ? layout.causes.setOnTable
        : present.waitingCause(needed);
  }

  /** Of lifts that wait for a line, the first of the pool. */
  private int firstWaiting(int l) {
    int one = 0;
    while (liftLine[one] != l || liftCount[one] > 0) {
      one++;
    }
    return one;
  }

  /** A line begins to use a feeder: bales of other lines on it go back to the yard, in front. */
  void lineTakesOver(int line) {
    givenUp[line] = false;
    for (int l = 0; l < lines; l++) {
      if (l != line && feeder[l] == feeder[line]) {
        givenUp[l] = true;
        giveBack(l);
        withdrawLifts(l);
      }
    }
  }

  /** A line's campaign has ended: lifts that have not begun are no longer wanted. */
  void withdrawLifts(int l) {
    for (int one = 0; one < liftLine.length; one++) {
      if (liftLine[one] == l && present.resources.waits(present.jobs.lift + one)) {
        present.resources.withdraw(present.jobs.lift + one, present.nowS);
        stacking.promise(liftCrop[one], -liftPromised[one]);
        promised[l] -= liftBales[l][liftCrop[one]];
        liftsWaiting[l]--;
        liftLine[one] = NONE;
      }
    }
  }

  /** At the end, once it is told: all tables and feeders are cleared into the yard. */
  public void clear() {
    for (int l = 0; l < lines; l++) {
      giveBack(l);
    }
  }

  private void giveBack(int l) {
    int h = layout.feedHead[l];
    for (int i = tables.count(l) - 1; i >= 0; i--) {
      int bale = tables.bale(l, i);
      stacking.putBackInFront(bale, bales.massKg(bale), present.nowS);
    }
    tables.clear(l);
    if (feeding[l] != NONE) {
      present.network.endLot(h);
      stacking.putBackInFront(feeding[l], present.network.restKg[h], present.nowS);
      present.network.restKg[h] = 0;
      feeding[l] = NONE;
      present.network.asked.lacks(h, layout.causes.noBales);
      present.flowsChanged = true;
    }
  }

  public void finish() {
    for (int one = 0; one < liftLine.length; one++) {
      if (liftLine[one] != NONE && liftCount[one] > 0) {
        bookAfterShift(one);
      }
    }
  }
}
