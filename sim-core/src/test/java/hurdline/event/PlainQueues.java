package hurdline.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The slow twin of {@link Resources}: one list, sought through at every question. */
final class PlainQueues {
  record Waits(int job, int resource, int rank, double askedAtS, long order, int gate) {}

  private static final int[][] GATES = {{1, 3}, {2}};

  final List<Waits> waiting = new ArrayList<>();
  final boolean[] open = {true, false, false, false};
  final int[] busy = new int[2];
  final int[] peak = new int[2];
  final double[] hoursS = new double[2];
  final double[] busyS = new double[2];
  final double[] waitsS = new double[2];
  private final int[] count;

  PlainQueues(int... count) {
    this.count = count;
  }

  int nextToBegin() {
    Waits next =
        waiting.stream()
            .filter(waits -> open[waits.gate()] && busy[waits.resource()] < count[waits.resource()])
            .min(
                Comparator.comparingInt(Waits::resource)
                    .thenComparingInt(Waits::rank)
                    .thenComparingDouble(Waits::askedAtS)
                    .thenComparingLong(Waits::order))
            .orElse(null);
    if (next == null) {
      return -1;
    }
    waiting.remove(next);
    busy[next.resource()]++;
    return next.job();
  }

  long waiting(int resource) {
    return waiting.stream().filter(waits -> waits.resource() == resource).count();
  }

  void pass(double fromS, double toS) {
    for (int resource = 0; resource < 2 && toS > fromS; resource++) {
      peak[resource] = (int) Math.max(peak[resource], waiting(resource));
      boolean inHours = false;
      for (int gate : GATES[resource]) {
        inHours |= open[gate];
      }
      if (inHours) {
        hoursS[resource] += toS - fromS;
        busyS[resource] += (toS - fromS) * busy[resource];
        waitsS[resource] += (toS - fromS) * waiting(resource);
      }
    }
  }
}
