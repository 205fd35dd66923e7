package hurdline.simulation.activity;

import hurdline.account.BinBooks;
import hurdline.compiled.CompiledLines;
import hurdline.event.FutureEvents;

/**
 * Carries flows over the time since they were last carried, at the rates that held.
 *
 * <p>Between two solves all rates are constant, so nothing is lost by waiting until an event needs
 * to know what has flowed: a truck, a lift or a bag change in between costs nothing here.
 */
public final class FlowIntegrator {
  private final ReplicationState present;
  private final Milling milling;
  private final Orders orders;
  private final BinBooks binBooks;
  private final boolean[] lotEnds;
  private final double[] levelBefore;
  private double carriedS;

  public FlowIntegrator(
      ReplicationState present, Milling milling, Orders orders, BinBooks binBooks) {
    this.present = present;
    this.milling = milling;
    this.orders = orders;
    this.binBooks = binBooks;
    CompiledLines layout = present.layout;
    lotEnds = new boolean[layout.heads];
    levelBefore = new double[layout.bins];
  }

  public void reset() {
    carriedS = 0;
  }

  /**
   * All flows are carried up to the present instant; lots that end now are used up to the last bit.
   */
  public void upToNow() {
    double dtS = present.nowS - carriedS;
    if (!(dtS > 0)) {
      return;
    }
    carriedS = present.nowS;
    for (int h = 0; h < lotEnds.length; h++) {
      double endS = present.pending.atS(present.slots.lotEnd + h);
      lotEnds[h] = endS <= present.nowS + FutureEvents.instantS();
    }
    for (int b = 0; b < levelBefore.length; b++) {
      levelBefore[b] = present.network.massKg(b);
    }
    present.network.advance(dtS, lotEnds);
    for (int b = 0; b < levelBefore.length; b++) {
      binBooks.span(
          b,
          dtS,
          levelBefore[b],
          present.network.massKg(b),
          present.network.isFull(b),
          present.network.isEmpty(b));
    }
    milling.advance(dtS);
    orders.advance(dtS);
  }

  /** What lies in a bin at the present instant, carried or not. */
  double levelKg(int bin) {
    CompiledLines layout = present.layout;
    double netKgPerS = 0;
    for (int k = 0; k < layout.producers[bin].length; k++) {
      int head = layout.producers[bin][k];
      int sink = layout.producerSink[bin][k];
      netKgPerS += present.network.rateKgPerS(head) * present.network.sinkKg(head, sink);
    }
    for (int head : layout.draws[bin]) {
      netKgPerS -= present.network.rateKgPerS(head);
    }
    return present.network.massKg(bin) + netKgPerS * (present.nowS - carriedS);
  }
}
