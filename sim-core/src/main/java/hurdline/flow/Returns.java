package hurdline.flow;

import hurdline.line.Stretch;
import java.util.Arrays;

/**
 * Inflows of all nodes of a stretch with returns: the linear system (I − F)·x = e, one unknown for each
 * node and component, by elimination without pivoting: I − F is a non-singular M-matrix, since every
 * component leaves in the end, and those need no pivots.
 *
 * @see "Berman and Plemmons, Nonnegative Matrices in the Mathematical Sciences (1994), ch. 6 (from memory)"
 */
final class Returns {
  private final Stretch stretch;
  private final int components;
  private final int unknowns;
  private final double[][][] share;
  private final double[][] millFines;
  private final int hurd;
  private final int fines;
  private final double[] matrix;
  private final double[] x;

  /**
   * @param share [node][outlet][component]; read at each call
   * @param millFines [node][screen], null where no mill stands
   */
  Returns(
      Stretch stretch, int components, double[][][] share, double[][] millFines, int hurd, int fines) {
    this.stretch = stretch;
    this.components = components;
    this.share = share;
    this.millFines = millFines;
    this.hurd = hurd;
    this.fines = fines;
    unknowns = stretch.nodes * components;
    matrix = new double[unknowns * unknowns];
    x = new double[unknowns];
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
    for (int i = 0; i < unknowns; i++) {
      x[i] = kg[2 * i + water];
    }
    fill(screen, water == 1);
    eliminate();
    for (int i = 0; i < unknowns; i++) {
      kg[2 * i + water] = x[i];
    }
  }

  private void fill(int[] screen, boolean isWater) {
    Arrays.fill(matrix, 0);
    for (int node = 0; node < stretch.nodes; node++) {
      for (int c = 0; c < components; c++) {
        matrix[(node * components + c) * unknowns + node * components + c] += 1;
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
        matrix[(targets[o] * components + as) * unknowns + node * components + from] -=
            through * share[node][o][as];
      }
    }
  }

  private void eliminate() {
    int n = unknowns;
    for (int p = 0; p < n; p++) {
      for (int i = p + 1; i < n; i++) {
        double factor = matrix[i * n + p] / matrix[p * n + p];
        if (factor != 0) {
          for (int j = p + 1; j < n; j++) {
            matrix[i * n + j] -= factor * matrix[p * n + j];
          }
          x[i] -= factor * x[p];
        }
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = x[i];
      for (int j = i + 1; j < n; j++) {
        sum -= matrix[i * n + j] * x[j];
      }
      x[i] = sum / matrix[i * n + i];
    }
  }
}
