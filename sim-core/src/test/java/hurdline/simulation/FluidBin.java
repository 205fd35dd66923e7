package hurdline.simulation;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The long-run law of a bin whose level moves at a speed set by a Markov chain, solved exactly.
 *
 * <p>With densities f(x) over the levels between 0 and N, speeds R and the chain's rates Q, f'(x)·R
 * = f(x)·Q. States of speed 0 follow the others at once: f_Z = −f_S·Q_SZ·Q_ZZ⁻¹. At the bin's ends
 * lie masses m₀ and m_N, with rates of their own: m₀·Q₀ = R·f(0) and m_N·Q_N = −R·f(N), state by
 * state; a state that fills has no mass at 0, one that drains none at N. The levels are cut into
 * slabs that exp(A·h) links, so that no term grows beyond its slab.
 *
 * @see "Gershwin, Manufacturing Systems Engineering (1994), chapter 3, continuous material (model
 *     from memory)"
 * @see "Mitra, Stochastic theory of a fluid model of producers and consumers coupled by a buffer
 *     (1988), Advances in Applied Probability 20(3):646-676 (model; his spectral expansion is not
 *     used here)"
 */
final class FluidBin {
  private static final int SLABS = 24;

  private final int states;
  private final double[] speed;
  private final RealMatrix between;
  private final RealMatrix atEmpty;
  private final RealMatrix atFull;
  private final int[] moving;
  private final int[] still;

  /** Masses at the ends and over the levels between, by state. */
  final double[] empty;

  final double[] full;
  final double[] inside;
  private double mean;

  /**
   * The three matrices hold rates from row to column; what stands on their diagonals is not looked
   * at.
   */
  FluidBin(
      double holds, double[] speed, double[][] between, double[][] atEmpty, double[][] atFull) {
    states = speed.length;
    this.speed = speed;
    this.between = generator(between);
    this.atEmpty = generator(atEmpty);
    this.atFull = generator(atFull);
    moving = which(false);
    still = which(true);
    empty = new double[states];
    full = new double[states];
    inside = new double[states];
    solve(holds);
  }

  double meanLevel() {
    return mean;
  }

  private static RealMatrix generator(double[][] rates) {
    RealMatrix q = new Array2DRowRealMatrix(rates);
    for (int i = 0; i < rates.length; i++) {
      double out = 0;
      for (int j = 0; j < rates.length; j++) {
        out += j == i ? 0 : rates[i][j];
      }
      q.setEntry(i, i, -out);
    }
    return q;
  }

  private int[] which(boolean zero) {
    return java.util.stream.IntStream.range(0, states)
        .filter(i -> (speed[i] == 0) == zero)
        .toArray();
  }

  private void solve(double holds) {
    int n = moving.length;
    RealMatrix follow = new Array2DRowRealMatrix(n, Math.max(1, still.length));
    RealMatrix a = between.getSubMatrix(moving, moving);
    if (still.length > 0) {
      RealMatrix inverse = MatrixUtils.inverse(between.getSubMatrix(still, still));
      follow = between.getSubMatrix(moving, still).multiply(inverse).scalarMultiply(-1);
      a = a.add(follow.multiply(between.getSubMatrix(still, moving)));
    }
    for (int j = 0; j < n; j++) {
      a.setColumnVector(j, a.getColumnVector(j).mapDivide(speed[moving[j]]));
    }
    // exp of [[A, I, 0], [0, 0, I], [0, 0, 0]]·h has exp(A·h), its integral and that of (h −
    // s)·exp(A·s).
    double h = holds / SLABS;
    RealMatrix big = new Array2DRowRealMatrix(3 * n, 3 * n);
    big.setSubMatrix(a.getData(), 0, 0);
    RealMatrix one = MatrixUtils.createRealIdentityMatrix(n);
    big.setSubMatrix(one.getData(), 0, n);
    big.setSubMatrix(one.getData(), n, 2 * n);
    RealMatrix e = exp(big.scalarMultiply(h));
    RealMatrix step = e.getSubMatrix(0, n - 1, 0, n - 1);
    RealMatrix sum = e.getSubMatrix(0, n - 1, n, 2 * n - 1);
    RealMatrix moment = sum.scalarMultiply(h).subtract(e.getSubMatrix(0, n - 1, 2 * n, 3 * n - 1));
    read(system(step, sum, follow), h, sum, moment, follow);
  }

