package hurdline.simulation.yard;

import hurdline.compiled.Haulage;
import hurdline.compiled.TimeWindows;
import hurdline.compiled.YardPlan;
import hurdline.event.FutureEvents;
import hurdline.plant.Delivery;
import hurdline.random.Draws;
import hurdline.random.RandomStreams;
import java.util.ArrayList;
import java.util.List;

/**
 * When the loads come that come by themselves. The time between two of them runs in the stream's
 * hours only: it is counted through all of them, so that no rounding adds up and no night pushes
 * arrivals together.
 */
final class LoadStreams {
  private final YardPlan yard;
  private final Haulage haulage;
  private final Draws[] everyS; // by crop; null without a stream
  private final BaleDraws[] draws;
  private final double[] dueS; // the latest load drawn, in the stream's hours
  private final List<List<Delivery.Recorded>> recorded = new ArrayList<>(); // by crop
  private final int[] due; // of the recorded ones, those that are due or came

  LoadStreams(YardPlan yard, Haulage haulage) {
    this.yard = yard;
    this.haulage = haulage;
    everyS = new Draws[yard.crops()];
    draws = new BaleDraws[yard.crops()];
    dueS = new double[yard.crops()];
    due = new int[yard.crops()];
    for (int crop = 0; crop < yard.crops(); crop++) {
      recorded.add(
          haulage
              .delivery(crop)
              .flatMap(Delivery::loads)
              .map(Delivery.Loads::recorded)
              .orElse(List.of()));
    }
  }

  void reset(RandomStreams streams, int replication) {
    for (int crop = 0; crop < yard.crops(); crop++) {
      Delivery.Loads loads = haulage.delivery(crop).flatMap(Delivery::loads).orElse(null);
      if (loads != null) {
        String source = "loads." + yard.crop(crop);
        everyS[crop] = new Draws(loads.everyS(), streams.of(replication, source + ".every"));
        draws[crop] = new BaleDraws(yard, crop, yard.bale(crop), streams, replication, source);
        dueS[crop] = 0;
        due[crop] = 0;
      }
    }
  }

  /**
   * Draws when the next load comes: +∞ if the stream's hours end before; a load due as they end
   * comes just then.
   */
  double nextS(int crop) {
    if (everyS[crop] == null) {
      return Double.POSITIVE_INFINITY;
    }
    if (!recorded.get(crop).isEmpty()) {
      return due[crop] < recorded.get(crop).size()
          ? recorded.get(crop).get(due[crop]++).atS()
          : Double.POSITIVE_INFINITY;
    }
    TimeWindows hours = haulage.loadsHours(crop);
    dueS[crop] += everyS[crop].next();
    double early = hours.afterS(Math.max(0, dueS[crop] - FutureEvents.instantS()));
    double atS = hours.afterS(dueS[crop]);
    return atS - early > 2 * FutureEvents.instantS() ? early : atS;
  }

  /** The next load's bales, onto that load. */
  void fill(int crop, Bales bales, BaleList cargo, int load, double nowS) {
    int count =
        recorded.get(crop).isEmpty()
            ? haulage.delivery(crop).flatMap(Delivery::loads).orElseThrow().bales()
            : recorded.get(crop).get(due[crop] - 1).bales();
    for (int k = 0; k < count; k++) {
      cargo.append(load, draws[crop].make(bales, nowS));
    }
  }
}
