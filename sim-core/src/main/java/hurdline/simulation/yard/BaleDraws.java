package hurdline.simulation.yard;

import hurdline.compiled.YardPlan;
import hurdline.plant.Bale;
import hurdline.plant.LotAttribute;
import hurdline.random.Distribution;
import hurdline.random.Draws;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.util.Optional;

/**
 * Makes the bales of one source (a field, a stream of loads, the stock on hand): bale k has draw k
 * of the source's streams of mass, moisture, each attribute and each component's share.
 */
final class BaleDraws {
  private final int crop;
  private final double[] share; // by component, of dry matter
  private final double spread;
  private final Draws massKg;
  private final Draws moisture;
  private final Draws[] attribute; // null where the crop lacks it
  private final double[] most; // by attribute
  private final RandomStream[] deviates; // by component; null without spread

  /**
   * @param source what the names of the streams begin with
   */
  BaleDraws(
      YardPlan plan, int crop, Bale bale, RandomStreams streams, int replication, String source) {
    this.crop = crop;
    share = new double[plan.components()];
    for (int component = 0; component < share.length; component++) {
      share[component] = bale.composition().getOrDefault(plan.component(component), 0.0);
    }
    spread = bale.spread();
    massKg = new Draws(bale.massKg(), streams.of(replication, source + ".mass"));
    moisture = new Draws(bale.moisture(), streams.of(replication, source + ".moisture"));
    attribute = new Draws[plan.attributes().size()];
    most = plan.attributes().stream().mapToDouble(LotAttribute::most).toArray();
    for (int a = 0; a < attribute.length; a++) {
      LotAttribute one = plan.attributes().get(a);
      Optional<Distribution> drawn = one.of(bale);
      if (drawn.isPresent()) {
        RandomStream stream = streams.of(replication, source + "." + one.stream());
        attribute[a] = new Draws(drawn.get(), stream);
      }
    }
    deviates = spread > 0 ? deviates(plan, streams, replication, source) : null;
  }

  private RandomStream[] deviates(
      YardPlan plan, RandomStreams streams, int replication, String source) {
    RandomStream[] deviates = new RandomStream[plan.components()];
    for (int component = 0; component < deviates.length; component++) {
      if (share[component] > 0) {
        deviates[component] =
            streams.of(replication, source + ".composition." + plan.component(component));
      }
    }
    return deviates;
  }

  /** The source's next bale. */
  int make(Bales bales, double nowS) {
    int bale = bales.add(crop);
    bales.massKg[bale] = massKg.next();
    bales.moisture[bale] = moisture.nextShare();
    for (int a = 0; a < attribute.length; a++) {
      bales.attribute[bale * attribute.length + a] =
          attribute[a] == null ? 0 : Math.min(most[a], attribute[a].next());
    }
    bales.knownAtS[bale] = nowS;
    bales.weighedInS[bale] = Double.NaN;
    if (deviates == null) {
      System.arraycopy(share, 0, bales.dryShare, bale * share.length, share.length);
    } else {
      spreadShares(bales.dryShare, bale * share.length);
    }
    return bale;
  }

  /**
   * Each share times max(0, 1 + s·z), then all over their sum; as they were if nothing would be
   * left.
   */
  private void spreadShares(double[] shares, int from) {
    double sum = 0;
    for (int component = 0; component < share.length; component++) {
      // a component has a stream of its own, so that one the crop lacks need not be drawn
      double drawn =
          share[component] > 0
              ? share[component] * Math.max(0, 1 + spread * deviates[component].nextNormal())
              : 0;
      shares[from + component] = drawn;
      sum += drawn;
    }
    for (int component = 0; component < share.length; component++) {
      shares[from + component] = sum > 0 ? shares[from + component] / sum : share[component];
    }
  }
}
