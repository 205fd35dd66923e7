package hurdline.flow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * What the rates of a net must satisfy, straight from the definitions and without any of the
 * solver's code.
 *
 * <p>Rates are judged as paces; a used-up limit is one with no more than {@code grain} left of what
 * would pass at reach.
 */
final class LimitSharingOracle {
  private final LimitSharingNet net;

  LimitSharingOracle(LimitSharingNet net) {
    this.net = net;
  }

  /** Coefficient times reach: what the head takes of the limit at its full pace. */
  double weight(int limit, int head) {
    return net.coefficient[limit * net.heads + head] * net.reach[head];
  }

  double scale(int limit) {
    return net.room[limit]
        + IntStream.range(0, net.heads).mapToDouble(h -> Math.abs(weight(limit, h))).sum();
  }

  /**
   * Smallest weight of any head at any limit, as a part of that limit's scale; weights of 0 left
   * out.
   */
  double smallestPart() {
    double smallest = 1;
    for (int limit = 0; limit < net.limits; limit++) {
      for (int head = 0; head < net.heads && net.active[limit]; head++) {
        double part = Math.abs(weight(limit, head)) / scale(limit);
        smallest = part > 0 ? Math.min(smallest, part) : smallest;
      }
    }
    return smallest;
  }

  double left(int limit, double[] pace) {
    double left = net.room[limit];
    for (int head = 0; head < net.heads; head++) {
      left -= weight(limit, head) * pace[head];
    }
    return left;
  }

  /** P1: the worst overrun of any limit or reach, relative; 0 or less if there is none. */
  double overrun(double[] pace) {
    double worst = Arrays.stream(pace).map(each -> Math.max(each - 1, -each)).max().orElse(0);
    for (int limit = 0; limit < net.limits; limit++) {
      if (net.active[limit] && scale(limit) > 0) {
        worst = Math.max(worst, -left(limit, pace) / scale(limit));
      }
    }
    return worst;
  }

  /** P3 for one head and one limit. */
  boolean holds(int limit, int head, double[] pace, double grain) {
    if (!net.active[limit]
        || !(weight(limit, head) > 0)
        || left(limit, pace) > grain * scale(limit)) {
      return false;
    }
    for (int other = 0; other < net.heads; other++) {
      boolean uses = weight(limit, other) > 0;
      if (uses && net.precedence[other] == net.precedence[head] && pace[other] > pace[head] + grain
          || uses && net.precedence[other] > net.precedence[head] && pace[other] > grain) {
        return false;
      }
    }
    return true;
  }

  /** P3: the first head that neither runs at its reach nor has a holder, or −1. */
  int unheld(double[] pace, double grain) {
    for (int head = 0; head < net.heads; head++) {
      int each = head;
      if (net.reach[head] > 0
          && pace[head] < 1 - grain
          && IntStream.range(0, net.limits).noneMatch(limit -> holds(limit, each, pace, grain))) {
        return head;
      }
    }
    return -1;
  }

  /**
   * All paces that satisfy P1 and P3, found by trying every way of naming holders: exhaustive, so
   * for small nets only. A way of naming holders that leaves some pace open is passed over.
   */
  List<double[]> allAnswers(double grain) {
    List<double[]> found = new ArrayList<>();
    int[][] choices = new int[net.heads][];
    for (int head = 0; head < net.heads; head++) {
      int each = head;
      choices[head] =
          net.reach[head] > 0
              ? IntStream.concat(
                      IntStream.of(-1),
                      IntStream.range(0, net.limits)
                          .filter(limit -> net.active[limit] && weight(limit, each) > 0))
                  .toArray()
              : new int[] {-1};
    }
    tryHolders(choices, new int[net.heads], 0, grain, found);
    return found;
  }

  long waysToNameHolders() {
    long ways = 1;
    for (int head = 0; head < net.heads; head++) {
      int each = head;
      ways *=
          net.reach[head] > 0
              ? 1
                  + IntStream.range(0, net.limits)
                      .filter(limit -> net.active[limit] && weight(limit, each) > 0)
                      .count()
              : 1;
    }
    return ways;
  }

  private void tryHolders(
      int[][] choices, int[] holder, int head, double grain, List<double[]> found) {
    if (head < net.heads) {
      for (int choice : choices[head]) {
        holder[head] = choice;
        tryHolders(choices, holder, head + 1, grain, found);
      }
      return;
    }
    double[] pace = pacesUnder(holder);
    if (pace != null
        && overrun(pace) <= grain
        && unheld(pace, grain) < 0
        && found.stream().noneMatch(other -> distance(other, pace) < 1e-7)) {
      found.add(pace);
    }
  }

  static double distance(double[] one, double[] other) {
    return IntStream.range(0, one.length)
        .mapToDouble(i -> Math.abs(one[i] - other[i]))
        .max()
        .orElse(0);
  }

  private double[] pacesUnder(int[] holder) {
    int n = net.heads;
    double[][] rows = new double[n][n];
    double[] right = new double[n];
    for (int head = 0; head < n; head++) {
      int limit = holder[head];
      int leader = leader(holder, head);
      if (limit < 0) {
        rows[head][head] = 1;
        right[head] = net.reach[head] > 0 ? 1 : 0;
      } else if (leader == head) {
        for (int other = 0; other < n; other++) {
          rows[head][other] = weight(limit, other);
        }
        right[head] = net.room[limit];
      } else {
        rows[head][head] = 1;
        rows[head][leader] = net.precedence[leader] == net.precedence[head] ? -1 : 0;
      }
    }
    DecompositionSolver solver =
        new LUDecomposition(new Array2DRowRealMatrix(rows, false), 1e-12).getSolver();
    return solver.isNonSingular()
        ? solver.solve(new ArrayRealVector(right, false)).toArray()
        : null;
  }

  /**
   * Of the heads with the same holder, the first of the lowest precedence number: it stands for the
   * common pace.
   */
  private int leader(int[] holder, int head) {
    int leader = head;
    for (int other = net.heads - 1; other >= 0; other--) {
      if (holder[other] == holder[head]
          && (net.precedence[other] < net.precedence[leader]
              || net.precedence[other] == net.precedence[leader] && other < leader)) {
        leader = other;
      }
    }
    return leader;
  }
}
