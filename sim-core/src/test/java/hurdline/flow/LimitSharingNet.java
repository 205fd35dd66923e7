package hurdline.flow;

import hurdline.flow.rates.RateSolver;
import java.util.Arrays;

/** Heads and limits as bare numbers, built by hand or at random, for tests of the rate solver. */
public final class LimitSharingNet {
  public final int heads;
  final int limits;
  final int[] precedence;
  public final double[] reach;
  public final boolean[] active;
  final double[] room;
  public final double[] coefficient; // [limit * heads + head]

  public LimitSharingNet(int heads, int limits) {
    this.heads = heads;
    this.limits = limits;
    precedence = new int[heads];
    reach = new double[heads];
    active = new boolean[limits];
    room = new double[limits];
    coefficient = new double[limits * heads];
    Arrays.fill(active, true);
  }

  public static LimitSharingNet reaching(int limits, double... reach) {
    LimitSharingNet net = new LimitSharingNet(reach.length, limits);
    System.arraycopy(reach, 0, net.reach, 0, reach.length);
    return net;
  }

  public LimitSharingNet limit(int limit, double room, double... coefficients) {
    this.room[limit] = room;
    System.arraycopy(coefficients, 0, coefficient, limit * heads, heads);
    return this;
  }

  public LimitSharingNet precedence(int... lowestFirst) {
    System.arraycopy(lowestFirst, 0, precedence, 0, heads);
    return this;
  }

  /** The same net with heads and limits numbered otherwise: the old numbers, in their new order. */
  LimitSharingNet renumbered(int[] headOrder, int[] limitOrder) {
    LimitSharingNet net = new LimitSharingNet(heads, limits);
    for (int head = 0; head < heads; head++) {
      net.precedence[head] = precedence[headOrder[head]];
      net.reach[head] = reach[headOrder[head]];
    }
    for (int limit = 0; limit < limits; limit++) {
      net.active[limit] = active[limitOrder[limit]];
      net.room[limit] = room[limitOrder[limit]];
      for (int head = 0; head < heads; head++) {
        net.coefficient[limit * heads + head] =
            coefficient[limitOrder[limit] * heads + headOrder[head]];
      }
    }
    return net;
  }

  public RateSolver newSolver() {
    RateSolver solver = new RateSolver(heads, limits, precedence);
    writeTo(solver);
    return solver;
  }

  public void writeTo(RateSolver solver) {
    System.arraycopy(reach, 0, solver.reachKgPerS(), 0, heads);
    System.arraycopy(active, 0, solver.active(), 0, limits);
    System.arraycopy(room, 0, solver.room(), 0, limits);
    System.arraycopy(coefficient, 0, solver.coefficient(), 0, coefficient.length);
    for (int limit = 0; limit < limits; limit++) {
      solver.coefficientsChanged(limit);
    }
  }

  public RateSolver solved() {
    RateSolver solver = newSolver();
    solver.solve();
    return solver;
  }

  @Override
  public String toString() {
    StringBuilder text =
        new StringBuilder(
            "reach " + Arrays.toString(reach) + " precedence " + Arrays.toString(precedence));
    for (int limit = 0; limit < limits; limit++) {
      text.append("\n  ")
          .append(active[limit] ? "" : "(not active) ")
          .append(
              Arrays.toString(Arrays.copyOfRange(coefficient, limit * heads, (limit + 1) * heads)))
          .append(" <= ")
          .append(room[limit]);
    }
    return text.toString();
  }
}
