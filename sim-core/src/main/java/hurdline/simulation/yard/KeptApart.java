package hurdline.simulation.yard;

import hurdline.account.IntakeBooks;
import hurdline.account.MassLedger;
import hurdline.account.Trace;
import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import hurdline.measure.EventKind;
import hurdline.plant.Delivery;
import hurdline.random.Draws;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Loads that lie in the yard and may not be fed until they have passed their test; those that fail
 * leave the yard and were not bought.
 */
final class KeptApart {
  private static final int NONE = -1;
  private static final double[] NO_SHARES = {};

  private final YardPlan yard;
  private final Haulage haulage;
  private final Bales bales;
  private final Stacking stacking;
  private final IntakeBooks books;
  private final Draws[] lastsS; // by crop; null where nothing is kept apart
  private final RandomStream[] test; // by crop; null where nothing fails
  private final BaleList loads;
  private final List<Integer> free = new ArrayList<>(); // numbers of loads that are released
  private double[] untilS;
  private int[] crop;
  private int[] ticket;
  private int[] field; // none for a load that came by itself
  private boolean[] fails;
  private int rows;
  private Trace trace;

  KeptApart(YardPlan yard, Haulage haulage, Bales bales, Stacking stacking, IntakeBooks books) {
    this.yard = yard;
    this.haulage = haulage;
    this.bales = bales;
    this.stacking = stacking;
    this.books = books;
    lastsS = new Draws[yard.crops()];
    test = new RandomStream[yard.crops()];
    loads = new BaleList(bales, 0);
    untilS = new double[16];
    crop = new int[16];
    ticket = new int[16];
    field = new int[16];
    fails = new boolean[16];
  }

  void trace(Trace wanted) {
    trace = wanted;
  }

  void reset(RandomStreams streams, int replication) {
    loads.reset();
    free.clear();
    rows = 0;
    for (int c = 0; c < yard.crops(); c++) {
      Delivery.Release release = release(c);
      String name = yard.crop(c);
      lastsS[c] =
          release == null
              ? null
              : new Draws(release.afterS(), streams.of(replication, "release." + name));
      test[c] =
          release == null || !release.mayFail() ? null : streams.of(replication, "test." + name);
    }
  }

  private Delivery.Release release(int ofCrop) {
    return haulage.delivery(ofCrop).flatMap(Delivery::release).orElse(null);
  }

  /** Takes a load into the yard; tells its number, below 0 where it may be fed at once. */
  int unload(Arrivals carriers, int carrier, double nowS) {
    if (lastsS[carriers.crop[carrier]] != null) {
      return keep(carriers, carrier, nowS);
    }
    while (carriers.cargo.count(carrier) > 0) {
      stacking.enter(carriers.cargo.takeFirst(carrier), nowS);
    }
    return NONE;
  }

  private int keep(Arrivals carriers, int carrier, double nowS) {
    int load = free.isEmpty() ? rows++ : free.remove(free.size() - 1);
    if (load == untilS.length) {
      grow(2 * load);
    }
    int c = carriers.crop[carrier];
    crop[load] = c;
    ticket[load] = carriers.ticket[carrier];
    field[load] = carriers.isTruck(carrier) ? carriers.field[carrier] : NONE;
    untilS[load] = nowS + lastsS[c].next();
    fails[load] = test[c] != null && test[c].next() < release(c).failShare();
    loads.makeRoom(load + 1);
    while (carriers.cargo.count(carrier) > 0) {
      int bale = carriers.cargo.takeFirst(carrier);
      stacking.enterApart(bale, nowS);
      bales.goesAsItCame[bale] = fails[load];
      loads.append(load, bale);
    }
    return load;
  }

  private void grow(int room) {
    untilS = Arrays.copyOf(untilS, room);
    crop = Arrays.copyOf(crop, room);
    ticket = Arrays.copyOf(ticket, room);
    field = Arrays.copyOf(field, room);
    fails = Arrays.copyOf(fails, room);
  }

  /** +∞ for a load that is not kept apart. */
  double releasedAtS(int load) {
    return load == NONE ? Double.POSITIVE_INFINITY : untilS[load];
  }

  /** The time of a load is over: it may be fed from now on, or is gone. */
  void end(int load, double nowS) {
    if (trace != null) {
      EventKind what = fails[load] ? EventKind.FAILED : EventKind.RELEASED;
      trace.note(nowS, yard.crop(crop[load]), what, loads.count(load));
    }
    if (fails[load]) {
      books.failed(crop[load], loads.count(load));
      books.loads.failed(ticket[load], nowS);
    }
    while (loads.count(load) > 0) {
      int bale = loads.takeFirst(load);
      if (fails[load]) {
        sendAway(bale, field[load], nowS);
      } else {
        stacking.release(bale);
      }
    }
    free.add(load);
  }

  /** A bale goes as it came: what it wasted meanwhile goes with it, and nobody has bought it. */
  private void sendAway(int bale, int ofField, double nowS) {
    int c = bales.crop[bale];
    int at = bale * bales.components;
    books.failed.add(c, bales.massKg[bale], bales.moisture[bale], bales.dryShare, at);
    books.weighedIn.takeBack(c, bales.massKg[bale], bales.moisture[bale], bales.dryShare, at);
    takeBackPay(bale, c, books.weighedIn);
    if (ofField != NONE && haulage.terms().hasAdvance(c)) {
      books.ofFields.takeBack(ofField, bales.massKg[bale], bales.moisture[bale], NO_SHARES, 0);
      takeBackPay(bale, ofField, books.ofFields);
    }
    books.keptApart(c, -1);
    stacking.takeOut(bale, nowS);
    bales.free(bale);
  }

  private void takeBackPay(int bale, int at, MassLedger ledger) {
    ledger.area(at, -bales.areaM2[bale]);
    ledger.unpaid(at, -bales.massKg[bale], bales.moisture[bale], bales.unpaid[bale]);
  }
}
