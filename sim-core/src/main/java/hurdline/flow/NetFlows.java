package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.flow.rates.RateSolver;

/**
 * What comes into each bin less what is drawn from it, and when its level crosses a mark.
 *
 * <p>Whether a bin is full, empty or between is remembered from the event that made it so. While a
 * full or empty bin holds a head its level stays by definition; else a net flow below 1e-12 of what
 * could pass is rounding and counts as none.
 */
final class NetFlows {
  private static final double DUST = 1e-12;

  private final CompiledLines layout;
  private final Network network;
  private final RateSolver solver;
  private final HeadLoads[] loads;
  private final LimitSharing contest;
  private final Blends blends;
  private final Bins bins;

  /** [bin] kg/s, and capacity units a second. */
  final double[] netKgPerS;

  private final double[] netUnitPerS;
  private final boolean[] moved;

  NetFlows(
      CompiledLines layout,
      Network network,
      RateSolver solver,
      HeadLoads[] loads,
      LimitSharing contest,
      Blends blends,
      Bins bins) {
    this.layout = layout;
    this.network = network;
    this.solver = solver;
    this.loads = loads;
    this.contest = contest;
    this.blends = blends;
    this.bins = bins;
    netKgPerS = new double[layout.bins];
    netUnitPerS = new double[layout.bins];
    moved = new boolean[layout.bins];
  }

  /** Whether a bin's net flow or state has changed since this was last asked. */
  boolean takeMoved(int bin) {
    boolean was = moved[bin];
    moved[bin] = false;
    return was;
  }

  /**
   * From rates to a bin's net flow, and to a bin that leaves full or empty.
   *
   * @return whether the lot that the bin hands on has another composition now
   */
  boolean settle(int bin) {
    double in = 0;
    double inUnit = 0;
    double most = 0;
    double[] rate = solver.rateKgPerS();
    double[] reach = solver.reachKgPerS();
    boolean held = false;
    int full = layout.shared.length + bin;
    int limit = bins.fill[bin] == Bins.Fill.EMPTY ? full + layout.bins : full;
    for (int k = 0; k < layout.producers[bin].length; k++) {
      int h = layout.producers[bin][k];
      double mass = loads[h].sinkMass[layout.producerSink[bin][k]];
      in += rate[h] * mass;
      inUnit += rate[h] * contest.unitsInto(bin, h, layout.producerSink[bin][k]);
      most += reach[h] * mass;
      held |= solver.heldBy()[h] == limit;
    }
    double out = 0;
    for (int h : layout.draws[bin]) {
      out += rate[h];
      most += reach[h];
      held |= solver.heldBy()[h] == limit;
    }
    double net = in - out;
    double netUnit = inUnit - out * bins.frontUnit(bin);
    boolean still = held && bins.fill[bin] != Bins.Fill.BETWEEN;
    if (still || Math.abs(net) <= DUST * most) {
      net = 0;
    }
    if (still || Math.abs(netUnit) <= DUST * most * bins.frontUnit(bin)) {
      netUnit = 0;
    }
    if (bins.fill[bin] == Bins.Fill.EMPTY && net > 0) {
      bins.leaveEmpty(bin);
    } else if (bins.fill[bin] == Bins.Fill.FULL && netUnit < 0) {
      bins.fill[bin] = Bins.Fill.BETWEEN;
    }
    moved[bin] |= netKgPerS[bin] != net || netUnitPerS[bin] != netUnit;
    netKgPerS[bin] = net;
    netUnitPerS[bin] = netUnit;
    return in > 0 && bins.fill[bin] != Bins.Fill.EMPTY && blends.atRates(bin) && bins.arrives(bin);
  }

  /** Seconds until a head's lot is used up at the present rates; infinite if it is not. */
  double untilLotEndsS(int head) {
    double rate = solver.rateKgPerS()[head];
    int bin = layout.headBin[head];
    if (!(rate > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    if (bin < 0) {
      return network.restKg[head] / rate;
    }
    if (bins.fill[bin] == Bins.Fill.EMPTY) {
      return Double.POSITIVE_INFINITY;
    }
    if (bins.oneLot(bin)) {
      double net = netKgPerS[bin];
      return net < 0 ? Math.max(0, bins.frontKg(bin)) / -net : Double.POSITIVE_INFINITY;
    }
    return Math.max(0, bins.frontKg(bin)) / rate;
  }

  /** Seconds until a bin's level next crosses full, start or stop; infinite if it does not. */
  double untilLevelS(int bin) {
    double net = netUnitPerS[bin];
    double level = bins.level[bin];
    if (net > 0 && bins.fill[bin] == Bins.Fill.BETWEEN) {
      double target = bins.barred[bin] ? layout.startAt[bin] : layout.holds[bin];
      return Math.max(0, target - level) / net;
    }
    if (net < 0
        && !bins.barred[bin]
        && layout.stopAt[bin] > 0
        && !network.asked.runsEmpty[bin]
        && level > layout.stopAt[bin]) {
      return (level - layout.stopAt[bin]) / -net;
    }
    return Double.POSITIVE_INFINITY;
  }

  /** A level that {@link #untilLevelS} spoke of is reached. */
  void levelReached(int bin) {
    moved[bin] = true;
    if (netUnitPerS[bin] < 0) {
      bins.level[bin] = layout.stopAt[bin];
      bins.barred[bin] = true;
    } else if (bins.barred[bin]) {
      bins.level[bin] = layout.startAt[bin];
      bins.barred[bin] = false;
      if (layout.startAt[bin] >= layout.holds[bin]) {
        bins.fill[bin] = Bins.Fill.FULL;
      }
    } else {
      bins.sumLots(bin);
      bins.level[bin] = layout.holds[bin];
      bins.fill[bin] = Bins.Fill.FULL;
    }
  }
}
