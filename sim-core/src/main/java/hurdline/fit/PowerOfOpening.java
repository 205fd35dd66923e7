package hurdline.fit;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Energies eₛ of screens as a power of their openings: ln eₛ = ln e₀ + n·xₛ with xₛ = ln(d₀/dₛ), by
 * generalized least squares with the covariance of ln eₛ, which to first order is that of eₛ over
 * eₛ·eₜ.
 *
 * @param parameters ln e₀ and n
 * @param covariance of the two; n has none where all screens have one opening, and is the file's
 * @param p share of chi-square beyond the weighted squares of what is left over; NaN where two
 *     openings leave nothing over
 */
record PowerOfOpening(double[] parameters, double[][] covariance, boolean hasExponent, double p) {
  private static final double SAME = 1e-6;
  private static final double REJECTED = 0.01;

  /**
   * @param x ln(d₀/dₛ)
   * @param exponent of the plant file
   */
  static PowerOfOpening of(double[] x, double[] energy, double[][] covariance, double exponent) {
    int n = x.length;
    boolean hasExponent = java.util.Arrays.stream(x).anyMatch(one -> Math.abs(one - x[0]) > SAME);
    double[][] v = new double[n][n];
    double[][] y = new double[n][1];
    double[][] a = new double[n][hasExponent ? 2 : 1];
    for (int i = 0; i < n; i++) {
      y[i][0] = Math.log(energy[i]) - (hasExponent ? 0 : exponent * x[i]);
      a[i][0] = 1;
      if (hasExponent) {
        a[i][1] = x[i];
      }
      for (int j = 0; j < n; j++) {
        v[i][j] = covariance[i][j] / energy[i] / energy[j];
      }
    }
    RealMatrix weight = inverse(new Array2DRowRealMatrix(v, false));
    RealMatrix of = new Array2DRowRealMatrix(a, false);
    RealMatrix left = of.transpose().multiply(weight);
    RealMatrix found = inverse(left.multiply(of));
    RealMatrix b = found.multiply(left).multiply(new Array2DRowRealMatrix(y, false));
    RealMatrix off = new Array2DRowRealMatrix(y, false).subtract(of.multiply(b));
    double squares = off.transpose().multiply(weight).multiply(off).getEntry(0, 0);
    int free = n - a[0].length;
    double p = free > 0 ? ChiSquaredDistribution.of(free).survivalProbability(squares) : Double.NaN;
    double wider = p < REJECTED ? squares / free : 1; // screens that lie on no power of openings
    double[][] two = new double[2][2];
    RealMatrix scaled = found.scalarMultiply(wider);
    scaled.copySubMatrix(0, a[0].length - 1, 0, a[0].length - 1, two);
    return new PowerOfOpening(
        new double[] {b.getEntry(0, 0), hasExponent ? b.getEntry(1, 0) : exponent},
        two,
        hasExponent,
        p);
  }

  private static RealMatrix inverse(RealMatrix of) {
    return new LUDecomposition(of, 0).getSolver().getInverse();
  }

  /** Of kWh/t at the opening at which the plant file has it. */
  double lnEnergy() {
    return parameters[0];
  }

  double exponent() {
    return parameters[1];
  }
}
