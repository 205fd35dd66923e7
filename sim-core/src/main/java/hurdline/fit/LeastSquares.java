package hurdline.fit;

import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The b that makes |y − X·b|² least, by Householder's QR; a column of ones is the intercept where
 * one is wanted.
 *
 * @param b a coefficient for each column
 * @param covariance s²(XᵀX)⁻¹, s² the sum of squares of what is left over n − k
 * @param robust the same where the spread is not the same in all rows: (XᵀX)⁻¹ Σ xᵢxᵢᵀ(eᵢ/(1 −
 *     hᵢ))² (XᵀX)⁻¹, h the leverage (HC3)
 * @see "MacKinnon and White, Journal of Econometrics 29 (1985) 305-325, from memory"
 */
record LeastSquares(double[] b, double[][] covariance, double[][] robust) {
  private static final double SINGULAR = 1e-9;
  private static final double LEAST_FREE = 1e-3;

  /** Nothing where columns depend on each other or rows are too few. */
  static Optional<LeastSquares> of(double[][] x, double[] y) {
    int n = x.length;
    int k = n == 0 ? 0 : x[0].length;
    if (k == 0 || n <= k) {
      return Optional.empty();
    }
    double[] size = sizes(x);
    double[][] scaled = new double[n][k];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < k; j++) {
        scaled[i][j] = size[j] > 0 ? x[i][j] / size[j] : 0;
      }
    }
    RealMatrix matrix = new Array2DRowRealMatrix(scaled, false);
    QRDecomposition qr = new QRDecomposition(matrix, SINGULAR);
    DecompositionSolver solver = qr.getSolver();
    if (!solver.isNonSingular()) {
      return Optional.empty();
    }
    double[] b = solver.solve(new Array2DRowRealMatrix(y)).getColumn(0);
    double[] off = off(scaled, y, b);
    RealMatrix r = qr.getR().getSubMatrix(0, k - 1, 0, k - 1);
    RealMatrix inverseR = new QRDecomposition(r).getSolver().getInverse();
    RealMatrix inverse = inverseR.multiply(inverseR.transpose());
    double squares = 0;
    for (double one : off) {
      squares += one * one;
    }
    double[][] usual = inverse.scalarMultiply(squares / (n - k)).getData();
    double[][] robust = robust(scaled, off, inverse);
    for (int i = 0; i < k; i++) {
      b[i] /= size[i];
      for (int j = 0; j < k; j++) {
        usual[i][j] /= size[i] * size[j];
        robust[i][j] /= size[i] * size[j];
      }
    }
    return Optional.of(new LeastSquares(b, usual, robust));
  }

  private static double[] sizes(double[][] x) {
    double[] size = new double[x[0].length];
    for (double[] row : x) {
      for (int j = 0; j < size.length; j++) {
        size[j] = Math.hypot(size[j], row[j]);
      }
    }
    return size;
  }

  private static double[] off(double[][] x, double[] y, double[] b) {
    double[] off = y.clone();
    for (int i = 0; i < off.length; i++) {
      for (int j = 0; j < b.length; j++) {
        off[i] -= x[i][j] * b[j];
      }
    }
    return off;
  }

  private static double[][] robust(double[][] x, double[] off, RealMatrix inverse) {
    int k = x[0].length;
    double[][] middle = new double[k][k];
    for (int i = 0; i < x.length; i++) {
      double[] reach = inverse.operate(x[i]);
      double leverage = 0;
      for (int j = 0; j < k; j++) {
        leverage += reach[j] * x[i][j];
      }
      double free = off[i] / Math.max(LEAST_FREE, 1 - leverage);
      for (int a = 0; a < k; a++) {
        for (int c = 0; c < k; c++) {
          middle[a][c] += x[i][a] * x[i][c] * free * free;
        }
      }
    }
    return inverse.multiply(new Array2DRowRealMatrix(middle, false)).multiply(inverse).getData();
  }
}
