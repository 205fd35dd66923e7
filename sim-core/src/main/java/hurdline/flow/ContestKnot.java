package hurdline.flow;

/**
 * Finds the rates where heads depend on themselves, say through one cyclone that serves a stretch before and a stretch
 * after the same bin: there plain sweeps circle, or close in without ever arriving.
 *
 * <p>With given holders "every holding limit is exactly used up" is a small linear system, one unknown for each holding
 * limit: the pace of the heads that it holds. Its answer counts only if a sweep from it gives it back. So the holders
 * of a sweep are tried first, then those of the sweep from their answer, and so on; where that circles too, the paces
 * go a part of the way towards their sweep, an ever smaller one, and the holders found there are tried.
 *
 * <p>Hot path, see {@link RateSolver}: all arrays are made once.
 */
final class ContestKnot {
  /** Paces that a sweep moves by no more than this are the answer. */
  private static final double AGREED = 1e-12;
  static final int ROUNDS = 2000;
  private static final int STRAIGHT = 12; // rounds from answer to answer before the steps begin

  private final ContestLists lists;
  private final ContestFill fill;
  private final double[] reach;
  private final double[] from; // [head], paces that the next sweep starts from
  private final double[] walked; // [head], the damped path
  private final int[] unknownOf; // [limit], which unknown its pace is, or NOBODY
  private final int[] holding; // [unknown], contest
  private final double[] matrix; // [unknown * unknowns + unknown]
  private final double[] right; // [unknown]

  ContestKnot(ContestLists lists, ContestFill fill, int limits, double[] reach) {
    this.lists = lists;
    this.fill = fill;
    this.reach = reach;
    from = new double[reach.length];
    walked = new double[reach.length];
    unknownOf = new int[limits];
    holding = new int[limits];
    matrix = new double[limits * limits];
    right = new double[limits];
  }

  /**
   * Unties the knot that sweeps have left in {@code fill}, whose result is the answer afterwards.
   *
   * @param ownRoom [limit]; read
   * @return whether the holders agree in the end
   */
  boolean untie(double[] ownRoom) {
    System.arraycopy(fill.pace, 0, walked, 0, walked.length);
    for (int round = 0; round < ROUNDS; round++) {
      if (holdersAgree(ownRoom)) {
        return true;
      }
      if (round >= STRAIGHT && step(ownRoom, 1.0 / (2 + (round - STRAIGHT) / 8))) {
        return true;
      }
    }
    return false;
  }

  /** Moves the walked paces part of the way to their sweep, left in {@code fill}; true if they were there already. */
  private boolean step(double[] ownRoom, double share) {
    sweep(ownRoom, walked);
    if (agreed(walked)) {
      return true;
    }
    double[] to = fill.pace;
    for (int head = 0; head < walked.length; head++) {
      walked[head] += share * (to[head] - walked[head]);
    }
    return false;
  }

  /** Takes the holders that {@code fill} has found, solves for their paces, and sweeps from there. */
  private boolean holdersAgree(double[] ownRoom) {
    int unknowns = numberUnknowns();
    writeSystem(unknowns, ownRoom);
    if (!eliminate(unknowns)) {
      return false;
    }
    for (int head = 0; head < from.length; head++) {
      int limit = fill.heldBy[head];
      if (limit == ContestFill.NOBODY) {
        from[head] = fill.pace[head];
      } else {
        double pace = isUnknown(head, limit) ? right[unknownOf[limit]] : 0;
        from[head] = Math.min(1, Math.max(0, pace));
      }
    }
    sweep(ownRoom, from);
    return agreed(from);
  }

  private void sweep(double[] ownRoom, double[] atPace) {
    fill.makeRoom(ownRoom, atPace);
    fill.fill();
  }

  private boolean agreed(double[] before) {
    double[] after = fill.pace;
    for (int head = 0; head < before.length; head++) {
      if (!(Math.abs(after[head] - before[head]) <= AGREED)) {
        return false;
      }
    }
    return true;
  }

  private int numberUnknowns() {
    int unknowns = 0;
    for (int at = 0; at < fill.contests; at++) {
      unknownOf[fill.contest[at]] = fill.spentBy[at] == ContestFill.NOBODY ? ContestFill.NOBODY : unknowns;
      if (fill.spentBy[at] != ContestFill.NOBODY) {
        holding[unknowns++] = at;
      }
    }
    return unknowns;
  }

  /** Whether the head shares the pace of the limit that holds it; heads served later than those that do stand. */
  private boolean isUnknown(int head, int limit) {
    return fill.rankOf(head) == fill.spentBy[holding[unknownOf[limit]]];
  }

  private void writeSystem(int unknowns, double[] ownRoom) {
    for (int row = 0; row < unknowns; row++) {
      int limit = fill.contest[holding[row]];
      for (int column = 0; column < unknowns; column++) {
        matrix[row * unknowns + column] = 0;
      }
      right[row] = ownRoom[limit];
      for (int i = lists.userStart[limit]; i < lists.userStart[limit + 1]; i++) {
        enter(row, unknowns, lists.user[i], lists.use[i]);
      }
      for (int i = lists.giverStart[limit]; i < lists.giverStart[limit + 1]; i++) {
        enter(row, unknowns, lists.giver[i], -lists.give[i]);
      }
    }
  }

  private void enter(int row, int unknowns, int head, double coefficient) {
    int limit = fill.heldBy[head];
    double atReach = coefficient * reach[head];
    if (limit == ContestFill.NOBODY) {
      right[row] -= atReach * fill.pace[head];
    } else if (isUnknown(head, limit)) {
      matrix[row * unknowns + unknownOf[limit]] += atReach;
    }
  }

  /** Gauss with row exchange; the answer replaces {@link #right}. False if the system leaves a pace open. */
  private boolean eliminate(int n) {
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int row = column + 1; row < n; row++) {
        if (Math.abs(matrix[row * n + column]) > Math.abs(matrix[pivot * n + column])) {
          pivot = row;
        }
      }
      if (!(Math.abs(matrix[pivot * n + column]) > 1e-14)) {
        return false;
      }
      exchange(pivot, column, n);
      for (int row = column + 1; row < n; row++) {
        double factor = matrix[row * n + column] / matrix[column * n + column];
        if (factor != 0) {
          for (int i = column; i < n; i++) {
            matrix[row * n + i] -= factor * matrix[column * n + i];
          }
          right[row] -= factor * right[column];
        }
      }
    }
    substituteBack(n);
    return true;
  }

  private void exchange(int one, int other, int n) {
    if (one == other) {
      return;
    }
    for (int i = 0; i < n; i++) {
      double kept = matrix[one * n + i];
      matrix[one * n + i] = matrix[other * n + i];
      matrix[other * n + i] = kept;
    }
    double kept = right[one];
    right[one] = right[other];
    right[other] = kept;
  }

  private void substituteBack(int n) {
    for (int row = n - 1; row >= 0; row--) {
      double sum = right[row];
      for (int i = row + 1; i < n; i++) {
        sum -= matrix[row * n + i] * right[i];
      }
      right[row] = sum / matrix[row * n + row];
    }
  }
}
