package hurdline.flow.rates;

import java.util.Arrays;

/**
 * A small dense linear system, solved by Gauss's elimination in arrays made once.
 *
 * <p>The paces of a knot rarely have more than a handful of unknowns, so nothing sparser pays.
 * {@link #solve} exchanges rows, which are brought to the same size first: one limit may count in
 * shares of a machine, another in kg/s. Hot path, see {@link RateSolver}.
 */
public final class DenseSystem {
  private static final double SINGULAR =
      1e-14; // a pivot this small against its row leaves an unknown open

  private final double[] matrix; // [row * unknowns + column]
  private final double[] right; // [row], after solving the answer
  private int unknowns;

  public DenseSystem(int mostUnknowns) {
    matrix = new double[mostUnknowns * mostUnknowns];
    right = new double[mostUnknowns];
  }

  public void clear(int unknowns) {
    this.unknowns = unknowns;
    Arrays.fill(matrix, 0, unknowns * unknowns, 0);
    Arrays.fill(right, 0, unknowns, 0);
  }

  public void add(int row, int column, double value) {
    matrix[row * unknowns + column] += value;
  }

  public void addRight(int row, double value) {
    right[row] += value;
  }

  public double answer(int unknown) {
    return right[unknown];
  }

  /**
   * Solves without row exchange a system that needs none, such as a non-singular M-matrix; its rows
   * stay in their scale.
   */
  public void solveInOrder() {
    for (int column = 0; column < unknowns; column++) {
      for (int row = column + 1; row < unknowns; row++) {
        subtract(column, row);
      }
    }
    substituteBack();
  }

  /** False if the system leaves an unknown open; then there is no answer. */
  boolean solve() {
    int n = unknowns;
    for (int row = 0; row < n; row++) {
      evenOut(row);
    }
    for (int column = 0; column < n; column++) {
      int pivot = pivotRow(column);
      if (!(Math.abs(matrix[pivot * n + column]) > SINGULAR)) {
        return false;
      }
      exchange(pivot, column);
      for (int row = column + 1; row < n; row++) {
        subtract(column, row);
      }
    }
    substituteBack();
    return true;
  }

  private void evenOut(int row) {
    double most = 0;
    for (int i = row * unknowns, end = i + unknowns; i < end; i++) {
      most = Math.max(most, Math.abs(matrix[i]));
    }
    if (most > 0) {
      for (int i = row * unknowns, end = i + unknowns; i < end; i++) {
        matrix[i] /= most;
      }
      right[row] /= most;
    }
  }

  private int pivotRow(int column) {
    int pivot = column;
    for (int row = column + 1; row < unknowns; row++) {
      if (Math.abs(matrix[row * unknowns + column]) > Math.abs(matrix[pivot * unknowns + column])) {
        pivot = row;
      }
    }
    return pivot;
  }

  private void exchange(int one, int other) {
    if (one == other) {
      return;
    }
    for (int i = 0, a = one * unknowns, b = other * unknowns; i < unknowns; i++, a++, b++) {
      double kept = matrix[a];
      matrix[a] = matrix[b];
      matrix[b] = kept;
    }
    double kept = right[one];
    right[one] = right[other];
    right[other] = kept;
  }

  /** Clears the row's entry below the pivot of that column. */
  private void subtract(int column, int row) {
    int from = column * unknowns;
    int to = row * unknowns;
    double factor = matrix[to + column] / matrix[from + column];
    if (factor != 0) {
      for (int i = column; i < unknowns; i++) {
        matrix[to + i] -= factor * matrix[from + i];
      }
      right[row] -= factor * right[column];
    }
  }

  private void substituteBack() {
    for (int row = unknowns - 1, at = row * unknowns; row >= 0; row--, at -= unknowns) {
      double sum = right[row];
      for (int i = row + 1; i < unknowns; i++) {
        sum -= matrix[at + i] * right[i];
      }
      right[row] = sum / matrix[at + row];
    }
  }
}