  /**
   * Unknowns: f at every slab's ends, masses at 0, masses at N; the last equation says that all
   * masses sum to 1.
   */
  private RealVector system(RealMatrix step, RealMatrix sum, RealMatrix follow) {
    int n = moving.length;
    int densities = n * (SLABS + 1);
    RealMatrix m = new Array2DRowRealMatrix(n * SLABS + 4 * states + 1, densities + 2 * states);
    int row = 0;
    for (int k = 0; k < SLABS; k++) {
      for (int j = 0; j < n; j++, row++) {
        for (int i = 0; i < n; i++) {
          m.setEntry(row, k * n + i, step.getEntry(i, j));
        }
        m.setEntry(row, (k + 1) * n + j, -1);
      }
    }
    for (int s = 0; s < states; s++, row += 2) {
      for (int i = 0; i < states; i++) {
        m.setEntry(row, densities + i, atEmpty.getEntry(i, s));
        m.setEntry(row + 1, densities + states + i, atFull.getEntry(i, s));
      }
    }
    for (int j = 0; j < n; j++) {
      int at = n * SLABS + 2 * moving[j];
      m.setEntry(at, j, -speed[moving[j]]);
      m.setEntry(at + 1, SLABS * n + j, speed[moving[j]]);
    }
    for (int s = 0; s < states; s++, row += 2) {
      m.setEntry(row, densities + s, speed[s] > 0 ? 1 : 0);
      m.setEntry(row + 1, densities + states + s, speed[s] < 0 ? 1 : 0);
    }
    for (int i = 0; i < n; i++) {
      double weight = 0;
      for (int j = 0; j < n; j++) {
        double all = 1;
        for (int z = 0; z < still.length; z++) {
          all += follow.getEntry(j, z);
        }
        weight += sum.getEntry(i, j) * all;
      }
      for (int k = 0; k < SLABS; k++) {
        m.setEntry(row, k * n + i, weight);
      }
    }
    for (int i = densities; i < densities + 2 * states; i++) {
      m.setEntry(row, i, 1);
    }
    RealVector right = new ArrayRealVector(row + 1);
    right.setEntry(row, 1);
    return new QRDecomposition(m).getSolver().solve(right);
  }

  private void read(RealVector x, double h, RealMatrix sum, RealMatrix moment, RealMatrix follow) {
    int n = moving.length;
    RealVector over = new ArrayRealVector(n);
    RealVector first = new ArrayRealVector(n);
    for (int k = 0; k < SLABS; k++) {
      RealVector f = x.getSubVector(k * n, n);
      RealVector slab = sum.preMultiply(f);
      over = over.add(slab);
      first = first.add(moment.preMultiply(f)).add(slab.mapMultiply(k * h));
    }
    double[] firsts = new double[states];
    spread(over, follow, inside);
    spread(first, follow, firsts);
    for (int s = 0; s < states; s++) {
      empty[s] = x.getEntry(n * (SLABS + 1) + s);
      full[s] = x.getEntry(n * (SLABS + 1) + states + s);
      mean += firsts[s] + full[s] * h * SLABS;
      if (!(Math.min(inside[s], Math.min(empty[s], full[s])) > -1e-9)) {
        throw new ArithmeticException("too large a bin for " + SLABS + " slabs");
      }
    }
  }

  private void spread(RealVector f, RealMatrix follow, double[] to) {
    for (int j = 0; j < moving.length; j++) {
      to[moving[j]] = f.getEntry(j);
    }
    for (int z = 0; z < still.length; z++) {
      to[still[z]] = f.dotProduct(follow.getColumnVector(z));
    }
  }

  /** The power series of a matrix halved until it is small, squared back. */
  private static RealMatrix exp(RealMatrix a) {
    int halvings =
        Math.max(0, 2 + (int) Math.ceil(Math.log(Math.max(1e-300, a.getNorm())) / Math.log(2)));
    RealMatrix small = a.scalarMultiply(Math.pow(0.5, halvings));
    RealMatrix term = MatrixUtils.createRealIdentityMatrix(a.getRowDimension());
    RealMatrix total = term;
    for (int k = 1; k < 20; k++) {
      term = term.multiply(small).scalarMultiply(1.0 / k);
      total = total.add(term);
    }
    for (int k = 0; k < halvings; k++) {
      total = total.multiply(total);
    }
    return total;
  }
}
