package hurdline.flow;

import hurdline.compiled.Causes;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.flow.rates.IndexSet;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * From each head to what holds it in the end: the trail that runs from a full bin to its draws and
 * from an empty one to its producers, and stops at a machine's own rate, a stop, a change, a crew,
 * a resource's queue, a lift, or the want of bales.
 *
 * <p>A head's direct holder is its own store if that has nothing; else, at its reach, the nearest
 * machine of its stretch that sets the reach; else the nearest contested limit that holds it. Equal
 * means within 1e-9. Nearest is by the number of machines between, then by name.
 */
public final class BottleneckTrail {
  private static final double TIE = 1e-9;

  private final CompiledLines layout;
  private final Network network;
  private final Causes causes;
  private final int[] limitDistance;
  private final boolean[] seen;
  private final int[] firstMachine;

  /**
   * [head] cause at the end of its trail, and the machine where that is, −1 if it is at no machine.
   */
  public final int[] cause;

  public final int[] place;

  /** Heads of which either is another than before the last {@link #follow}. */
  public final IndexSet moved;

  public BottleneckTrail(CompiledLines layout, Network network) {
    this.layout = layout;
    this.network = network;
    causes = layout.causes;
    cause = new int[layout.heads];
    place = new int[layout.heads];
    moved = new IndexSet(layout.heads);
    seen = new boolean[layout.heads];
    firstMachine = new int[layout.heads];
    int limits = layout.shared.length + 2 * layout.bins;
    limitDistance = new int[layout.heads * limits];
    for (int h = 0; h < layout.heads; h++) {
      firstMachine[h] =
          IntStream.of(layout.stretch[h].machine).filter(m -> m >= 0).findFirst().orElse(-1);
      for (int limit = 0; limit < limits; limit++) {
        limitDistance[h * limits + limit] = distance(h, limit);
      }
    }
  }

  private int distance(int head, int limit) {
    Stretch stretch = layout.stretch[head];
    int bin = limit - layout.shared.length;
    if (bin < 0) {
      int node = layout.nodeOf[head][layout.shared[limit]];
      return node < 0 ? Integer.MAX_VALUE : stretch.distance[node];
    }
    if (bin >= layout.bins) {
      return layout.headBin[head] == bin - layout.bins ? -1 : Integer.MAX_VALUE;
    }
    int least = Integer.MAX_VALUE;
    for (int node = 0; node < stretch.nodes; node++) {
      for (int to : stretch.outletTo[node]) {
        if (to < 0
            && stretch.sinkKind[-1 - to] == Stretch.Sink.BIN
            && stretch.sinkTarget[-1 - to] == bin) {
          least = Math.min(least, stretch.distance[node] + 1);
        }
      }
    }
    return least;
  }

  /** Follows the trails of the heads involved, for the rates and causes as they now stand. */
  public void follow() {
    moved.clear();
    IndexSet involved = network.involved();
    for (int k = 0; k < involved.count(); k++) {
      int h = involved.at(k);
      if (network.asked.on[h]) {
        Arrays.fill(seen, false);
        follow(h);
      } else {
        end(h, causes.noCrew, firstMachine[h]);
      }
    }
  }

  private void follow(int head) {
    int at = head;
    while (true) {
      seen[at] = true;
      int next = step(head, at);
      if (next < 0) {
        return;
      }
      at = next;
    }
  }

  /**
   * Writes the cause if the trail of {@code head} ends at {@code at}; else the head to go on to.
   */
  private int step(int head, int at) {
    if (!network.asked.on[at]) {
      return end(head, causes.noCrew, firstMachine[at]);
    }
    int bin = layout.headBin[at];
    if (network.hasNothing(at)) {
      return bin < 0
          ? end(head, network.asked.without[at], firstMachine[at])
          : above(head, at, bin);
    }
    int limit = network.heldBy(at) < 0 ? -1 : nearestLimit(at);
    if (limit < 0) {
      return endAtReach(head, at);
    }
    int contested = limit - layout.shared.length;
    if (contested < 0) {
      return endAt(head, layout.shared[limit]);
    }
    return contested < layout.bins
        ? below(head, at, contested)
        : above(head, at, contested - layout.bins);
  }

  private int end(int head, int why, int where) {
    if (cause[head] != why || place[head] != where) {
      moved.add(head);
      cause[head] = why;
      place[head] = where;
    }
    return -1;
  }

  private int endAt(int head, int machine) {
    int standing = network.asked.standing[machine];
    return end(head, standing >= 0 ? standing : machine, machine);
  }

  private int endAtReach(int head, int at) {
    Stretch stretch = layout.stretch[at];
    double reach = network.reachOf(at);
    int alongside = network.alongsideCause(at);
    int nearest = -1;
    for (int node : stretch.nearest) {
      if (alongside >= 0 && stretch.distance[node] > 0) {
        return endAt(head, alongside);
      }
      int m = stretch.machine[node];
      double load = network.load(at, node);
      if (m >= 0 && load > 0) {
        double alone = network.asked.standing[m] >= 0 ? 0 : network.limitKgPerS(at, node) / load;
        if (alone <= reach * (1 + TIE)) {
          nearest = m;
          break;
        }
      }
    }
    if (nearest < 0 && alongside >= 0) {
      return endAt(head, alongside);
    }
    return endAt(head, nearest < 0 ? firstMachine[at] : nearest);
  }

  private int nearestLimit(int head) {
    int limits = layout.shared.length + 2 * layout.bins;
    int best = network.heldBy(head);
    int bestDistance = limitDistance[head * limits + best];
    for (int limit = 0; limit < limits; limit++) {
      int distance = limitDistance[head * limits + limit];
      if (distance < bestDistance && network.isHolder(limit, head)) {
        best = limit;
        bestDistance = distance;
      }
    }
    return best;
  }

  /** A full bin holds: on to its draw; the one that moves most, should there be several. */
  private int below(int head, int at, int bin) {
    return mostMoving(head, at, layout.draws[bin], null, bin);
  }

  /** An empty bin holds: on to the producer that moves most through it. */
  private int above(int head, int at, int bin) {
    return mostMoving(head, at, layout.producers[bin], layout.producerSink[bin], bin);
  }

  private int mostMoving(int head, int at, int[] heads, int[] sinks, int bin) {
    int best = -1;
    for (int k = 0; k < heads.length; k++) {
      int h = heads[k];
      if (!seen[h] && (best < 0 || isBefore(h, k, heads, sinks, best))) {
        best = k;
      }
    }
    return best < 0 ? endAtReach(head, at) : heads[best];
  }

  private boolean isBefore(int candidate, int k, int[] heads, int[] sinks, int best) {
    int other = heads[best];
    double mine = sinks == null ? 1 : network.loads(candidate).sinkMass[sinks[k]];
    double its = sinks == null ? 1 : network.loads(other).sinkMass[sinks[best]];
    int moves =
        Double.compare(mine * network.rateKgPerS(candidate), its * network.rateKgPerS(other));
    if (moves != 0) {
      return moves > 0;
    }
    int could = Double.compare(mine * network.reachOf(candidate), its * network.reachOf(other));
    if (could != 0) {
      return could > 0;
    }
    return network.asked.on[candidate] && !network.asked.on[other];
  }
}
