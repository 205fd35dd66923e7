package hurdline.simulation.yard;

import hurdline.account.IntakeBooks;
import hurdline.account.MassLedger;
import hurdline.account.Trace;
import hurdline.compiled.YardPlan;
import hurdline.measure.EventKind;
import hurdline.random.RandomStreams;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The yard: bales come to lie in its places, waste away there, and are picked for the feed table.
 *
 * <p>A lift first promises itself bales ({@link #promise}), chooses them when it begins ({@link
 * #pick}) and takes them out of their places when it ends ({@link #leave}); till then they count
 * and waste there. A bale's loss goes by the place that it came to, from the instant it was weighed
 * in.
 *
 * <p>One file because where a bale goes and where the next one is taken are one rule.
 */
public final class Stacking {
  private final YardPlan plan;
  private final Bales bales;
  private final IntakeBooks books;
  private final Room room;
  private final YardMoisture moistures; // null where none changes
  private final PickOrder order;
  private final int[] pickable; // [crop]
  private final int[] promised; // [crop]
  private int turns;
  private Trace trace;

  public Stacking(YardPlan plan, Bales bales, IntakeBooks books) {
    this.plan = plan;
    this.bales = bales;
    this.books = books;
    room = new Room(plan);
    moistures = plan.changesMoisture() ? new YardMoisture(plan, bales, books) : null;
    order = new PickOrder(plan, bales);
    pickable = new int[plan.crops()];
    promised = new int[plan.crops()];
  }

  /**
   * An empty yard, then the stock on hand, crops by name, at time zero. The bales' table and the
   * books must be empty.
   */
  public void reset(RandomStreams streams, int replication) {
    clear();
    stock(crop -> true, streams, replication);
  }

  /** The weather of a replication, by crop. */
  void weather(DryDays[] ofCrops) {
    if (moistures != null) {
      moistures.reset(ofCrops);
    }
  }

  private void stock(IntPredicate crops, RandomStreams streams, int replication) {
    for (int crop = 0; crop < plan.crops(); crop++) {
      if (crops.test(crop) && plan.onHand(crop) > 0) {
        stock(crop, streams, replication);
      }
    }
  }

  private void clear() {
    room.reset();
    order.reset();
    Arrays.fill(pickable, 0);
    Arrays.fill(promised, 0);
    turns = 0;
  }

  /**
   * An empty yard, then what another year has left as the stock on hand: no place refuses what it
   * held before. Crops that nothing brings have the stock on hand that they always have.
   */
  public void open(
      CarriedOverStock left, boolean[] isBrought, RandomStreams streams, int replication) {
    clear();
    stock(crop -> !isBrought[crop], streams, replication);
    for (CarriedOverStock.Bale one : left.inPlaces()) {
      order.add(stock(one));
    }
    left.inFront().forEach(one -> order.putInFront(stock(one)));
    for (int crop = 0; crop < plan.crops(); crop++) {
      books.room.wanted(crop, room.wanted(crop, 0));
    }
  }

  private int stock(CarriedOverStock.Bale one) {
    int bale = bales.add(one);
    int place = one.at();
    if (place == Bales.none()) {
      place = room.takeAny(one.crop());
    } else {
      room.take(place);
    }
    layOnHand(bale);
    bales.weighedInS[bale] = -one.ageS();
    bales.knownAtS[bale] = -one.knownS();
    put(bale, place, 0);
    return bale;
  }

  /**
   * What lies in the places at the end, in the order in which it came; and in front of it, the
   * first to be picked last.
   */
  public void gather(
      List<CarriedOverStock.Bale> inPlaces, List<CarriedOverStock.Bale> front, double endS) {
    Set<Integer> taken = new HashSet<>(order.inFront());
    order.inFront().forEach(bale -> front.add(bales.told(bale, bales.place[bale], endS)));
    IntStream.range(0, bales.rows())
        .filter(bale -> bales.crop[bale] != Bales.none() && bales.place[bale] != Bales.none())
        .filter(bale -> !taken.contains(bale))
        .boxed()
        .sorted(Comparator.comparingInt(bale -> bales.turn[bale]))
        .forEach(bale -> inPlaces.add(bales.told(bale, bales.place[bale], endS)));
  }

  public void trace(Trace wanted) {
    trace = wanted;
  }

  private void stock(int crop, RandomStreams streams, int replication) {
    BaleDraws draws =
        new BaleDraws(
            plan, crop, plan.bale(crop), streams, replication, "on_hand." + plan.crop(crop));
    promiseRoom(crop, plan.onHand(crop));
    for (int k = 0; k < plan.onHand(crop); k++) {
      int bale = draws.make(bales, 0);
      bales.areaM2[bale] = bales.massKg[bale] * plan.onHandAreaM2PerKg(crop);
      layOnHand(bale);
      lay(bale, 0);
    }
  }

  private void layOnHand(int bale) {
    books.baleOnHand(bales.crop[bale]);
    takeIn(bale, 0, books.onHand);
  }

  /** The bale counts as weighed in, at its mass now; the yard's loss begins. */
  void weighIn(int bale, double nowS) {
    books.baleWeighedIn(bales.crop[bale]);
    takeIn(bale, nowS, books.weighedIn);
  }

  private void takeIn(int bale, double nowS, MassLedger ledger) {
    ledger.add(
        bales.crop[bale],
        bales.massKg[bale],
        bales.moisture[bale],
        bales.dryShare,
        bale * bales.components);
    pay(bale, ledger);
    bales.weighedInS[bale] = nowS;
    bales.knownAtS[bale] = nowS;
  }

  /** Books with a bale's mass what was taken off its price, and the area that is paid for. */
  void pay(int bale, MassLedger ledger) {
    pay(bale, bales.crop[bale], ledger);
  }

  /** The same in a ledger by something else than crops. */
  void pay(int bale, int at, MassLedger ledger) {
    if (bales.areaM2[bale] != 0) {
      ledger.area(at, bales.areaM2[bale]);
    }
    if (bales.unpaid[bale] != 0) {
      ledger.unpaid(at, bales.massKg[bale], bales.moisture[bale], bales.unpaid[bale]);
    }
  }

  /**
   * Whether there is room for so many more bales; if there is not, that too is booked as wanted.
   */
  public boolean hasRoom(int crop, int count) {
    boolean has = room.unpromised(crop) >= count;
    if (!has) {
      books.room.wanted(crop, room.wanted(crop, count));
    }
    return has;
  }

  /** Promises room to bales that will {@link #enter}. */
  public void promiseRoom(int crop, int count) {
    books.room.wanted(crop, room.wanted(crop, count));
    room.promise(crop, count);
  }

  /** Bales to which room was promised will not come. */
  void giveUpRoom(int crop, int count) {
    room.giveUp(crop, count);
  }

  /**
   * A bale weighed in, to which room was promised, comes to lie in the first place that has room.
   */
  void enter(int bale, double nowS) {
    lay(bale, nowS);
    books.places.came(bales.place[bale], bales.crop[bale]);
  }

  /** The same for a bale that may not be fed until it is {@link #release}d. */
  void enterApart(int bale, double nowS) {
    put(bale, room.takePromised(bales.crop[bale]), nowS);
    pickable[bales.crop[bale]]--;
    books.places.came(bales.place[bale], bales.crop[bale]);
    books.keptApart(bales.crop[bale], 1);
  }

  void release(int bale) {
    pickable[bales.crop[bale]]++;
    books.keptApart(bales.crop[bale], -1);
    order.add(bale);
  }

  /** A bale leaves its place at its mass as it is known. */
  void takeOut(int bale, double nowS) {
    books.levels.leaves(bales.crop[bale], bales.place[bale], nowS);
    weighs(bales.place[bale], bale, -bales.massKg[bale], nowS);
    room.giveBack(bales.place[bale]);
    bales.place[bale] = Bales.none();
  }

  private void lay(int bale, double nowS) {
    put(bale, room.takePromised(bales.crop[bale]), nowS);
    order.add(bale);
  }

  private void put(int bale, int place, double nowS) {
    bales.place[bale] = place;
    bales.turn[bale] = turns++;
    pickable[bales.crop[bale]]++;
    books.levels.enters(bales.crop[bale], place, nowS);
    weighs(place, bale, bales.massKg[bale], nowS);
  }

  /** Bales of the crop in the places, those being lifted included. */
  public int inYard(int crop) {
    return books.levels.inYard(crop);
  }

  /** Bales of the crop in the places but for those that are kept apart. */
  public int mayBeFed(int crop) {
    return inYard(crop) - books.keptApart(crop);
  }

  /** Bales of the crop in the places that are neither being lifted nor promised to a lift. */
  public int unpromised(int crop) {
    return pickable[crop] - promised[crop];
  }

  /** Promises bales to a lift; a negative count takes a promise back. */
  public void promise(int crop, int count) {
    promised[crop] += count;
  }

  /**
   * The next bale by the pick rule, which uses up one promise if there is one. It still counts in
   * its place until it {@link #leave}s. There must be one.
   */
  public int pick(int crop) {
    if (!(pickable[crop] > 0)) {
      throw new IllegalStateException("no bale of " + plan.crop(crop) + " to pick");
    }
    pickable[crop]--;
    promised[crop] = Math.max(0, promised[crop] - 1);
    return order.take(crop);
  }

  /**
   * The form of a crop that has the next bale by the pick rule, of those with bales that are not
   * promised; none where there is none such. What was put back goes first, the last of it before
   * the others; of equal ones the form named first.
   *
   * @param forms in the order of their names
   */
  public int nextForm(int[] forms) {
    int next = Bales.none();
    for (int form : forms) {
      if (unpromised(form) > 0 && (next == Bales.none() || order.comesBefore(form, next))) {
        next = form;
      }
    }
    return next;
  }

  /**
   * A picked bale is set on the table: its loss and its age are booked, its place is free. Its mass
   * is now that of now.
   */
  public void leave(int bale, double nowS) {
    int crop = bales.crop[bale];
    int place = bales.place[bale];
    shrink(bale, place, nowS);
    books.setOnTable.add(
        crop, bales.massKg[bale], bales.moisture[bale], bales.dryShare, bale * bales.components);
    books.lifted(crop, nowS - bales.weighedInS[bale]);
    books.places.lifted(
        place,
        nowS - bales.weighedInS[bale],
        bales.massKg[bale],
        bales.moisture[bale],
        plan.isDamp(crop, bales.moisture[bale]));
    takeOut(bale, nowS);
    if (trace != null) {
      trace.note(nowS, plan.place(place), EventKind.LEAVES_FOR_TABLE, 1);
    }
  }

  /**
   * A bale, or what is left of one, comes back from the table or the feeder and will be picked
   * before all others of its crop; of several the one that came back last is picked first, so hand
   * them over in reverse. Where there is no room it lies in excess of what its place holds.
   */
  public void putBackInFront(int bale, double massKg, double nowS) {
    int crop = bales.crop[bale];
    bales.areaM2[bale] = bales.areaM2(bale, massKg);
    bales.massKg[bale] = massKg;
    bales.knownAtS[bale] = nowS;
    books.putBack.add(crop, massKg, bales.moisture[bale], bales.dryShare, bale * bales.components);
    put(bale, room.takeAny(crop), nowS);
    order.putInFront(bale);
    if (trace != null) {
      trace.note(nowS, plan.place(bales.place[bale]), EventKind.PUT_BACK, 1);
    }
  }

  /** A bale that is used up. */
  public void free(int bale) {
    bales.free(bale);
  }

  /**
   * Where a bale of the crop to which room was promised goes; at the end of the horizon, for those
   * not yet unloaded.
   */
  int takePlace(int crop) {
    return room.takePromised(crop);
  }

  /** Books the loss of a bale that lies in this place, or will, and the water that came or went. */
  void shrink(int bale, int place, double nowS) {
    double knownKg = bales.massKg[bale];
    waste(bale, place, nowS);
    if (bales.place[bale] == place) {
      weighs(place, bale, bales.massKg[bale] - knownKg, nowS);
    }
  }

  /** Books a mass that came to a place or left it where places have limits. */
  private void weighs(int place, int bale, double kg, double nowS) {
    if (books.limits != null) {
      books.limits.changes(place, bales.crop[bale], kg, nowS);
    }
  }

  private void waste(int bale, int place, double nowS) {
    double sinceS = bales.knownAtS[bale];
    double before = bales.massKg[bale];
    double lost = bales.shrink(bale, plan.lossPerS(place), nowS);
    if (lost > 0) {
      bales.areaM2[bale] *= bales.massKg[bale] / before;
      books.lostInYard.add(
          bales.crop[bale], lost, bales.moisture[bale], bales.dryShare, bale * bales.components);
      books.places.lost(place, lost, bales.moisture[bale]);
    }
    if (moistures != null && moistures.changesIn(place) && nowS > sinceS) {
      moistures.change(bale, place, sinceS, nowS);
    }
  }

  /** The losses up to now, and what still lies in the places. */
  public void finish(double endS) {
    take(true, endS);
  }

  /**
   * The same at the end of a year that is not the last. What a load that will fail its test has
   * wasted is nobody's loss, for all of it goes as it came.
   */
  public void yearEnds(double nowS) {
    take(false, nowS);
  }

  private void take(boolean isLast, double endS) {
    for (int bale = 0; bale < bales.rows(); bale++) {
      if (bales.crop[bale] != Bales.none() && bales.place[bale] != Bales.none()) {
        if (isLast || !bales.goesAsItCame[bale]) {
          shrink(bale, bales.place[bale], endS);
        }
        books.inPlacesAtEnd.add(
            bales.crop[bale],
            bales.massKg[bale],
            bales.moisture[bale],
            bales.dryShare,
            bale * bales.components);
        pay(bale, books.inPlacesAtEnd);
      }
    }
  }
}
