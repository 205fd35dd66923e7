package hurdline.simulation;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Two machines of unlike rates that stop by the calendar, and a bin: F'(x)·R = F(x)·Q for the
 * chance F(x) of a level of at most x, state by state, is solved by F(x) = Σ aₖ·φₖ·exp(zₖ·x) with
 * zₖ·φₖ·R = φₖ·Q. A state that fills has F(0) = 0, one that drains F(N) = its long-run share.
 *
 * @see "Mitra, Stochastic theory of a fluid model of producers and consumers coupled by a buffer
 *     (1988), Advances in Applied Probability 20(3):646-676 (spectral expansion, from memory)"
 */
final class SpectralBin {
  private static final int DOWN = 0; // both; from 1 on the second up, the first up, both up

  private final double[] in = new double[4];
  private final double[] out = new double[4];
  private final double[] share = new double[4];
  private final double[] atEmpty = new double[4];

  SpectralBin(TwoMachines line) {
    double[][] q = new double[4][4];
    double[] up = new double[2];
    machine(q, line.first(), 2, in, up, 0);
    machine(q, line.second(), 1, out, up, 1);
    for (int s = 0; s < 4; s++) {
      share[s] = (s / 2 > 0 ? up[0] : 1 - up[0]) * (s % 2 > 0 ? up[1] : 1 - up[1]);
    }
    solve(new Array2DRowRealMatrix(q), line.holdsT());
  }

  private static void machine(
      double[][] q, TwoMachines.Unit unit, int weight, double[] tPerH, double[] up, int which) {
    double fails = 1 / unit.betweenH();
    double mended = 60 / unit.repairMin();
    up[which] = mended / (fails + mended);
    for (int s = 0; s < 4; s++) {
      boolean isUp = (s & weight) > 0;
      tPerH[s] = isUp ? unit.tPerH() : 0;
      q[s][isUp ? s - weight : s + weight] += isUp ? fails : mended;
      q[s][s] -= isUp ? fails : mended;
    }
  }

  /**
   * The state in which both are down moves nothing: F there follows from the others, F₀ = −Σ Fᵢ·Qᵢ₀
   * / Q₀₀.
   */
  private void solve(RealMatrix q, double holdsT) {
    RealMatrix a = new Array2DRowRealMatrix(3, 3);
    for (int i = 1; i < 4; i++) {
      for (int j = 1; j < 4; j++) {
        double through = q.getEntry(i, DOWN) * q.getEntry(DOWN, j) / q.getEntry(DOWN, DOWN);
        a.setEntry(j - 1, i - 1, (q.getEntry(i, j) - through) / (in[j] - out[j]));
      }
    }
    EigenDecomposition eigen = new EigenDecomposition(a);
    if (eigen.hasComplexEigenvalues()) {
      throw new ArithmeticException("this model has real eigenvalues only");
    }
    RealMatrix ends = new Array2DRowRealMatrix(3, 3);
    RealVector right = new ArrayRealVector(3);
    for (int s = 1; s < 4; s++) {
      boolean fills = in[s] > out[s];
      right.setEntry(s - 1, fills ? 0 : share[s]);
      for (int k = 0; k < 3; k++) {
        double z = eigen.getRealEigenvalue(k);
        ends.setEntry(
            s - 1, k, eigen.getEigenvector(k).getEntry(s - 1) * (fills ? 1 : Math.exp(z * holdsT)));
      }
    }
    RealVector amounts = new LUDecomposition(ends).getSolver().solve(right);
    for (int k = 0; k < 3; k++) {
      for (int s = 1; s < 4; s++) {
        atEmpty[s] += amounts.getEntry(k) * eigen.getEigenvector(k).getEntry(s - 1);
      }
    }
  }

  /**
   * The second takes its rate while there is something, and what comes while there is nothing, t/h.
   */
  double throughput() {
    double tPerH = 0;
    for (int s = 1; s < 4; s++) {
      tPerH += (share[s] - atEmpty[s]) * out[s] + atEmpty[s] * Math.min(in[s], out[s]);
    }
    return tPerH;
  }
}
