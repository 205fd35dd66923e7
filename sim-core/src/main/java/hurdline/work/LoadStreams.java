package hurdline.work;

import hurdline.chance.Draws;
import hurdline.chance.Streams;
import hurdline.line.Haulage;
import hurdline.line.YardPlan;
import hurdline.plant.Delivery;

/**
 * When the loads come that come by themselves. The time between two of them runs in the stream's hours only: it is counted
 * through all of them, so that no rounding adds up and no night pushes arrivals together.
 */
final class LoadStreams {
  private static final double DAY_S = 86_400;

  private final YardPlan yard;
  private final Haulage haulage;
  private final Draws[] everyS; // by crop; null without a stream
  private final BaleDraws[] draws;
  private final int[] day;
  private final double[] openBeforeS; // hours of the stream before that day
  private final double[] dueS; // the next load, in those hours

  LoadStreams(YardPlan yard, Haulage haulage) {
    this.yard = yard;
    this.haulage = haulage;
    everyS = new Draws[yard.crops()];
    draws = new BaleDraws[yard.crops()];
    day = new int[yard.crops()];
    openBeforeS = new double[yard.crops()];
    dueS = new double[yard.crops()];
  }

  void reset(Streams streams, int replication) {
    for (int crop = 0; crop < yard.crops(); crop++) {
      Delivery.Loads loads = haulage.delivery(crop).flatMap(Delivery::loads).orElse(null);
      if (loads != null) {
        String source = "loads." + yard.crop(crop);
        everyS[crop] = new Draws(loads.everyS(), streams.of(replication, source + ".every"));
        draws[crop] = new BaleDraws(yard, crop, yard.bale(crop), streams, replication, source);
        day[crop] = 0;
        openBeforeS[crop] = 0;
        dueS[crop] = 0;
      }
    }
  }

  /** Draws when the next load comes: +∞ if the stream's hours end before; a load due as they end comes just then. */
  double nextS(int crop) {
    if (everyS[crop] == null) {
      return Double.POSITIVE_INFINITY;
    }
    Delivery.DayHours hours = haulage.delivery(crop).flatMap(Delivery::loads).orElseThrow().hours();
    double lengthS = hours.toS() - hours.fromS();
    dueS[crop] += everyS[crop].next();
    while (day[crop] < yard.days()) {
      if (haulage.loadsCome(crop, day[crop])) {
        double intoDayS = dueS[crop] - openBeforeS[crop];
        if (intoDayS <= lengthS + Hauling.INSTANT_S) {
          return day[crop] * DAY_S + hours.fromS() + Math.min(intoDayS, lengthS);
        }
        openBeforeS[crop] += lengthS;
      }
      day[crop]++;
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The next load's bales, onto that load. */
  void fill(int crop, Bales bales, BaleList cargo, int load, double nowS) {
    int count = haulage.delivery(crop).flatMap(Delivery::loads).orElseThrow().bales();
    for (int k = 0; k < count; k++) {
      cargo.append(load, draws[crop].make(bales, nowS));
    }
  }
}
