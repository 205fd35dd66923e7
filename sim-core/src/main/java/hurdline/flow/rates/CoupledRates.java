package hurdline.flow.rates;

import java.util.Arrays;

/**
 * Finds the rates where heads depend on themselves, say through one cyclone that serves a stretch
 * before and a stretch after the same bin: there plain sweeps circle, or close in without ever
 * arriving.
 *
 * <p>With given holders "every holding limit is exactly used up" is a small linear system, one
 * unknown for each holding limit: the pace of the heads that it holds. Its answer counts only if a
 * sweep from it gives it back; else the holders of that sweep are tried, and so on. From a good
 * start this arrives in two or three rounds, from a bad one it may circle for ever, so a good start
 * is made: the givers' news is let in by degrees. At degree 0 everybody gives like a head at its
 * reach, and one filling is the answer; at degree 1 everybody gives what it does, and the answer is
 * the one wanted. The first try goes straight to 1. If it circles the stride is halved, and doubled
 * again after each degree that has been settled. Where several machines tie, the way can end
 * between two sets of holders; then another pace than full reach for a start leads round the place.
 *
 * <p>Damped sweeps, the usual cure, want strides smaller by the gain of the circle, and a machine
 * that the head served first nearly fills by itself gives a gain of thousands.
 *
 * <p>Cost: one elimination and one filling a round. Of random plants with a knot, 95 in 100 took
 * one or two rounds, the hardest of a million some hundreds ({@code RateSolverProofTest} counts
 * them).
 *
 * <p>Hot path, see {@link RateSolver}: all arrays are made once.
 */
final class CoupledRates {
  private static final int ROUNDS = 2000;
  private static final double[] STRANGERS = {1, 0, 0.5, 0.25, 0.75};
  private static final int TRIES = 8; // rounds at one degree
  private static final double AGREED =
      1e-12; // paces that a sweep moves by no more than this are the answer
  private static final double NEARLY = 1e-9; // the same where the sweep also finds the same holders
  private static final double SMALLEST_STRIDE = 1e-12;

  private final LimitRows lists;
  private final ProgressiveFilling fill;
  private final double[] reach;
  private final int[] settled; // [head], holders at the degree reached
  private final double[] tried; // [head]
  private final double[] giving; // [head], pace that the rooms are made of
  private final int[] holder; // [head], limit that is taken to hold it, or NOBODY
  private final int[] unknownOf; // [limit], which unknown its pace is, or NOBODY
  private final int[] holding; // [unknown], limit
  private final int[] rankHeld; // [unknown], rank of the heads that share its pace
  private final DenseSystem system;
  private double strangersPace; // what everybody gives at degree 0
  private double degree; // 0: everybody gives as a stranger would, 1: as it does
  private int rounds;

  CoupledRates(LimitRows lists, ProgressiveFilling fill, int limits, double[] reach) {
    this.lists = lists;
    this.fill = fill;
    this.reach = reach;
    settled = new int[reach.length];
    tried = new double[reach.length];
    giving = new double[reach.length];
    holder = new int[reach.length];
    unknownOf = new int[limits];
    holding = new int[limits];
    rankHeld = new int[limits];
    system = new DenseSystem(limits);
  }

  /**
   * Unties the knot that sweeps have left in {@code fill}, whose result is the answer afterwards.
   *
   * @param ownRoom [limit]; read
   * @return whether the holders agree in the end
   */
  boolean untie(double[] ownRoom) {
    rounds = 0;
    int spent = 0;
    for (double each : STRANGERS) {
      strangersPace = each;
      spent += ROUNDS / STRANGERS.length;
      if (arrives(ownRoom, spent)) {
        return true;
      }
    }
    return false;
  }

  /** Rounds that the last knot took. */
  int rounds() {
    return rounds;
  }

  private boolean arrives(double[] ownRoom, int lastRound) {
    degree = 0;
    sweep(ownRoom);
    System.arraycopy(fill.heldBy, 0, settled, 0, settled.length);
    double reached = 0;
    double stride = 1;
    while (rounds < lastRound && stride >= SMALLEST_STRIDE) {
      degree = Math.min(1, reached + stride);
      if (!settles(ownRoom)) {
        stride /= 2;
      } else if (degree == 1) {
        takeHeldPaces();
        return true;
      } else {
        System.arraycopy(fill.heldBy, 0, settled, 0, settled.length);
        reached = degree;
        stride *= 2;
      }
    }
    return false;
  }

