package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.flow.rates.IndexSet;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The heads and bins that a solve can change: those of which something was asked anew since the
 * last one, and whatever they reach over bins that are full, empty or kept shut, and over machines
 * that they share with a head that could run.
 *
 * <p>A bin between full and empty lets neither side feel the other, so most solves stay within one
 * stretch: a mill that waits for a bag says nothing to the saw before the bin is full. Rates, net
 * flows and holders outside were found with the same numbers and stand. {@code ShortCutsTest} holds
 * this against solving everything every time.
 */
final class AffectedHeads {
  private final CompiledLines layout;
  private final RateInputs asked;
  private final Bins bins;
  private final double[] reachKgPerS;
  private final int[][] binsBeside; // [head] that it fills or draws from
  private final int[][] sharedBy; // [head] machines that others load too

  final IndexSet heads;
  final IndexSet bin;

  AffectedHeads(CompiledLines layout, RateInputs asked, Bins bins, double[] reachKgPerS) {
    this.layout = layout;
    this.asked = asked;
    this.bins = bins;
    this.reachKgPerS = reachKgPerS;
    heads = new IndexSet(layout.heads);
    bin = new IndexSet(layout.bins);
    binsBeside = new int[layout.heads][];
    sharedBy = new int[layout.heads][];
    for (int h = 0; h < layout.heads; h++) {
      int head = h;
      binsBeside[h] =
          IntStream.range(0, layout.bins)
              .filter(b -> layout.headBin[head] == b || contains(layout.producers[b], head))
              .toArray();
      sharedBy[h] = Arrays.stream(layout.shared).filter(m -> layout.nodeOf[head][m] >= 0).toArray();
    }
  }

  private static boolean contains(int[] some, int one) {
    return IntStream.of(some).anyMatch(each -> each == one);
  }

  int[] binsBeside(int head) {
    return binsBeside[head];
  }

  /** Forgets what was found; what was asked stays. */
  void clear() {
    heads.clear();
    bin.clear();
  }

  /** Adds what was asked, and all that it reaches as bins and reaches now stand. */
  void find() {
    for (int k = 0; k < asked.heads.count(); k++) {
      heads.add(asked.heads.at(k));
    }
    for (int k = 0; k < heads.count(); k++) { // grows as it goes
      int head = heads.at(k);
      for (int b : binsBeside[head]) {
        bin.add(b);
        if (bins.fill[b] != Bins.Fill.BETWEEN || bins.barred[b]) {
          heads.addEach(layout.producers[b]);
          heads.addEach(layout.draws[b]);
        }
      }
      for (int m : sharedBy[head]) {
        for (int other : layout.headsOf[m]) {
          if (reachKgPerS[other] > 0) {
            heads.add(other);
          }
        }
      }
    }
  }
}
