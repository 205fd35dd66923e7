package hurdline.flow;

import hurdline.compiled.Stretch;
import hurdline.flow.rates.DenseSystem;

/**
 * Inflows of all nodes of a stretch with returns: the linear system (I − F)·x = e, one unknown for
 * each node and component, by elimination without pivoting: I − F is a non-singular M-matrix, since
 * every component leaves in the end, and those need no pivots.
 *
 * @see "Berman and Plemmons, Nonnegative Matrices in the Mathematical Sciences (1994), ch. 6 (from
 *     memory)"
 */
final class RecycleFlows {
  private final Stretch stretch;
  private final int components;
  private final int unknowns;
  private final double[][][] share;
  private final double[][] millFines;
  private final int hurd;
  private final int fines;
  private final DenseSystem system;

  /**
   * @param share [node][outlet][component]; read at each call
   * @param millFines [node][screen], null where no mill stands
   */
  RecycleFlows(
      Stretch stretch,
      int components,
      double[][][] share,
      double[][] millFines,
      int hurd,
      int fines) {
    this.stretch = stretch;
    this.components = components;
    this.share = share;
    this.millFines = millFines;
    this.hurd = hurd;
    this.fines = fines;
    unknowns = stretch.nodes * components;
    system = new DenseSystem(unknowns);
  }

  /**
   * Replaces the entry's inflow by all nodes' inflows.
   *
   * @param kg dry matter of a node's component, then its water; read and written
   */
  void inflows(int[] screen, double[] kg) {
    inflows(screen, kg, 0);
    inflows(screen, kg, 1);
  }

  private void inflows(int[] screen, double[] kg, int water) {
    system.clear(unknowns);
    for (int i = 0; i < unknowns; i++) {
      system.addRight(i, kg[2 * i + water]);
    }
    fill(screen, water == 1);
    system.solveInOrder();
    for (int i = 0; i < unknowns; i++) {
      kg[2 * i + water] = system.answer(i);
    }
  }

  private void fill(int[] screen, boolean isWater) {
    for (int node = 0; node < stretch.nodes; node++) {
      for (int c = 0; c < components; c++) {
        system.add(node * components + c, node * components + c, 1);
        double kept = 1;
        int[] from = stretch.breaksFrom[node];
        for (int k = 0; k < from.length; k++) {
          if (from[k] == c) {
            double part = stretch.breaksShare[node][k];
            leave(node, c, stretch.breaksInto[node][k], part, isWater);
            kept -= part;
          }
        }
        if (millFines[node] != null && c == hurd) {
          double part = millFines[node][screen[stretch.machine[node]]];
          leave(node, c, fines, part, isWater);
          kept -= part;
        }
        leave(node, c, c, kept, isWater);
      }
    }
  }

  private void leave(int node, int from, int as, double part, boolean isWater) {
    double through = part * stretch.collects[node] * (isWater ? 1 - stretch.dries[node] : 1);
    int[] targets = stretch.outletTo[node];
    for (int o = 0; o < targets.length; o++) {
      if (targets[o] >= 0) {
        system.add(
            targets[o] * components + as, node * components + from, -through * share[node][o][as]);
      }
    }
  }
}
