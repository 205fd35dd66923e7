package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Carries what heads draw into the bins and out of them.
 *
 * <p>Producers come before the draws of the bin that they fill, so that what passes straight
 * through an empty bin, and the last of a lot that is still being added to, is taken to the last
 * bit.
 */
final class Passage {
  private final CompiledLines layout;
  private final HeadLoads[] loads;
  private final Bins bins;
  private final double[] inKg;
  private final int[][] binSinks; // [head] sinks of its stretch that are bins
  private final int[] ownSink; // [head] the sink that is its own bin, −1 for none

  Passage(CompiledLines layout, HeadLoads[] loads, Bins bins) {
    this.layout = layout;
    this.loads = loads;
    this.bins = bins;
    inKg = new double[layout.bins];
    binSinks = new int[layout.heads][];
    ownSink = new int[layout.heads];
    for (int h = 0; h < layout.heads; h++) {
      Stretch stretch = layout.stretch[h];
      int own = layout.headBin[h];
      binSinks[h] =
          IntStream.range(0, stretch.sinks)
              .filter(s -> stretch.sinkKind[s] == Stretch.Sink.BIN)
              .toArray();
      ownSink[h] =
          IntStream.of(binSinks[h])
              .filter(s -> own >= 0 && stretch.sinkTarget[s] == own)
              .findFirst()
              .orElse(-1);
    }
  }

  /**
   * Carries a span of time.
   *
   * @param rate [head] kg/s; read
   * @param planned [head] whether the head uses up its lot at the end of it; read
   * @param restKg [head] what is left of a feed's lot; read and lowered
   * @param drawnKg [head] drawn since its lot began; read and raised
   */
  void carry(double dtS, double[] rate, boolean[] planned, double[] restKg, double[] drawnKg) {
    Arrays.fill(inKg, 0);
    for (int h : layout.headOrder) {
      if (rate[h] > 0) {
        double kg = rate[h] * dtS;
        int bin = layout.headBin[h];
        if (bin < 0) {
          kg = planned[h] ? restKg[h] : Math.min(kg, restKg[h]);
          restKg[h] -= kg;
        } else {
          kg = takeFrom(bin, h, kg, planned[h]);
        }
        drawnKg[h] += kg;
        for (int s : binSinks[h]) {
          inKg[layout.stretch[h].sinkTarget[s]] += kg * loads[h].sinkMass[s];
        }
      }
    }
    // what a head brings to the very bin that it draws from, and to bins that nobody draws from now
    for (int b = 0; b < inKg.length; b++) {
      store(b);
    }
  }

  private void store(int bin) {
    if (inKg[bin] > 0 && bins.fill[bin] != Bins.Fill.EMPTY) {
      bins.add(bin, inKg[bin]);
      inKg[bin] = 0;
    }
  }

  private double takeFrom(int bin, int head, double kg, boolean planned) {
    double kept = 1 - (ownSink[head] < 0 ? 0 : loads[head].sinkMass[ownSink[head]]);
    if (bins.fill[bin] == Bins.Fill.EMPTY) {
      double through = inKg[bin] / kept;
      inKg[bin] = 0;
      return through;
    }
    store(bin);
    double taken = kg;
    if (planned) {
      taken = bins.oneLot(bin) ? bins.frontKg(bin) / kept : bins.frontKg(bin);
    }
    bins.take(bin, taken);
    return taken;
  }
}
