package hurdline.simulation.yard;

import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import hurdline.plant.Delivery;
import hurdline.random.Draws;
import hurdline.random.RandomStreams;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Loads that lie in the yard and may not be fed yet. */
final class KeptApart {
  private static final int NONE = -1;

  private final YardPlan yard;
  private final Haulage haulage;
  private final Stacking stacking;
  private final Draws[] lastsS; // by crop; null where nothing is kept apart
  private final BaleList loads;
  private final List<Integer> free = new ArrayList<>(); // numbers of loads that are released
  private double[] untilS;
  private int rows;

  KeptApart(YardPlan yard, Haulage haulage, Bales bales, Stacking stacking) {
    this.yard = yard;
    this.haulage = haulage;
    this.stacking = stacking;
    lastsS = new Draws[yard.crops()];
    loads = new BaleList(bales, 0);
    untilS = new double[16];
  }

  void reset(RandomStreams streams, int replication) {
    loads.reset();
    free.clear();
    rows = 0;
    for (int crop = 0; crop < yard.crops(); crop++) {
      String name = "release." + yard.crop(crop);
      lastsS[crop] =
          haulage
              .delivery(crop)
              .flatMap(Delivery::releaseS)
              .map(lasts -> new Draws(lasts, streams.of(replication, name)))
              .orElse(null);
    }
  }

  /** Takes a load into the yard; tells its number, below 0 where it may be fed at once. */
  int unload(int crop, BaleList cargo, int carrier, double nowS) {
    if (lastsS[crop] != null) {
      return keep(crop, cargo, carrier, nowS);
    }
    while (cargo.count(carrier) > 0) {
      stacking.enter(cargo.takeFirst(carrier), nowS);
    }
    return NONE;
  }

  private int keep(int crop, BaleList cargo, int carrier, double nowS) {
    int load = free.isEmpty() ? rows++ : free.remove(free.size() - 1);
    if (load == untilS.length) {
      untilS = Arrays.copyOf(untilS, 2 * load);
    }
    untilS[load] = nowS + lastsS[crop].next();
    loads.makeRoom(load + 1);
    while (cargo.count(carrier) > 0) {
      int bale = cargo.takeFirst(carrier);
      stacking.enterApart(bale, nowS);
      loads.append(load, bale);
    }
    return load;
  }

  /** +∞ for a load that is not kept apart. */
  double releasedAtS(int load) {
    return load == NONE ? Double.POSITIVE_INFINITY : untilS[load];
  }

  /** A load may be fed from now on. */
  void release(int load) {
    while (loads.count(load) > 0) {
      int bale = loads.takeFirst(load);
      stacking.release(bale);
    }
    free.add(load);
  }
}