  /** The paces solved for leave no dust in any limit, those of the sweep after them may. */
  private void takeHeldPaces() {
    for (int head = 0; head < tried.length; head++) {
      if (fill.heldBy[head] != ProgressiveFilling.NOBODY) {
        fill.pace[head] = tried[head];
      }
    }
  }

  /**
   * Goes from the settled holders to those of the present degree, their paces in {@code tried};
   * false if that circles.
   */
  private boolean settles(double[] ownRoom) {
    System.arraycopy(settled, 0, holder, 0, holder.length);
    for (int i = 0; i < TRIES; i++) {
      rounds++;
      int unknowns = numberUnknowns();
      writeSystem(unknowns, ownRoom);
      boolean solved = system.solve();
      for (int head = 0; head < tried.length; head++) {
        tried[head] = solved ? inRange(paceOf(head)) : fill.pace[head];
      }
      sweep(ownRoom);
      double moved = moved();
      if (moved <= AGREED || moved <= NEARLY && Arrays.equals(holder, fill.heldBy)) {
        return true;
      }
      System.arraycopy(fill.heldBy, 0, holder, 0, holder.length);
    }
    return false;
  }

  private void sweep(double[] ownRoom) {
    for (int head = 0; head < giving.length; head++) {
      giving[head] = strangersPace * (1 - degree) + degree * tried[head];
    }
    fill.makeRoom(ownRoom, giving);
    fill.fill();
  }

  private static double inRange(double pace) {
    return pace <= ProgressiveFilling.GRAIN ? 0 : Math.min(1, pace);
  }

  private double moved() {
    double most = 0;
    for (int head = 0; head < tried.length; head++) {
      most = Math.max(most, Math.abs(fill.pace[head] - tried[head]));
    }
    return most;
  }

  private double paceOf(int head) {
    int limit = holder[head];
    if (limit == ProgressiveFilling.NOBODY) {
      return reach[head] > 0 ? 1 : 0;
    }
    return isUnknown(head, limit) ? system.answer(unknownOf[limit]) : 0;
  }

  private int numberUnknowns() {
    for (int at = 0; at < fill.contests; at++) {
      unknownOf[fill.contest[at]] = ProgressiveFilling.NOBODY;
    }
    int unknowns = 0;
    for (int head = 0; head < holder.length; head++) {
      int limit = holder[head];
      if (limit == ProgressiveFilling.NOBODY) {
        continue;
      }
      if (unknownOf[limit] == ProgressiveFilling.NOBODY) {
        holding[unknowns] = limit;
        rankHeld[unknowns] = fill.rankOf(head);
        unknownOf[limit] = unknowns++;
      } else {
        rankHeld[unknownOf[limit]] = Math.min(rankHeld[unknownOf[limit]], fill.rankOf(head));
      }
    }
    return unknowns;
  }

  /**
   * Whether the head shares the pace of the limit that holds it; heads served later than those that
   * do stand.
   */
  private boolean isUnknown(int head, int limit) {
    return fill.rankOf(head) == rankHeld[unknownOf[limit]];
  }

  private void writeSystem(int unknowns, double[] ownRoom) {
    system.clear(unknowns);
    for (int row = 0; row < unknowns; row++) {
      int limit = holding[row];
      system.addRight(row, ownRoom[limit]);
      for (int i = lists.start(limit); i < lists.userEnd[limit]; i++) {
        enter(row, lists.user[i], lists.use[i]);
      }
      for (int i = lists.start(limit); i < lists.giverEnd[limit]; i++) {
        int head = lists.giver[i];
        system.addRight(row, strangersPace * (1 - degree) * lists.give[i] * reach[head]);
        enter(row, head, -degree * lists.give[i]);
      }
    }
  }

  private void enter(int row, int head, double coefficient) {
    int limit = holder[head];
    double atReach = coefficient * reach[head];
    if (limit == ProgressiveFilling.NOBODY) {
      system.addRight(row, -atReach);
    } else if (isUnknown(head, limit)) {
      system.add(row, unknownOf[limit], atReach);
    }
  }
}
