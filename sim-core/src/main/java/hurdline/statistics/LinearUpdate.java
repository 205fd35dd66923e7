package hurdline.statistics;

import java.util.Arrays;
import java.util.Optional;

/**
 * How a season's totals would move an input that was drawn with them: Δz = C_zs·(C_ss +
 * 0.001·I)⁻¹·(s − s̄), z the input in its standard deviations, s the totals in theirs; C_zs·(C_ss +
 * 0.001·I)⁻¹·C_sz is the share of the input's variance that the season takes away. Right where
 * totals follow inputs along straight lines with normal chance.
 *
 * @see "Normal linear regression; the ridge of 0.001 keeps totals that hang together apart"
 */
public final class LinearUpdate {
  private static final double RIDGE = 0.001;

  private final double[][] scaled; // [replication][total]
  private final double[] off; // of the season
  private final double[][] covariance;

  /**
   * What comes of it.
   *
   * @param was mean of the input's draws
   * @param becomes what the season makes most likely
   * @param errors the move in standard deviations of the draws
   * @param told share of the variance that the season takes away
   */
  public record Move(double was, double becomes, double errors, double told) {}

  /**
   * @param totals [replication][total]; one that never varies is left out
   * @param season its totals
   */
  public LinearUpdate(double[][] totals, double[] season) {
    int n = totals.length;
    int[] varying =
        java.util.stream.IntStream.range(0, season.length)
            .filter(at -> Moments.of(column(totals, at)).sd() > 0)
            .toArray();
    scaled = new double[n][varying.length];
    off = new double[varying.length];
    for (int k = 0; k < varying.length; k++) {
      Moments of = Moments.of(column(totals, varying[k]));
      for (int r = 0; r < n; r++) {
        scaled[r][k] = (totals[r][varying[k]] - of.mean()) / of.sd();
      }
      off[k] = (season[varying[k]] - of.mean()) / of.sd();
    }
    covariance = new double[varying.length][varying.length];
    for (int a = 0; a < varying.length; a++) {
      for (int b = 0; b < varying.length; b++) {
        for (double[] row : scaled) {
          covariance[a][b] += row[a] * row[b] / (n - 1);
        }
      }
      covariance[a][a] += RIDGE;
    }
  }

  private static double[] column(double[][] rows, int at) {
    return Arrays.stream(rows).mapToDouble(row -> row[at]).toArray();
  }

  /**
   * The move of an input; empty where it does not vary.
   *
   * @param input its value in each replication
   */
  public Optional<Move> of(double[] input) {
    Moments of = Moments.of(input);
    if (!(of.sd() > 0)) {
      return Optional.empty();
    }
    double[] with = new double[off.length];
    for (int k = 0; k < with.length; k++) {
      for (int r = 0; r < input.length; r++) {
        with[k] += (input[r] - of.mean()) / of.sd() * scaled[r][k] / (input.length - 1);
      }
    }
    double[] weights = solved(with);
    double errors = 0;
    double told = 0;
    for (int k = 0; k < with.length; k++) {
      errors += weights[k] * off[k];
      told += weights[k] * with[k];
    }
    return Optional.of(
        new Move(of.mean(), of.mean() + errors * of.sd(), errors, adjusted(told, input.length)));
  }

  /** Of many totals some explain a part by accident: 1 − (1 − R²)(n − 1)/(n − p − 1). */
  private double adjusted(double told, int n) {
    double left = n - off.length - 1;
    return left < 1 ? 0 : Math.min(1, Math.max(0, 1 - (1 - told) * (n - 1) / left));
  }

  /** Gauss's elimination; the matrix is positive definite. */
  private double[] solved(double[] right) {
    int n = right.length;
    double[][] a = Arrays.stream(covariance).map(double[]::clone).toArray(double[][]::new);
    double[] x = right.clone();
    for (int k = 0; k < n; k++) {
      for (int row = k + 1; row < n; row++) {
        double by = a[row][k] / a[k][k];
        for (int column = k; column < n; column++) {
          a[row][column] -= by * a[k][column];
        }
        x[row] -= by * x[k];
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      for (int column = k + 1; column < n; column++) {
        x[k] -= a[k][column] * x[column];
      }
      x[k] /= a[k][k];
    }
    return x;
  }
}
